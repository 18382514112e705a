/** Where a bike has shifters; apart from what they do, because the first page asks for no more than this. */
import type { Bike } from './types.ts';

/** How many places the shifters have: rings, then gears at the rear. */
export function shifterPlaces({
  chainringsTeeth,
  sprocketsTeeth,
}: Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>): readonly number[] {
  return [chainringsTeeth.length, sprocketsTeeth.length];
}

/** Whether there is a second shifter, at the rings. */
export function shiftsInFront(bike: Pick<Bike, 'chainringsTeeth'>): boolean {
  return bike.chainringsTeeth.length > 1;
}
