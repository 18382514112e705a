/**
 * What there is to say about one road: one finding, worked out once, which every board, the page on paper and the
 * question for children go by. How a single ride took a pitch is `taken.ts`.
 */
import type { GroupPitch } from './groupPitches.ts';

/** From this share of the more common way on, the other way is said too (ours). */
const MIXED_FROM = 0.5;

export interface RoadVerdict {
  /** `right`: no ride took any pitch too early or too late; `none`: no pitch asked anything. */
  readonly kind: 'late' | 'early' | 'mixed' | 'right' | 'none';
  /** Index of the pitch at which it happened to most riders: the one that is named, framed and counted. */
  readonly pitch: number | null;
  /** Different riders it happened to there at least once, of all who were asked there. */
  readonly riders: number;
  readonly of: number;
}

/** Riders to whom it happened at a pitch in the way a verdict is about. */
export function ridersOf(pitch: GroupPitch, kind: RoadVerdict['kind']): number {
  if (kind === 'late') return pitch.lateRiders;
  if (kind === 'early') return pitch.earlyRiders;
  return pitch.eitherRiders;
}

export function verdictOf(pitches: readonly GroupPitch[]): RoadVerdict {
  const asked = pitches.filter((pitch) => pitch.rides > 0);
  if (asked.length === 0) return { kind: 'none', pitch: null, riders: 0, of: 0 };
  const kind = kindOf(asked);
  if (kind === 'right') return { kind, pitch: null, riders: 0, of: 0 };
  // Where as many had it the other way round, another pitch shows better what is said.
  const clear = asked.filter(
    (pitch) => kind === 'mixed' || ridersOf(pitch, kind) * 2 > pitch.earlyRiders + pitch.lateRiders,
  );
  const [most] = clear.toSorted(
    (a, b) => ridersOf(b, kind) - ridersOf(a, kind) || wrong(b) - wrong(a) || a.index - b.index,
  ) as [GroupPitch];
  return { kind, pitch: most.index, riders: ridersOf(most, kind), of: most.riders };
}

const wrong = ({ timing }: GroupPitch): number => timing.tooEarly + timing.tooLate;

/** A group is late or early only where it is so by its rides and by its riders. */
function kindOf(pitches: readonly GroupPitch[]): 'late' | 'early' | 'mixed' | 'right' {
  const sum = (count: (pitch: GroupPitch) => number): number =>
    pitches.reduce((all, pitch) => all + count(pitch), 0);
  const counts = [
    { early: sum(({ timing }) => timing.tooEarly), late: sum(({ timing }) => timing.tooLate) },
    { early: sum(({ earlyRiders }) => earlyRiders), late: sum(({ lateRiders }) => lateRiders) },
  ];
  if (counts.every(({ early, late }) => early + late === 0)) return 'right';
  if (counts.every(({ early, late }) => early < MIXED_FROM * late)) return 'late';
  if (counts.every(({ early, late }) => late < MIXED_FROM * early)) return 'early';
  return 'mixed';
}
