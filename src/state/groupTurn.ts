/**
 * One turn of a group session as the ride knows it: whose, which, on what road, bike and rider; and the places of a
 * session, written and read here alone. Kept apart from the pages of the session, which are fetched only when they
 * are wanted.
 */
import type { RiddenTurn } from '../core/group/savedRound.ts';
import type { Level } from '../core/level/schema.ts';
import type { Bike, Rider } from '../core/model/types.ts';

/** A turn that is being ridden, or was. */
export interface GroupTurn extends RiddenTurn {
  /** With seed and aids of this turn. */
  readonly level: Level;
  readonly bike: Bike;
  readonly rider: Rider;
}

/** Whether both name the same turn. */
export const isSameTurn = (one: RiddenTurn, other: RiddenTurn): boolean =>
  one.planId === other.planId &&
  one.nickname === other.nickname &&
  one.rideIndex === other.rideIndex &&
  one.attempt === other.attempt;

const BEFORE_PLACE = 'clinic/';

/** Place of a session, or of one of its tabs, within the clinic's pages. */
export function sessionPlace(planId: string, tab = ''): string {
  return tab === '' ? `s/${planId}` : `s/${planId}/${tab}`;
}

/** The session a place is in, and which of its tabs (empty for the first one); null where it is no place of a session. */
export function sessionOfPlace(place: string): { readonly planId: string; readonly tab: string } | null {
  const [kind, planId = '', tab = ''] = place.split('/');
  return kind === 's' ? { planId, tab } : null;
}

/** What stands behind `#ride/` while a turn of a session is ridden. */
export function restOfTurn(planId: string): string {
  return BEFORE_PLACE + sessionPlace(planId);
}

/** The clinic's place an address of a ride belongs to, or null where it is no ride of a session. */
export function placeOfRest(rest: string): string | null {
  const place = rest.startsWith(BEFORE_PLACE) ? rest.slice(BEFORE_PLACE.length) : '';
  return sessionOfPlace(place) === null ? null : place;
}
