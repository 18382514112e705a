/** What a page has to wait for, code or an owner: fetched when it is drawn, asked for again when a person says so. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import { Sheet } from '../ui/parts.tsx';
import { useAnswer } from '../ui/hooks.ts';
import { common } from '../words/common.ts';
import { words } from '../words/words.ts';

const clinic = words('clinic');

interface Fetched<T> {
  /** Null while it is not there. */
  readonly one: T | null;
  readonly failed: boolean;
  readonly again: () => void;
}

/** What is here already is not asked for. */
const never = (): Promise<never> => new Promise(() => undefined);

/** Asked for once, and again when a person says so; not at all where it is `known`. */
export function useFetched<T>(fetchIt: () => Promise<T>, known: T | null = null): Fetched<T> {
  const [times, setTimes] = useState(0);
  const answer = useAnswer(known === null ? fetchIt : never, [times]);
  return {
    one: known ?? (answer === 'waiting' || answer === 'failed' ? null : answer),
    failed: answer === 'failed',
    again: () => setTimes(times + 1),
  };
}

interface Shown {
  readonly fetched: Pick<Fetched<unknown>, 'failed' | 'again'>;
}

const Again = ({ fetched: { again } }: Shown): JSX.Element => (
  <Button strong data-fetch-again onClick={again}>
    {common('coming-tryAgain')}
  </Button>
);

/** What is said while code is on its way, and the button where it did not come. */
export const Coming = ({ fetched }: Shown): JSX.Element => (
  <>
    <output>{fetched.failed ? common('coming-failed') : common('coming-loading')}</output>
    {fetched.failed && <Again fetched={fetched} />}
  </>
);

/** Stands where the page of an owner will be. */
export const Waiting = ({ title, fetched }: Shown & { readonly title: string }): JSX.Element => (
  <Sheet title={title}>
    <section class="paper">
      <output>{fetched.failed ? clinic('openFailed') : clinic('opening')}</output>
      {fetched.failed && (
        <div class="buttons">
          <Again fetched={fetched} />
        </div>
      )}
    </section>
  </Sheet>
);
