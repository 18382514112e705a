/** The first steps with the levers: what to do now, as a sign, a word and this device's key or pad. */
import type { JSX } from 'preact';
import type { KeyAction, Settings } from '../../core/settings/settings.ts';
import type { FirstStepShown } from '../../state/firstSteps.ts';
import type { Send } from '../../state/store.ts';
import { Sign } from '../../ui/sign.tsx';
import { keyName } from '../../words/common.ts';
import { hasHub } from '../../core/model/shifters.ts';
import { firstStepWords } from '../../words/firstSteps.ts';

export function FirstSteps(props: {
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
          <p class="first-steps-done">{done !== null && firstStepWords.done(done, hasHub(settings.bike))}</p>
        ) : (
          <>
            {instead !== null && <p class="first-steps-instead">{firstStepWords.instead(instead)}</p>}
            <Sign action={asked} />
            <strong>{firstStepWords.names[asked]}</strong>
            <How action={asked} settings={settings} />
          </>
        )}
      </div>
      {asked !== null && (
        <button type="button" class="button small" data-skip-first-steps onClick={skip}>
          {firstStepWords.skip}
        </button>
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
        {isHeld && `${firstStepWords.hold} `}
        <kbd>{keyName(settings.keys[action][0] ?? '')}</kbd>
      </span>
      <span class="first-steps-pad">{isHeld ? firstStepWords.holdPad : firstStepWords.pad}</span>
    </>
  );
}
