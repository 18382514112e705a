/**
 * Every sentence of the gear check. Numbers with units come in written; plain counts come in as numbers, because
 * words bend round them.
 */
import type { TradeOff } from '../../core/coach/gearCheck.ts';
import type { RollOutLimit } from '../../core/model/rollout.ts';
import { capital, count, seconds } from '../../words/counting.ts';

const GAINS: Partial<Record<TradeOff, string>> = {
  'easier-lowest': 'an easier lowest gear',
  'harder-highest': 'a harder highest gear',
  'smaller-steps': 'smaller steps between gears',
};
const COSTS: Partial<Record<TradeOff, string>> = {
  'loses-highest': 'the hardest gear is lost',
  'bigger-steps': 'the steps between gears get bigger',
  'more-shifts': 'it takes more shifts',
  'more-capacity': 'the rear derailleur must take up more chain',
};

const GROUPS: Record<RollOutLimit['group'], string> = {
  juniors: 'Juniors',
  'under-16': 'Under 16',
  'under-14': 'Under 14',
  'under-12': 'Under 12',
};
const BODIES: Record<RollOutLimit['body'], string> = {
  'world-federation': 'world federation',
  'national-federation': 'one national federation',
};

const list = (parts: readonly string[]): string =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
const pick = (from: Partial<Record<TradeOff, string>>, codes: readonly TradeOff[]): string =>
  list(codes.flatMap((code) => from[code] ?? []));

/** English. */
export const gearCheckWords = {
  title: 'Gear check',
  intro:
    'Would other sprockets or chainrings let you hold this hill? The same ride, on every bike that is tried.',
  road: 'Road',
  ladder: 'Levels',
  children: 'For children',
  own: 'Own roads',
  you: (gear: string, low: string, high: string): string =>
    `Your bike: ${gear}. Your band: ${low} to ${high} turns a minute, less on climbs.`,
  answer: {
    working: 'Your bike is riding this road …',
    failed:
      'This road could not be ridden with this bike. Choose another road, or look at the tooth counts of the bike.',
    again: 'Try again',
    short: (gear: string, rpm: string, slope: string | null, at: string): string =>
      slope === null
        ? `Your lowest gear ${gear} lets your legs fall to ${rpm} a minute at ${at}.`
        : `Your lowest gear ${gear} lets your legs fall to ${rpm} a minute on the ${slope} climb at ${at}.`,
    enough: (gear: string): string =>
      `Your lowest gear ${gear} is low enough here: it never lets your legs fall below your band.`,
    mild: (gear: string, rpm: string): string => `With ${gear} it would be ${rpm}.`,
    reaches: (gear: string, after: boolean): string =>
      after ? `To stay in your band here it takes ${gear}.` : `With ${gear} you would stay in your band.`,
    looking: 'Other parts are being tried …',
    none: 'None of the parts tried here keeps you in your band: this road is too steep for this power.',
    settle: (length: string, rpm: string): string =>
      `If its steepest ${length} went on for ever, your legs would settle at ${rpm} a minute.`,
    highestEnough: (gear: string): string => `Your highest gear ${gear} never runs out here.`,
    highestShort: (gear: string, places: number, secs: number, rpm: string): string =>
      `Your highest gear ${gear} runs out in ${places === 1 ? 'one place' : `${count(places)} places`}, for ${seconds(secs)} in all: your legs spin up to ${rpm} a minute.`,
  },
  profile: {
    title: 'Where the gears run out',
    desc: (length: string, below: number, above: number): string =>
      `Profile of ${length} of road. ${below === 0 ? 'Nowhere' : `In ${count(below)} ${below === 1 ? 'place' : 'places'}`} the lowest gear is too hard; ${above === 0 ? 'nowhere' : `in ${count(above)} ${above === 1 ? 'place' : 'places'}`} the highest is too easy.`,
    below: 'lowest gear too hard',
    above: 'highest gear too easy',
    nowhere: 'The gears of this bike do not run out on this road.',
    rpm: (value: string): string => `${value}/min`,
  },
  chart: {
    title: 'All your gears',
    hint: 'Metres travelled in one turn of the cranks: easy on the left, hard on the right.',
    desc: (gears: number, twins: number, crossed: number): string =>
      `${gears} gears by development, one row for each chainring. ${twins} have a twin on another ring, ${crossed} of all cross the chain.`,
    single: 'a gear of its own',
    twin: 'as good as one on another ring',
    crossed: 'crosses the chain',
    really: (gears: number, different: number): string =>
      `${gears} gears, of which ${different} are really different.`,
    ring: 'Ring',
    table: 'The same in numbers',
    gear: 'Gear',
    development: 'Development',
    step: 'Step',
    speed: (rpm: string): string => `Speed at ${rpm}/min`,
    note: 'Note',
    noteTwin: (gear: string): string => `as good as ${gear}`,
    noteCrossed: 'crosses the chain',
  },
  metres: (value: string): string => `${value} m`,
  candidates: {
    title: 'What other parts would change',
    hint: 'The same rider, the same road, the best ride on each. Best first.',
    count: (tried: number, working: boolean): string =>
      working
        ? `${capital(count(tried))} tried so far …`
        : `${capital(count(tried))} other sets of parts tried.`,
    none: 'No common parts with as many rings and sprockets as yours are known here.',
    parts: 'Parts',
    inBand: 'Time in band',
    slowest: 'Slowest legs',
    shifts: 'Shifts',
    capacity: 'Chain to take up',
    yours: 'Your bike now',
    teeth: (n: string): string => `${n} teeth`,
    perMinute: (n: string): string => `${n}/min`,
    changed: { cassette: 'other cassette', rings: 'other chainrings', both: 'both changed' },
    take: 'Try this bike',
    takeThis: (parts: string): string => `Try this bike: ${parts}`,
    all: (n: number): string => `Show all ${count(n)}`,
    fewer: 'Show fewer',
    trade: (codes: readonly TradeOff[]): string => {
      const gains = pick(GAINS, codes);
      const costs = pick(COSTS, codes);
      if (gains === '' && costs === '') return 'Much like your bike.';
      if (costs === '') return `${capital(gains)}.`;
      if (gains === '') return `${capital(costs)}.`;
      return `${capital(gains)}; but ${costs}.`;
    },
    unusual: (usual: string): string => `More than the ${usual} teeth that usual rear derailleurs take up.`,
  },
  caution:
    'What fits is limited by what the derailleurs, the chain and the freewheel can take. Before you buy or change anything, ask a qualified mechanic and read the maker’s documents.',
  rollOut: {
    title: 'Roll-out, for races of young riders',
    is: (gear: string, metres: string): string =>
      `One turn of the cranks in the hardest gear ${gear} carries this bike ${metres}.`,
    limit: 'Limit',
    noLimit: 'No limit',
    ownLimit: 'Our club’s limit',
    ownMetres: 'Limit in metres',
    ownUnreadable: 'Write the limit in metres, from 2 to 12, for example 6.45.',
    option: (limit: Pick<RollOutLimit, 'group' | 'body' | 'ruleYear' | 'until'>, metres: string): string =>
      `${GROUPS[limit.group]}: ${metres} (${BODIES[limit.body]}, ${limit.until === undefined ? (limit.ruleYear ?? '') : `until ${limit.until}`})`,
    source: (limit: Pick<RollOutLimit, 'body' | 'ruleYear' | 'until' | 'relaxedInYear'>): string =>
      [
        limit.until === undefined
          ? `From the rule book of ${BODIES[limit.body]} of ${limit.ruleYear ?? 'an unknown year'}.`
          : `The ${BODIES[limit.body]} had this limit until ${limit.until}; none is known here since.`,
        limit.relaxedInYear === undefined ? '' : `It was relaxed in ${limit.relaxedInYear}.`,
        'Rules differ and change: ask your federation for the figure of this season.',
      ]
        .filter((part) => part !== '')
        .join(' '),
    within: (limit: string): string => `That keeps the limit of ${limit}.`,
    beyond: (limit: string, gear: string | null): string =>
      gear === null
        ? `That is more than the limit of ${limit}, and so is every other gear of this bike.`
        : `That is more than the limit of ${limit}. The hardest gear that keeps it is ${gear}.`,
    measured:
      'At a race the bike is rolled on the ground and measured; tyre and air pressure change it by a few centimetres.',
  },
};

export type GearCheckWords = typeof gearCheckWords;
