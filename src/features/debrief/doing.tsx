/** What can be done after reading: ride, watch, print, keep. Says whether the ride was kept. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { DebriefWords } from './words.ts';
import type { DebriefProps } from './types.ts';

type DoingProps = Pick<
  DebriefProps,
  | 'saved'
  | 'nextLevelTitle'
  | 'againLabel'
  | 'onRideAgain'
  | 'onNextLevel'
  | 'onWatch'
  | 'onPrint'
  | 'onSaveRide'
> & {
  readonly words: DebriefWords;
  /** False until the guess has been made: the printed sheet would tell. */
  readonly open: boolean;
  /** The next level is what the verdict advises. */
  readonly onwards: boolean;
  /** Paints and hands over the picture; rejects where that fails. */
  readonly savePicture: () => Promise<void>;
};

/** The row of buttons. */
export function DoingRow(props: DoingProps): JSX.Element {
  const { words, saved, nextLevelTitle, open, onwards } = props;
  const { doing } = words;
  const [failed, setFailed] = useState(false);
  const paint = (): void => {
    setFailed(false);
    props.savePicture().catch(() => setFailed(true));
  };
  return (
    <section class="paper-card doing" aria-label={doing.title}>
      <div class="doing-row">
        <button type="button" class={onwards ? '' : 'strong'} data-ride-again onClick={props.onRideAgain}>
          {props.againLabel ?? doing.again}
        </button>
        {nextLevelTitle !== null && (
          <button type="button" class={onwards ? 'strong' : ''} data-next-level onClick={props.onNextLevel}>
            {doing.next(nextLevelTitle)}
          </button>
        )}
        <Button look="" onClick={() => props.onWatch(0)}>
          {doing.watch}
        </Button>
      </div>
      <div class="doing-row">
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
        <output class="quiet" data-saved={saved.state}>
          {doing.saved[saved.state]} {saved.sentence}
        </output>
      </div>
      {failed && <p role="alert">{doing.pictureFailed}</p>}
    </section>
  );
}
