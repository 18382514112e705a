/**
 * Every sentence of the gear check. Numbers with units come in written; plain counts come in as numbers, because
 * words bend round them.
 */
import type { PassedLimit } from '../../core/model/gearLimits.ts';
import type { TradeOff } from '../../core/model/gearParts.ts';
import type { RollOutLimit } from '../../core/model/rollout.ts';
import { capital, count, seconds } from '../../words/counting.ts';

const GAINS: Partial<Record<TradeOff, string>> = {
  'easier-lowest': 'an easier lowest gear',
  'harder-highest': 'a harder highest gear',
  'smaller-steps': 'smaller steps between gears',
  'fewer-twins': 'fewer gears that exist twice',
  'fewer-shifts': 'fewer shifts on this road',
  'less-capacity': 'less chain to take up',
};
const COSTS: Partial<Record<TradeOff, string>> = {
  'harder-lowest': 'the lowest gear gets harder',
  'loses-highest': 'the hardest gear is lost',
  'bigger-steps': 'the steps between gears get bigger',
  'more-twins': 'more gears exist twice',
  'more-shifts': 'it takes more shifts on this road',
  'more-capacity': 'the rear derailleur must take up more chain',
};
const DERAILLEURS: Record<PassedLimit['derailleur'], string> = {
  road: 'rear derailleurs of road bikes',
  long: 'rear derailleurs with a long arm',
};
const SOURCES: Record<PassedLimit['source'], string> = {
  published: 'makers’ figures of nine and ten speeds',
  practice: 'common practice, no source',
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

/** What a steady climb comes to, written. */
interface SteadyFigures {
  readonly gear: string;
  readonly rpm: string;
  readonly low: string;
  readonly length: string;
  readonly slope: string;
}

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
    short: ({ gear, rpm, low, length, slope }: SteadyFigures): string =>
      `In your lowest gear ${gear} your legs settle at ${rpm} a minute on the steepest ${length} (${slope}). Your band begins at ${low} there.`,
    walks: ({ gear, rpm, length, slope }: SteadyFigures): string =>
      rpm === '0'
        ? `This bike makes you walk here. Your lowest gear ${gear} stands still on the steepest ${length} (${slope}).`
        : `This bike makes you walk here: riding, you would be no quicker. In your lowest gear ${gear} your legs would settle at ${rpm} a minute on the steepest ${length} (${slope}).`,
    enough: ({ gear, rpm, length, slope }: SteadyFigures): string =>
      `Your lowest gear ${gear} is low enough here: on the steepest ${length} (${slope}) your legs settle at ${rpm} a minute.`,
    mild: (gear: string, rpm: string): string => `With ${gear} they would settle at ${rpm}.`,
    reaches: (gear: string, after: boolean, asks: boolean): string =>
      `${after ? `To stay in your band here it takes ${gear}.` : `With ${gear} you would stay in your band.`}${asks ? ' The derailleurs of this bike may not take that; see below.' : ''}`,
    looking: 'Other parts are being tried …',
    takes: (
      needed: string,
      own: string,
      teeth: { readonly ring: string; readonly sprocket: string },
    ): string =>
      `None of the parts tried here keeps you in your band. It would take a gear of ${needed} a turn, and your lowest is ${own}: a ring of ${teeth.ring} teeth with your biggest sprocket, or a sprocket of ${teeth.sprocket} with your smallest ring.`,
    tooSteep: (slope: string, speed: string): string =>
      `No gear helps here: with your power and your cadence ${slope} is ridden at ${speed}, and walking is as quick.`,
    minute: (rpm: string, missing: string | null, from: string, to: string): string =>
      missing === null
        ? `Your hardest minute on this ride stays in your band, at ${rpm} a minute.`
        : `Your hardest minute on this ride is from ${from} to ${to}: ${rpm} a minute, ${missing} below your band.`,
    highestEnough: (gear: string): string => `Your highest gear ${gear} never runs out here.`,
    highestShort: (gear: string, places: number, secs: number, rpm: string): string =>
      `Your highest gear ${gear} runs out in ${places === 1 ? 'one place' : `${count(places)} places`}, for ${seconds(secs)} in all: your legs spin at ${rpm} a minute.`,
  },
  ask: {
    title: 'Ask about a part',
    label: 'What if …',
    example: '34 at the back',
    button: 'Try it',
    working: 'These parts are riding this road …',
    problems: {
      nothing: 'Write a tooth count, for example “34 at the back”, “32 in front” or “11-34”.',
      'which-end': 'Say which end: “at the back” for sprockets, “in front” for chainrings.',
      impossible: 'No rings or sprockets can be made of these numbers. Write them like “46/30” or “11-34”.',
      same: 'That is what your bike has already.',
    },
    answer: (parts: string, rpm: string, own: string, length: string): string =>
      `${parts}: on the steepest ${length} your legs would settle at ${rpm} a minute instead of ${own}.`,
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
  stairs: {
    title: 'All your gears',
    box: 'The staircase of your gears',
    hint: 'One paper step for each gear, easiest first, in the order one would really shift. Between the steps stands what the hands do.',
    desc: (steps: number, gears: number): string =>
      `A staircase of ${steps} steps with all ${gears} gears. The table below says the same.`,
    really: (gears: number, different: number): string =>
      gears === different
        ? `${gears} gears, each of its own.`
        : `${gears} gears, of which ${different} are really different.`,
    signs: {
      rear: 'right hand, sprockets',
      front: 'left hand, chainrings',
      same: 'lies on the step: as good',
      near: 'lies near it',
      crossed: 'crosses the chain',
    },
    table: 'The same in numbers',
    gear: 'Gear',
    development: 'Development',
    step: 'Step',
    hands: 'Hands',
    handsText: (ring: number, rear: number): string =>
      [
        ring > 0 ? 'left hand: bigger ring' : '',
        rear > 0 ? `right hand: ${rear} harder` : rear < 0 ? `right hand: ${-rear} easier` : '',
      ]
        .filter((part) => part !== '')
        .join(', '),
    speed: (rpm: string): string => `Speed at ${rpm}/min`,
    also: 'On the same step',
    alsoSame: (gear: string): string => `${gear} (as good)`,
    alsoNear: (gear: string): string => `${gear} (near)`,
    crossedToo: (gear: string): string => `${gear}, crosses the chain`,
  },
  metres: (value: string): string => `${value} m`,
  candidates: {
    title: 'What other parts would change',
    hint: 'The same rider, the same road, every bike ridden. First who gets up riding, then the hardest minute, then time in the band.',
    count: (tried: number, working: boolean): string =>
      working
        ? `${tried === 0 ? 'None' : capital(count(tried))} tried so far …`
        : `${capital(count(tried))} other ${tried === 1 ? 'set' : 'sets'} of parts tried.`,
    none: 'No common parts with as many rings and sprockets as yours are known here.',
    parts: 'Parts',
    getsUp: 'Gets up',
    riding: 'riding',
    walking: (time: string): string => `on foot for ${time}`,
    minute: 'Hardest minute',
    missing: (rpm: string): string => `${rpm} below band`,
    inBandNow: 'in band',
    inBand: 'Time in band',
    steady: (length: string): string => `Steepest ${length}`,
    yours: 'Your bike now',
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
    capacity: (teeth: string): string => `${teeth} teeth of chain to take up.`,
    limit: ({ what, haveTeeth, mostTeeth, derailleur, source }: PassedLimit): string =>
      what === 'sprocket'
        ? `Ask first: a sprocket of ${haveTeeth} is more than the ${mostTeeth} that ${DERAILLEURS[derailleur]} usually take (${SOURCES[source]}).`
        : what === 'capacity'
          ? `Ask first: ${haveTeeth} teeth of chain are more than the ${mostTeeth} that ${DERAILLEURS[derailleur]} usually take up (${SOURCES[source]}).`
          : `Ask first: rings ${haveTeeth} teeth apart are more than the ${mostTeeth} that front derailleurs usually span (${SOURCES[source]}).`,
  },
  compare: {
    open: 'Both rides',
    close: 'Close both rides',
    openThis: (parts: string): string => `Both rides side by side: ${parts}`,
    closeThis: (parts: string): string => `Close both rides: ${parts}`,
    desc: (parts: string): string =>
      `Cadence over the road: your bike as a broken line, ${parts} as a full one, the band below as a strip.`,
    yours: 'your bike',
    band: 'lower edge of your band',
    figure: 'Figure',
    time: 'Time',
    shifts: 'Shifts',
    lowest: 'Lowest gear',
    metresATurn: (metres: string): string => `${metres} a turn`,
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
