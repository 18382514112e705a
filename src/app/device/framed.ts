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

/** The build has written what is said then into the page. */
function sayWhy(): void {
  const said = document.querySelector<HTMLTemplateElement>('#framed')?.content.cloneNode(true);
  document.body.replaceChildren(...(said === undefined ? [] : [said]));
  // Without what stands behind it: whoever framed the page chose that.
  document.querySelector('a')?.setAttribute('href', new URL('./', document.baseURI).href);
}

if (framedByOthers(window)) {
  sayWhy();
  // Whoever imports this does not start.
  throw new Error('Before the Hill does not start inside a page of another origin.');
}
