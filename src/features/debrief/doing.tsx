/** What can be done after a ride: again and next at once; watch, print and keep after reading. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { DebriefWords } from './words.ts';
import type { DebriefProps } from './types.ts';

type RowProps = Pick<
  DebriefProps,
  'saved' | 'nextLevelTitle' | 'againLabel' | 'onRideAgain' | 'onNextLevel'
> & {
  readonly words: DebriefWords;
  /** The next level is what the ride leads to. */
  readonly onwards: boolean;
};

/** Again and next, and whether the ride was kept. */
export function DoingRow(props: RowProps): JSX.Element {
  const { words, saved, nextLevelTitle, onwards } = props;
  const { doing } = words;
  return (
    <>
      <div class="doing-row">
        <Button look={onwards ? '' : 'strong'} data-ride-again onClick={props.onRideAgain}>
          {props.againLabel ?? doing.again}
        </Button>
        {nextLevelTitle !== null && (
          <Button look={onwards ? 'strong' : ''} data-next-level onClick={props.onNextLevel}>
            {doing.next(nextLevelTitle)}
          </Button>
        )}
      </div>
      <p class="quiet" data-saved={saved.state}>
        {doing.saved[saved.state]} {saved.sentence}
      </p>
    </>
  );
}

type MoreProps = Pick<DebriefProps, 'onWatch' | 'onPrint' | 'onSaveRide'> & {
  readonly words: DebriefWords;
  /** False until the guess has been made: the printed sheet would tell. */
  readonly open: boolean;
  /** Paints and hands over the picture; rejects where that fails. */
  readonly savePicture: () => Promise<void>;
};

/** Watch, print, keep. */
export function DoingMore(props: MoreProps): JSX.Element {
  const { words, open } = props;
  const { doing } = words;
  const [failed, setFailed] = useState(false);
  const paint = (): void => {
    setFailed(false);
    props.savePicture().catch(() => setFailed(true));
  };
  return (
    <section class="paper-card doing" aria-label={doing.title}>
      <div class="doing-row">
        <Button look="small" onClick={() => props.onWatch(0)}>
          {doing.watch}
        </Button>
        {open && (
          <>
            <Button look="small" data-print onClick={props.onPrint}>
              {doing.print}
            </Button>
            <Button look="small" data-save-picture onClick={paint}>
              {doing.savePicture}
            </Button>
          </>
        )}
        <Button look="small" data-save-ride onClick={props.onSaveRide}>
          {doing.saveRide}
        </Button>
      </div>
      {failed && <p role="alert">{doing.pictureFailed}</p>}
    </section>
  );
}
