/** What a page and a running ride share: the elements a ride is put into, and how far it has come. */

/** Elements the ride is put into, by their `data-place`. */
export const RIDE_PLACES = ['picture', 'hud', 'pads', 'ear'] as const;
export type RidePlace = (typeof RIDE_PLACES)[number];

export type RidePlaces = Readonly<Record<RidePlace, HTMLElement>>;

export type RidePhaseShown = 'ready' | 'riding' | 'paused' | 'finished';
