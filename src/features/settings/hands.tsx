/**
 * Which key and which button of a gamepad does what: pushed to be asked for, and then the new one pushed. Which key is
 * being asked for is known to the app, for keys of the page must not act meanwhile.
 */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import {
  KEY_ACTIONS,
  type KeyAction,
  type PadButtons,
  type Settings,
  USUAL_PAD_BUTTONS,
  withPadButton,
} from '../../core/settings/settings.ts';
import { Button } from '../../ui/controls.tsx';
import { keyName, keyWords } from '../../words/common.ts';
import { words } from '../../words/words.ts';

const say = words('settings');

/** What keys and buttons are chosen from and told to. */
export interface HandChoices {
  readonly settings: Settings;
  readonly keyAsked: KeyAction | null;
  readonly onChange: (change: Partial<Settings>) => void;
  readonly onAskKey: (action: KeyAction | null) => void;
  readonly onKey: (action: KeyAction, code: string) => void;
}

export function KeyChoices({ settings, keyAsked, onAskKey, onKey }: HandChoices): JSX.Element {
  const keyDown = (action: KeyAction, event: KeyboardEvent): void => {
    if (keyAsked !== action || event.code === 'Tab') return;
    event.preventDefault();
    event.stopPropagation();
    if (event.code === 'Escape' && action !== 'pause') onAskKey(null);
    else onKey(action, event.code);
  };
  return (
    <section>
      <h3>{say('keys')}</h3>
      <p class="hint">{say('keysHint')}</p>
      <div class="key-choices">
        {KEY_ACTIONS.map((action) => {
          const asked = keyAsked === action;
          const called = keyWords(action);
          const keys = settings.keys[action].map(keyName).join(' / ');
          return (
            <Button
              key={action}
              look="pick key-button"
              data-key-action={action}
              aria-label={asked ? say('pushKey') : say('changeKey', { action: called, key: keys })}
              aria-pressed={asked}
              onClick={() => onAskKey(asked ? null : action)}
              onBlur={() => asked && onAskKey(null)}
              onKeyDown={(event) => keyDown(action, event)}
            >
              <span>{called}</span>
              <kbd>{asked ? say('pushKey') : keys}</kbd>
            </Button>
          );
        })}
      </div>
    </section>
  );
}

type PadAction = keyof PadButtons;

/** Which button of a gamepad does what; asked for and then pushed. */
export function PadChoices({ settings, onChange }: Pick<HandChoices, 'settings' | 'onChange'>): JSX.Element {
  const { padButtons } = settings;
  const [asked, setAsked] = useState<PadAction | null>(null);
  useEffect(() => {
    if (asked === null) return undefined;
    return nextButton((button) => {
      onChange({ padButtons: withPadButton(padButtons, asked, button) });
      setAsked(null);
    });
  }, [asked, padButtons]);
  return (
    <section>
      <h3>{say('pad-title')}</h3>
      <p class="hint">{say('pad-hint')}</p>
      <div class="key-choices">
        {(Object.keys(USUAL_PAD_BUTTONS) as PadAction[]).map((action) => (
          <Button
            key={action}
            look="pick key-button"
            data-pad-action={action}
            aria-pressed={asked === action}
            onClick={() => setAsked(asked === action ? null : action)}
          >
            <span>{keyWords(action)}</span>
            <kbd>
              {asked === action ? say('pad-push') : say('pad-button', { number: padButtons[action] + 1 })}
            </kbd>
          </Button>
        ))}
      </div>
    </section>
  );
}

/** Waits for a button that was not down before; the answer gives up. */
function nextButton(told: (button: number) => void): () => void {
  const down = (): ReadonlySet<number> => {
    const pads = (navigator.getGamepads?.() ?? []).filter((pad) => pad !== null);
    return new Set(pads.flatMap((pad) => pad.buttons.flatMap((button, i) => (button.pressed ? [i] : []))));
  };
  let before = down();
  const timer = window.setInterval(() => {
    const now = down();
    const fresh = [...now].find((button) => !before.has(button));
    before = now;
    if (fresh !== undefined) told(fresh);
  }, 30);
  return () => window.clearInterval(timer);
}
