import { arrivalWords } from '../../words/arrival.ts';
import { commonWords } from '../../words/common.ts';
/**
 * Keeps the game out of pages of others: who frames it could lay something over its buttons. A server can forbid
 * that with a header, a page cannot, so on a host without our headers the game refuses to start and says why.
 * Pages of the same origin may frame it: they could do anything to it anyway. Loaded before all else.
 */

/** The part of a window that is looked at. */
interface Framed {
  readonly parent: Framed;
  readonly location: { readonly origin: string };
}

/** Whether a page of another origin stands anywhere around this window. */
export function framedByOthers(page: Framed): boolean {
  for (let inner = page; inner.parent !== inner; inner = inner.parent) {
    try {
      if (inner.parent.location.origin !== page.location.origin) return true;
    } catch {
      // Windows of others do not tell where they are.
      return true;
    }
  }
  return false;
}

function sayWhy(): void {
  const place = document.createElement('main');
  place.className = 'arrival';
  const title = document.createElement('h1');
  title.textContent = commonWords.name;
  const why = document.createElement('p');
  why.textContent = arrivalWords.framed;
  const link = document.createElement('a');
  link.className = 'button strong';
  link.textContent = arrivalWords.alone;
  // Without what stands behind it: whoever framed the page chose that.
  link.href = new URL('./', document.baseURI).href;
  link.target = '_blank';
  link.rel = 'noopener';
  place.append(title, why, link);
  document.body.replaceChildren(place);
}

if (framedByOthers(window)) {
  sayWhy();
  // Whoever imports this does not start.
  throw new Error('Before the Hill does not start inside a page of another origin.');
}
