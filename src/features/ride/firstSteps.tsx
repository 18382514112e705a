/** The first steps with the levers: what to do now, as a sign, a word and this device's key or pad. */
import type { JSX } from 'preact';
import type { KeyAction, Settings } from '../../core/settings/settings.ts';
import type { FirstStepShown } from '../../state/firstSteps.ts';
import type { Send } from '../../state/store.ts';
import { Sign } from '../../ui/sign.tsx';
import { keyName } from '../../words/common.ts';
import { stepDone } from '../../words/firstSteps.ts';
import { words } from '../../words/words.ts';
import { Button } from '../../ui/controls.tsx';

const say = words('ride');

export function FirstStepsPanel(props: {
  readonly shown: FirstStepShown;
  readonly settings: Settings;
  readonly send: Send;
}): JSX.Element | null {
  const { asked, instead, done } = props.shown;
  const { settings, send } = props;
  const skip = (): void => {
    send({ kind: 'set', settings: { leversKnown: true } });
    // The button goes with it; keys belong to the ride again.
    document.querySelector<HTMLElement>('[data-takes-focus]')?.focus();
  };
  if (asked === null && done === null) return null;
  return (
    <div class="first-steps" data-first-step={asked ?? 'rolling'}>
      <div class="paper" aria-hidden="true">
        {asked === null ? (
          <p class="first-steps-done">{done !== null && stepDone(done, settings.bike)}</p>
        ) : (
          <>
            {instead !== null && (
              <p class="first-steps-instead">{`${say(`wrong-${instead}`)} ${say('instead')}`}</p>
            )}
            <Sign action={asked} />
            <strong>{say(`step-${asked}`)}</strong>
            <How action={asked} settings={settings} />
          </>
        )}
      </div>
      {asked !== null && (
        <Button data-skip-first-steps onClick={skip}>
          {say('skip')}
        </Button>
      )}
    </div>
  );
}

/** The key, and the lit pad where there are pads; styles show what this device has. */
function How({ action, settings }: { readonly action: KeyAction; readonly settings: Settings }): JSX.Element {
  const isHeld = action === 'ease' && settings.holdMode === 'hold';
  return (
    <>
      <span class="first-steps-key">
        {isHeld && `${say('hold')} `}
        <kbd>{keyName(settings.keys[action][0] ?? '')}</kbd>
      </span>
      <span class="first-steps-pad">{say(isHeld ? 'holdPad' : 'pad')}</span>
    </>
  );
}
