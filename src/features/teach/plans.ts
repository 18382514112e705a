/**
 * The session plans that come with the game: three groups, three lengths. Sentences are for coaches; those that are
 * said to children have at most twelve words. Lengths of the parts are common practice, no source.
 */
import type { DrillId, SessionPart, SessionPlan, TeachAudience } from '../../core/group/sessionPlan.ts';

export const LENGTHS_MIN = [20, 45, 60] as const;
type LengthMin = (typeof LENGTHS_MIN)[number];

/** Minutes of every part; together they are the session. */
const MINUTES: Readonly<Record<LengthMin, Readonly<Record<SessionPart, number>>>> = {
  20: { warmUp: 3, say: 2, road: 6, question: 2, drill: 5, watch: 0, end: 2 },
  45: { warmUp: 5, say: 3, road: 16, question: 5, drill: 13, watch: 0, end: 3 },
  60: { warmUp: 6, say: 3, road: 20, question: 6, drill: 21, watch: 0, end: 4 },
};

/** Who rides in the game in so much time. */
const ROAD: Readonly<Record<LengthMin, string>> = {
  20: 'Two ride it on the big screen, one after the other. The rest call “now” where they would click.',
  45: 'Everybody rides it once, on two devices with up to eight riders. Those who wait call “now”.',
  60: 'Everybody rides it once or twice, on two devices with up to eight riders. Those who wait call “now”.',
};

interface Group {
  readonly title: string;
  readonly levels: Readonly<Record<LengthMin, string>>;
  readonly drills: Readonly<Record<LengthMin, readonly DrillId[]>>;
  readonly lines: Readonly<Record<Exclude<SessionPart, 'road'>, readonly string[]>>;
  /** How a longer session begins. */
  readonly longer: string;
}

const GROUPS: Readonly<Record<TeachAudience, Group>> = {
  adults: {
    title: 'New adults',
    levels: { 20: 'one-pitch-announced', 45: 'one-pitch-announced', 60: 'rolling-road' },
    drills: { 20: ['cone'], 45: ['soft-feet', 'cone'], 60: ['soft-feet', 'cone', 'starting-gear'] },
    longer:
      'Each shows the lever that makes it easier, standing, with a lifted wheel and nobody’s fingers near the chain.',
    lines: {
      warmUp: [
        'Check the bikes: brakes bite, tyres are hard, saddle and bars hold, helmets sit.',
        'Two easy rounds; on the second one click harder and one click easier again.',
      ],
      say: [
        'Shift before the hill, while the pedals still turn easily.',
        'Push softly for one turn while the chain moves.',
        'One click, feel it, then the next.',
      ],
      question: [
        'At which pitch were most of us too late, and what could we have seen before it?',
        'Where would you click now? Point at the road.',
      ],
      drill: [
        'On a quiet, flat, closed place, one way round. The cards say how it is laid out and kept safe.',
      ],
      watch: [
        'Legs that stop before the click, clicks that come on the slope, eyes on the chain.',
        'Somebody who grinds: two gears easier, and the same round again. Pain means stop.',
      ],
      end: [
        'Each says one thing they will do before the next hill.',
        'Next time: the same round, with the click a little sooner or a little later.',
      ],
    },
  },
  mixed: {
    title: 'Mixed groups',
    levels: { 20: 'soft-feet', 45: 'rolling-road', 60: 'rolling-road' },
    drills: { 20: ['talk'], 45: ['talk', 'cone'], 60: ['talk', 'cone', 'starting-gear'] },
    longer: 'Pairs of one newer and one experienced rider; the experienced one asks and does not explain.',
    lines: {
      warmUp: [
        'Check the bikes in pairs: brakes, tyres, saddle, bars, helmets.',
        'Two easy rounds in pairs, three bike lengths apart; swap who rides in front.',
      ],
      say: [
        'Look up: the next hill tells you the gear.',
        'Finish your clicks before the hill; the last one with soft feet.',
        'Fast or slow does not matter today, early and quiet does.',
      ],
      question: [
        'What did the best ride do before the pitch that most of us did not?',
        'Did the experienced riders shift sooner, or only less?',
      ],
      drill: ['In pairs on a quiet closed place. The one behind says afterwards where the click came.'],
      watch: [
        'Experienced riders who race: give them one gear for the whole round.',
        'New riders who copy the one in front: their own legs say when.',
      ],
      end: [
        'Each pair tells one thing they heard or saw in the other.',
        'Next time: pairs in the other order.',
      ],
    },
  },
  children: {
    title: 'Children',
    levels: { 20: 'click-before-the-hill', 45: 'click-before-the-hill', 60: 'three-little-hills' },
    drills: { 20: ['cone'], 45: ['cone', 'soft-feet'], 60: ['cone', 'soft-feet', 'starting-gear'] },
    longer: 'Everybody rings, brakes and clicks once, standing still beside the coach.',
    lines: {
      warmUp: [
        'An adult in charge checks every bike: brakes, tyres, saddle, helmet. Who has no gears does the drills without the click.',
        'Follow the leader for two rounds, slowly, one bike length behind the other.',
      ],
      say: [
        'Click before the hill, not on it.',
        'Soft feet while the chain moves.',
        'Look at the hill, not at the chain.',
      ],
      question: ['Which hill caught most of us?', 'Where shall we click next time?'],
      drill: ['One child at a time, on a quiet closed place, with an adult in charge. The cards say how.'],
      watch: [
        'Feet that stop, heads that look down, children who wait in the way.',
        'Praise the click, not the speed. Nobody is compared with anybody.',
      ],
      end: [
        'What will you do before the next hill?',
        'Show somebody at home how your bike clicks.',
        'Hand out the sheet for home.',
      ],
    },
  },
};

/** Id of a plan as it stands in an address. */
export function planIdOf(audience: TeachAudience, minutes: number): string {
  return `${audience}-${minutes}`;
}

/** All plans by their ids. */
export const SESSION_PLANS: ReadonlyMap<string, SessionPlan> = new Map(
  (Object.keys(GROUPS) as TeachAudience[]).flatMap((audience) =>
    LENGTHS_MIN.map((minutes) => [planIdOf(audience, minutes), planOf(audience, minutes)] as const),
  ),
);

function planOf(audience: TeachAudience, length: LengthMin): SessionPlan {
  const { title, levels, drills, lines, longer } = GROUPS[audience];
  const part = (name: SessionPart): SessionPlan['parts'][SessionPart] => {
    const own = name === 'road' ? [ROAD[length]] : lines[name];
    return {
      minutes: MINUTES[length][name],
      lines: name === 'warmUp' && length > 20 ? [...own, longer] : own,
    };
  };
  return {
    kind: 'session-plan',
    schema: 1,
    title: `${title}, ${length} minutes`,
    audience,
    minutes: length,
    levelId: levels[length],
    drills: drills[length],
    parts: {
      warmUp: part('warmUp'),
      say: part('say'),
      road: part('road'),
      question: part('question'),
      drill: part('drill'),
      watch: part('watch'),
      end: part('end'),
    },
  };
}
