/**
 * What a ride did at one pitch: where the easier gears came against the foot, how much of the change was done by then,
 * and how quickly the legs turned before, at the foot and at their slowest. The same for recorded seconds and for the
 * samples of a ride in the game, so that the two can stand beside each other.
 */
import type { Pitch } from '../course/types.ts';
import { clamp, mean } from '../math/numbers.ts';
import { LEAST_CHANGE } from './gears.ts';

/** A place of a ride: the gear where it is known, and the legs where they turn. */
interface PlacedGear {
  readonly distanceM: number;
  readonly timeS: number;
  readonly developmentM: number | null;
  /** 0 while the legs rest, null where it is not known. */
  readonly cadenceRpm: number | null;
}

export type PitchFigures = Readonly<ReturnType<typeof figuresOf>>;

/** So far before the foot a change belongs to the pitch (m). */
const BEFORE_M = 100;
/** …and so far behind its end (m). */
const BEHIND_M = 20;
const AROUND_FOOT_S = 2;
const BEFORE_END_M = 20;
const BEFORE_S = 10;
const SLOWEST_S = 5;
const LONGEST_GAP_S = 1.05;

export function figuresOf(places: readonly PlacedGear[], pitch: Pick<Pitch, 'footM' | 'endM'>) {
  const { footM, endM } = pitch;
  const near = places.filter(
    ({ distanceM }) => distanceM >= footM - BEFORE_M && distanceM <= endM + BEHIND_M,
  );
  const read = near.filter((one): one is Read => one.developmentM !== null);
  const before = read.filter(({ distanceM }) => distanceM < footM);
  const after = read.filter(({ distanceM }) => distanceM >= footM);
  const readable = before.length > 0 && after.length > 0;
  const turning = places.filter(({ cadenceRpm }) => cadenceRpm !== null && cadenceRpm > 0);
  const atFoot = turning.find(({ distanceM }) => distanceM >= footM);
  return {
    ...(readable ? changeTo(read, footM) : NO_CHANGE),
    /** Whether gears could be read around the foot and on the pitch. */
    readable,
    /** Mean cadence of ten seconds up to 20 m before the foot, of two seconds on either side of it, and of the five slowest. */
    beforeRpm: meanRpm(lastSeconds(turning, footM - BEFORE_END_M)),
    footRpm:
      atFoot === undefined
        ? null
        : meanRpm(turning.filter(({ timeS }) => Math.abs(timeS - atFoot.timeS) <= AROUND_FOOT_S)),
    lowestRpm: slowest(turning.filter(({ distanceM }) => distanceM >= footM && distanceM <= endM + BEHIND_M)),
  };
}

type Read = PlacedGear & { readonly developmentM: number };

interface Change {
  /** First easier gear against the foot (m; before it is negative); null where none came or none can be told. */
  readonly firstEasierM: number | null;
  /** Share of the change to the easiest gear on the pitch that was done at the foot, 0 to 1; null as above. */
  readonly shareAtFoot: number | null;
}
const NO_CHANGE: Change = { firstEasierM: null, shareAtFoot: null };

/** Where the way to the easiest gear begins, and how far along it the foot lies. */
function changeTo(read: readonly Read[], footM: number): Change {
  const easiest = read.reduce((a, b) => (b.developmentM < a.developmentM ? b : a));
  const upTo = read.slice(0, read.indexOf(easiest) + 1);
  const hardest = upTo.reduce((a, b) => (b.developmentM >= a.developmentM ? b : a));
  if (easiest.developmentM > hardest.developmentM * (1 - LEAST_CHANGE)) return NO_CHANGE;
  const from = upTo.indexOf(hardest);
  const next = upTo.findIndex(
    (one, i) => i > from && one.developmentM < hardest.developmentM * (1 - LEAST_CHANGE),
  );
  const first = upTo[next] as Read;
  const last = upTo[next - 1] as Read;
  const there = read.findLast(({ distanceM }) => distanceM <= footM) ?? hardest;
  const done = (hardest.developmentM - there.developmentM) / (hardest.developmentM - easiest.developmentM);
  return {
    firstEasierM: (last.distanceM + first.distanceM) / 2 - footM,
    shareAtFoot: there.distanceM < hardest.distanceM ? 0 : clamp(done),
  };
}

function lastSeconds(turning: readonly PlacedGear[], endM: number): PlacedGear[] {
  const before = turning.filter(({ distanceM }) => distanceM <= endM);
  const last = before.at(-1);
  return last === undefined || endM - last.distanceM > BEFORE_M
    ? []
    : before.filter(({ timeS }) => timeS > last.timeS - BEFORE_S);
}

function meanRpm(places: readonly PlacedGear[]): number | null {
  return places.length === 0 ? null : mean(places.map(({ cadenceRpm }) => cadenceRpm ?? 0));
}

/** The least mean of five seconds in a row in which the legs turned all along (rpm). */
function slowest(turning: readonly PlacedGear[]): number | null {
  let least: number | null = null;
  let from = 0;
  for (const [to, { timeS }] of turning.entries()) {
    const before = turning[to - 1];
    if (before !== undefined && timeS - before.timeS > LONGEST_GAP_S) from = to;
    while (timeS - (turning[from] as PlacedGear).timeS >= SLOWEST_S) from += 1;
    if (timeS - (turning[from] as PlacedGear).timeS < SLOWEST_S - LONGEST_GAP_S) continue;
    const rpm = meanRpm(turning.slice(from, to + 1)) as number;
    least = least === null ? rpm : Math.min(least, rpm);
  }
  return least;
}
