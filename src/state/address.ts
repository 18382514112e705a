/**
 * The address bar's part behind `#`, read and written. Pure; who listens to the bar is `main`'s business.
 */

export const VIEWS = [
  'start',
  'bike',
  'levels',
  'children',
  'ride',
  'debrief',
  'progress',
  'clinic',
  'bench',
  'gearcheck',
  'road',
  'two',
  'join',
  'collect',
  'teach',
  'about',
] as const;

export type View = (typeof VIEWS)[number];

/** A place in the game; `rest` is what a page makes of it (the id of a level for a ride). */
export interface Address {
  readonly view: View;
  readonly rest: string;
}

/** Reads `#view/rest`; anything unknown is the start page. */
export function parseAddress(hash: string): Address {
  const [name = '', ...rest] = hash.replace(/^#\/?/, '').split('/');
  const view = VIEWS.find((one) => one === name);
  return view === undefined ? { view: 'start', rest: '' } : { view, rest: decode(rest.join('/')) };
}

/** Writes an address as it stands behind the page's name. */
export function hashOf({ view, rest }: Address): string {
  return rest === '' ? `#${view}` : `#${view}/${encodeURIComponent(rest)}`;
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
