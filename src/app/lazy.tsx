/**
 * Pages that are fetched when they are first wanted, so that the start page stays small. While one is on its
 * way a line says so; if it cannot be fetched, a sentence and a button say what to do.
 */
import type { JSX } from 'preact';
import type { Services } from './services.ts';
import type { View } from '../state/address.ts';
import type { Page } from '../ui/parts.tsx';
import { Sheet } from '../ui/parts.tsx';
import { bringWords } from './device/language.ts';
import { Coming, useFetched } from './fetched.tsx';
import { common } from '../words/common.ts';

export interface LazyPage {
  readonly page: Page<Services>;
  readonly preload: () => Promise<unknown>;
}

/** Makes a page out of its name in the navigation and a way to fetch it. */
export function lazyPage(
  name: Exclude<View, 'start' | 'ride'>,
  fetchPage: () => Promise<Page<Services>>,
): LazyPage {
  let here: Page<Services> | null = null;
  const get = async (): Promise<Page<Services>> => {
    const page = await fetchPage();
    await bringWords();
    here = page;
    return page;
  };
  function Late({ shown }: { readonly shown: Parameters<Page<Services>> }): JSX.Element {
    const fetched = useFetched(get, here);
    if (fetched.one !== null) return fetched.one(...shown);
    return (
      <Sheet title={common(`nav-${name}`)}>
        <section class="paper" data-coming={fetched.failed ? 'failed' : 'yes'}>
          <Coming fetched={fetched} />
        </section>
      </Sheet>
    );
  }
  return {
    page: (...shown) => <Late key={name} shown={shown} />,
    // A page that did not come now is asked for again when it is opened.
    preload: () => get().catch(() => undefined),
  };
}
