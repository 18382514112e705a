/** What can be done after a ride: again and next at once; watch, print and keep after reading. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { SayDebrief } from './speech.ts';
import type { DebriefProps } from './types.ts';

type RowProps = Pick<
  DebriefProps,
  'saved' | 'nextLevelTitle' | 'againLabel' | 'onRideAgain' | 'onNextLevel'
> & {
  readonly say: SayDebrief;
  /** The next level is what the ride leads to. */
  readonly onwards: boolean;
};

/** Again and next, and whether the ride was kept. */
export function DoingRow(props: RowProps): JSX.Element {
  const { say, saved, nextLevelTitle, onwards } = props;
  return (
    <>
      <div class="doing-row">
        <Button look={onwards ? '' : 'strong'} data-ride-again onClick={props.onRideAgain}>
          {props.againLabel ?? say('doing-again')}
        </Button>
        {nextLevelTitle !== null && (
          <Button look={onwards ? 'strong' : ''} data-next-level onClick={props.onNextLevel}>
            {say('doing-next', { level: nextLevelTitle })}
          </Button>
        )}
      </div>
      <p class="quiet" data-saved={saved.state}>
        {say(`saved-${saved.state}`)} {saved.sentence}
      </p>
    </>
  );
}

type MoreProps = Pick<DebriefProps, 'onWatch' | 'onPrint' | 'onSaveRide'> & {
  readonly say: SayDebrief;
  /** False until the guess has been made: the printed sheet would tell. */
  readonly open: boolean;
  /** Paints and hands over the picture; rejects where that fails. */
  readonly savePicture: () => Promise<void>;
};

/** Watch, print, keep. */
export function DoingMore(props: MoreProps): JSX.Element {
  const { say, open } = props;
  const [failed, setFailed] = useState(false);
  const paint = (): void => {
    setFailed(false);
    props.savePicture().catch(() => setFailed(true));
  };
  return (
    <section class="cut paper-card doing" aria-label={say('doing-title')}>
      <div class="doing-row">
        <Button look="small" onClick={() => props.onWatch(0)}>
          {say('doing-watch')}
        </Button>
        {open && (
          <>
            <Button look="small" data-print onClick={props.onPrint}>
              {say('doing-print')}
            </Button>
            <Button look="small" data-save-picture onClick={paint}>
              {say('doing-savePicture')}
            </Button>
          </>
        )}
        <Button look="small" data-save-ride onClick={props.onSaveRide}>
          {say('doing-saveRide')}
        </Button>
      </div>
      {failed && <p role="alert">{say('doing-pictureFailed')}</p>}
    </section>
  );
}
