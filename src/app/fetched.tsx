/** Owners that a page has to wait for: fetched when it is drawn, asked for again when a person says so. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../ui/controls.tsx';
import { Sheet } from '../ui/parts.tsx';
import { useAnswer } from '../ui/hooks.ts';
import { common } from '../words/common.ts';
import { words } from '../words/words.ts';

const clinic = words('clinic');

/** An owner that is fetched. */
interface Fetched<T> {
  /** Null while it is not there. */
  readonly one: T | null;
  readonly failed: boolean;
  readonly again: () => void;
}

/** An owner, once it is there; asked for once, and again when a person says so. */
export function useFetched<T>(fetchIt: () => Promise<T>): Fetched<T> {
  const [times, setTimes] = useState(0);
  const one = useAnswer(fetchIt, [times]);
  return {
    one: one === 'waiting' || one === 'failed' ? null : one,
    failed: one === 'failed',
    again: () => setTimes(times + 1),
  };
}

/** Stands where a page will be. */
export function Waiting(props: {
  readonly title: string;
  readonly fetched: Pick<Fetched<unknown>, 'failed' | 'again'>;
}): JSX.Element {
  const { failed, again } = props.fetched;
  return (
    <Sheet title={props.title}>
      <section class="paper">
        <output>{failed ? clinic('openFailed') : clinic('opening')}</output>
        {failed && (
          <div class="buttons">
            <Button strong data-fetch-again onClick={again}>
              {common('coming-tryAgain')}
            </Button>
          </div>
        )}
      </section>
    </Sheet>
  );
}
