/**
 * The session plans that come with the game: three groups, three lengths. Lengths of the parts are common practice, no source.
 */
import {
  type DrillId,
  type SessionPart,
  type SessionPlan,
  TEACH_AUDIENCES,
  type TeachAudience,
} from '../../core/group/sessionPlan.ts';
import { words } from '../../words/words.ts';

const say = words('teach');

export const LENGTHS_MIN = [20, 45, 60] as const;
type LengthMin = (typeof LENGTHS_MIN)[number];

/** Minutes of every part; together they are the session. */
const MINUTES: Readonly<Record<LengthMin, Readonly<Record<SessionPart, number>>>> = {
  20: { warmUp: 3, say: 2, road: 6, question: 2, drill: 5, watch: 0, end: 2 },
  45: { warmUp: 5, say: 3, road: 16, question: 5, drill: 13, watch: 0, end: 3 },
  60: { warmUp: 6, say: 3, road: 20, question: 6, drill: 21, watch: 0, end: 4 },
};

/** The roads and drills of each group. */
interface Group {
  readonly levels: Readonly<Record<LengthMin, string>>;
  readonly drills: Readonly<Record<LengthMin, readonly DrillId[]>>;
}

const GROUPS: Readonly<Record<TeachAudience, Group>> = {
  adults: {
    levels: { 20: 'one-pitch-announced', 45: 'one-pitch-announced', 60: 'rolling-road' },
    drills: { 20: ['cone'], 45: ['soft-feet', 'cone'], 60: ['soft-feet', 'cone', 'starting-gear'] },
  },
  mixed: {
    levels: { 20: 'soft-feet', 45: 'rolling-road', 60: 'rolling-road' },
    drills: { 20: ['talk'], 45: ['talk', 'cone'], 60: ['talk', 'cone', 'starting-gear'] },
  },
  children: {
    levels: { 20: 'click-before-the-hill', 45: 'click-before-the-hill', 60: 'three-little-hills' },
    drills: { 20: ['cone'], 45: ['cone', 'soft-feet'], 60: ['cone', 'soft-feet', 'starting-gear'] },
  },
};

/** Id of a plan as it stands in an address. */
export function planIdOf(audience: TeachAudience, minutes: number): string {
  return `${audience}-${minutes}`;
}

/** A plan by its id, in the language that is spoken; null where there is none. */
export function sessionPlan(id: string): SessionPlan | null {
  for (const audience of TEACH_AUDIENCES)
    for (const minutes of LENGTHS_MIN)
      if (planIdOf(audience, minutes) === id) return planOf(audience, minutes);
  return null;
}

function planOf(audience: TeachAudience, length: LengthMin): SessionPlan {
  const { levels, drills } = GROUPS[audience];
  const part = (name: SessionPart): SessionPlan['parts'][SessionPart] => {
    const own = name === 'road' ? [say(`road-${length}`)] : say.lines(`lines-${audience}-${name}`);
    return {
      minutes: MINUTES[length][name],
      lines: name === 'warmUp' && length > 20 ? [...own, say(`longer-${audience}`)] : own,
    };
  };
  return {
    kind: 'session-plan',
    schema: 1,
    title: say('planTitle', { audience: say(`audiences-${audience}`), minutes: length }),
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
