/** Names that several pages say: the game, its places, lessons, bikes, riders and keys. */
import { hasHub, shifterPlaces } from '../core/model/shifters.ts';
import type { Bike } from '../core/model/types.ts';
import { words } from './words.ts';

export const common = words('common');

/** A bundled bike by its name; any other is the rider's own. */
export function bikeName(id: string): string {
  const name = `bike-${id}`;
  return common.has(name) ? common(name) : common('bike-own');
}

/** A bundled rider by name; any other is somebody with numbers of their own. */
export function riderName(id: string): string {
  const name = `rider-${id}`;
  return common.has(name) ? common(name) : common('rider-own');
}

/** How many gears a bike has, and where. */
export function bikeGears(bike: Bike): string {
  const [rings = 1, rear = 1] = shifterPlaces(bike);
  const where = !hasHub(bike) ? 'sprockets' : rings === 1 ? 'hub' : 'both';
  return common('bike-gears', { rings, rear, where });
}

/** What a person should know about the keeping, by its code. */
export function keepingNotice(code: string | null): string | null {
  const name = `health-${code ?? ''}`;
  return common.has(name) ? common(name) : null;
}

const ARROWS = { ArrowUp: '↑', ArrowDown: '↓', ArrowLeft: '←', ArrowRight: '→' } as const;

/** How a key is called: its letter, its arrow, or its name. */
export function keyName(code: string): string {
  const name = `key-name-${code}`;
  if (common.has(name)) return common(name);
  return ARROWS[code as keyof typeof ARROWS] ?? code.replace(/^(Key|Digit)/, '');
}
