/** How a gear is written: by its teeth, or by its number in a hub. */
import type { GearTold } from '../core/model/transmission.ts';
import { common } from './common.ts';

/** "34 × 17", never broken over two lines; in a hub "2 of 3", because its gears have no teeth to count. */
export function gearName({ ringTeeth, sprocketTeeth, hub = null }: GearTold): string {
  return hub === null
    ? `${ringTeeth}\u00a0×\u00a0${sprocketTeeth}`
    : common('gear-in-hub', { number: hub.number, of: hub.of });
}

/** Where shifters are on their way to, as short as can be: the ring only where that changes, too. */
export function gearWanted(from: GearTold, to: GearTold): string {
  if (from.ringTeeth !== to.ringTeeth) return gearName(to);
  return String(to.hub?.number ?? to.sprocketTeeth);
}
