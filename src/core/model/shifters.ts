/** Where a bike has shifters; apart from what they do, because the first page asks for no more than this. */
import { HUB_GEARS } from './hubKinds.ts';
import type { Bike, GearParts } from './types.ts';

/** How many places the shifters have: rings, then sprockets or gears in the hub. */
export function shifterPlaces(bike: GearParts & Pick<Bike, 'hub'>): readonly number[] {
  const { chainringsTeeth, sprocketsTeeth, hub } = bike;
  return [chainringsTeeth.length, hub === undefined ? sprocketsTeeth.length : HUB_GEARS[hub]];
}

/** Whether there is a second shifter, at the rings. */
export function shiftsInFront(bike: Pick<Bike, 'chainringsTeeth'>): boolean {
  return bike.chainringsTeeth.length > 1;
}

/** Whether the gears at the rear are in the hub, which changes while one does not push. */
export function hasHub(bike: Pick<Bike, 'hub'>): boolean {
  return bike.hub !== undefined;
}
