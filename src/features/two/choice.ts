/** What several riders on one device chose. Plain data. */
import { courseOfLevel } from '../../core/level/build.ts';
import { mostRelayRiders } from '../../core/level/relay.ts';
import type { Level } from '../../core/level/schema.ts';
import type { RiderChoice } from './services.ts';

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
