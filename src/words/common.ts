/** Names that several pages say: the game, its places, bikes and riders, and how keys are called. */
import { hasHub, shifterPlaces } from '../core/model/shifters.ts';
import type { Level } from '../core/level/schema.ts';
import type { Bike } from '../core/model/types.ts';
import { words } from './words.ts';

export const common = words('common');
/** What keys do, and how they are called. */
export const keyWords = words('keys');
/** Names that the first page does without. */
const names = words('names');
const kept = words('kept');

/** A bundled bike by its name; any other is the rider's own. */
export function bikeName(id: string): string {
  const name = `bike-${id}`;
  return common.has(name) ? common(name) : common('bike-own');
}

/** A bundled rider by name; any other is somebody with numbers of their own. */
export function riderName(id: string): string {
  const name = `rider-${id}`;
  return names.has(name) ? names(name) : names('rider-own');
}

export const lessonName = (lesson: Level['teaches']): string => names(`lesson-${lesson}`);

/** The same on a child's patch, in a child's words where the lesson's own name is none. */
export function patchName(lesson: Level['teaches']): string {
  const name = `patch-${lesson}`;
  return names.has(name) ? names(name) : lessonName(lesson);
}

/** What a level says: a bundled or made one in the language that is spoken now, an own one as it was written, with the language it is in. */
export function levelWords(
  own: Pick<Level, 'id' | 'title' | 'sentence' | 'lang'>,
  bundled: readonly Level[],
): Pick<Level, 'title' | 'sentence' | 'lang'> {
  const made = /^(check|free)-ride/.exec(own.id)?.[1] as 'check' | 'free' | undefined;
  if (made !== undefined) return { title: names(`lesson-${made}`), sentence: names(`sentence-${made}`) };
  return bundled.find(({ id }) => id === own.id) ?? own;
}

export function bikeGears(bike: Bike): string {
  const [rings = 1, rear = 1] = shifterPlaces(bike);
  const where = !hasHub(bike) ? (rings * rear === 1 ? 'single' : 'sprockets') : rings === 1 ? 'hub' : 'both';
  return common('bike-gears', { rings, rear, where });
}

/** What a person should know about the keeping, by its code. */
export function keepingNotice(code: string | null): string | null {
  // Said when words could not be fetched either.
  if (code === 'not-fetched') return common('health-not-fetched');
  const name = `health-${code ?? ''}`;
  return kept.has(name) ? kept(name) : null;
}

const ARROWS = { ArrowUp: '↑', ArrowDown: '↓', ArrowLeft: '←', ArrowRight: '→' } as const;

/** How a key is called: its letter, its arrow, or its name. */
export function keyName(code: string): string {
  const name = `name-${code}`;
  if (keyWords.has(name)) return keyWords(name);
  return ARROWS[code as keyof typeof ARROWS] ?? code.replace(/^(Key|Digit)/, '');
}
