/**
 * Pages that are fetched when they are first wanted, so that the start page stays small. While one is on its
 * way a line says so; if it cannot be fetched, a sentence and a button say what to do.
 */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import type { Services } from './services.ts';
import type { View } from '../state/address.ts';
import type { Page } from '../ui/parts.tsx';
import { Sheet } from '../ui/parts.tsx';
import { bringWords } from './device/language.ts';
import { common } from '../words/common.ts';

/** A page that is still to be fetched. */
export interface LazyPage {
  readonly page: Page<Services>;
  /** Fetches it now, because it will be wanted soon. */
  readonly preload: () => Promise<void>;
}

/** Makes a page out of its name in the navigation and a way to fetch it. */
export function lazyPage(
  name: Exclude<View, 'start' | 'ride'>,
  fetchPage: () => Promise<Page<Services>>,
): LazyPage {
  const title = (): string => common(`nav-${name}`);
  let fetched: Page<Services> | null = null;
  const get = async (): Promise<void> => {
    const page = await fetchPage();
    await bringWords();
    fetched = page;
  };
  return {
    page: (...shown) => (
      <Coming key={title()} title={title()} get={get} draw={() => fetched?.(...shown) ?? null} />
    ),
    // A page that did not come now is asked for again when it is opened.
    preload: () => get().catch(() => undefined),
  };
}

function Coming(props: {
  readonly title: string;
  readonly get: () => Promise<void>;
  /** The page, or null while it is on its way. */
  readonly draw: () => JSX.Element | null;
}): JSX.Element {
  const { title, get, draw } = props;
  const [state, setState] = useState<'coming' | 'here' | 'failed'>('coming');
  const fetchPage = (): void => {
    setState('coming');
    get().then(
      () => setState('here'),
      () => setState('failed'),
    );
  };
  const page = draw();
  useEffect(() => {
    if (page === null) fetchPage();
  }, []);
  if (page !== null) return page;
  const failed = state === 'failed';
  return (
    <Sheet title={title}>
      <section class="paper debrief" data-coming={failed ? 'failed' : 'yes'}>
        <output>{failed ? common('coming-failed') : common('coming-loading')}</output>
        {failed && (
          <Button strong onClick={fetchPage}>
            {common('coming-tryAgain')}
          </Button>
        )}
      </section>
    </Sheet>
  );
}
