/**
 * What several people on one device chose, how far their rides have come, and the totals of their series. Rides that are
 * over are held here, outside the page, so that whoever looks at one of them finds the others again; they are written
 * nowhere.
 */
import { useLayoutEffect, useState } from 'preact/hooks';
import type { RideResult } from '../../core/coach/results.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { mostRelayRiders } from '../../core/level/relay.ts';
import type { Level } from '../../core/level/schema.ts';
import type { RiderChoice } from './services.ts';

/** Rides of a series; the best of each rider's own counts. */
export const SERIES = 3;

/** Totals of one round of rides, in the order of the riders; null while they are not known. */
export type RoundTotals = readonly (number | null)[];

/** In a relay `rides` are the legs that are ridden; whoever comes next rides, or is asked to the gate. */
type Phase =
  | { readonly kind: 'choosing' }
  | { readonly kind: 'gate' | 'riding' | 'after'; readonly rides: readonly RideResult[] };

interface Rounds {
  readonly choice: TogetherChoice;
  readonly phase: Phase;
  /** Rounds of rides since the page was opened; each is drawn anew. */
  readonly round: number;
  /** Totals of the series so far, and those of the rides that are looked at. */
  readonly before: readonly RoundTotals[];
  readonly now: RoundTotals;
}

let kept: Rounds | null = null;

/** Lets go of all rides that are held. */
export function forgetRounds(): void {
  kept = null;
}

/** What is found again: a leg that was broken off begins anew at its gate. */
function toKeep(rounds: Rounds): Rounds | null {
  const { phase } = rounds;
  if (phase.kind === 'choosing' || phase.rides.length === 0) return null;
  return phase.kind === 'riding' ? { ...rounds, phase: { ...phase, kind: 'gate' } } : rounds;
}

/** What was chosen, how far its rides have come, and the totals of the series. */
export function useRounds(first: () => TogetherChoice) {
  const [rounds, setRounds] = useState<Rounds>(
    () => kept ?? { choice: first(), phase: { kind: 'choosing' }, round: 0, before: [], now: [] },
  );
  useLayoutEffect(() => {
    kept = toKeep(rounds);
  }, [rounds]);
  const change = (part: Partial<Rounds>): void => setRounds((all) => ({ ...all, ...part }));
  const { before, now, round } = rounds;
  return {
    ...rounds,
    setChoice: (choice: TogetherChoice) => change({ choice }),
    setPhase: (phase: Phase) => change({ phase }),
    setTotal: (rider: number, total: number) =>
      setRounds((all) => ({ ...all, now: all.now.map((one, i) => (i === rider ? total : one)) })),
    ride: (choice: TogetherChoice, goesOn: boolean): void => {
      const count = goesOn && before.length + 1 < SERIES;
      change({
        choice,
        before: count ? [...before, now] : [],
        now: ridersTogether(choice).map(() => null),
        round: round + 1,
        phase: { kind: 'riding', rides: [] },
      });
    },
  };
}

/** Side by side; face to face with a tablet lying flat between them; one after the other on one road. */
export const RIDING_WAYS = ['beside', 'facing', 'relay'] as const;
export type Way = (typeof RIDING_WAYS)[number];

export interface TogetherChoice {
  /** Null only where the game has no levels at all. */
  readonly level: Level | null;
  readonly way: Way;
  /** At least two; more than two ride only in a relay. */
  readonly riders: readonly RiderChoice[];
  readonly autoEase: boolean;
  /** Whoever's best ride takes longer starts first, where they ride at once. */
  readonly headStart: boolean;
}

/** Those who ride; nobody where the road is none for a relay. */
export function ridersTogether({ level, way, riders }: TogetherChoice): readonly RiderChoice[] {
  if (way !== 'relay') return riders.slice(0, 2);
  const most = mostOn(level);
  return most < 2 ? [] : riders.slice(0, most);
}

/** How many can ride a relay on this road. */
export function mostOn(level: Level | null): number {
  return level === null ? 0 : mostRelayRiders(courseOfLevel(level));
}

/** Everybody moves on by one place: sides are swapped, and somebody else rides the first leg. */
export function movedOn(choice: TogetherChoice): TogetherChoice {
  const [first, ...others] = ridersTogether(choice);
  return first === undefined ? choice : { ...choice, riders: [...others, first] };
}
