/** The places of a ride in a page: drawn empty by the page, found by whoever rides. */
import type { JSX } from 'preact';
import { RIDE_PLACES, type RidePlace, type RidePlaces } from '../state/ridePlaces.ts';

/** One of the places; what is said for the ear is read aloud and not seen. */
export function RideSpot({ place }: { readonly place: RidePlace }): JSX.Element {
  return place === 'ear' ? (
    <div class="unseen" data-place={place} aria-live="assertive" />
  ) : (
    <div class={`ride-${place}`} data-place={place} />
  );
}

/** All places within an element, or null where one of them is not there (yet). */
export function ridePlacesIn(root: ParentNode | null): RidePlaces | null {
  const found = RIDE_PLACES.map(
    (place) => [place, root?.querySelector(`[data-place="${place}"]`) ?? null] as const,
  );
  if (found.some(([, element]) => element === null)) return null;
  return Object.fromEntries(found) as Record<RidePlace, HTMLElement>;
}
