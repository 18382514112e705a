/**
 * All choices that are not bike or rider, in one dialog that can be opened from everywhere. What there is to choose is
 * read from `CHOICES`; only volumes, help, keys and buttons are drawn by hand.
 */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import {
  AIDS,
  CHOICES,
  type ChoiceName,
  KEY_ACTIONS,
  type KeyAction,
  KEYS_FOR_ONE_HAND,
  type PadButtons,
  type Section,
  type Settings,
  USUAL_PAD_BUTTONS,
  VOLUMES,
  withPadButton,
} from '../../core/settings/settings.ts';
import { Button, Choice, Slider, Tick } from '../../ui/controls.tsx';
import { createFormat } from '../../words/format.ts';
import { Dialog } from '../../ui/parts.tsx';
import { commonWords, keyName } from '../../words/common.ts';
import { settingsWords as words } from './words.ts';

/** What the dialog is given; which key is being asked for is its own business. */
interface SettingsDialogProps {
  readonly settings: Settings;
  readonly keyAsked: KeyAction | null;
  readonly onChange: (change: Partial<Settings>) => void;
  readonly onAskKey: (action: KeyAction | null) => void;
  readonly onKey: (action: KeyAction, code: string) => void;
  readonly onClose: () => void;
}

export function SettingsDialog(props: SettingsDialogProps): JSX.Element {
  const { settings, onChange, onClose } = props;
  const { volumes, units } = settings;
  const { percent } = createFormat(units);
  return (
    <Dialog title={words.title} class="settings" onClose={onClose}>
      <form method="dialog" onSubmit={(event) => event.preventDefault()}>
        <section>
          <h3>{words.look}</h3>
          <Choices of="look" {...props} />
        </section>
        <section>
          <h3>{words.sound}</h3>
          <Choices of="sound" {...props} />
          {VOLUMES.map((name) => (
            <Slider
              key={name}
              label={words.volumes[name]}
              value={volumes[name]}
              low={0}
              shown={percent(volumes[name])}
              onInput={(value) => onChange({ volumes: { ...volumes, [name]: value } })}
            />
          ))}
        </section>
        <section>
          <h3>{words.ride}</h3>
          <Choices of="ride" {...props} />
        </section>
        <section>
          <h3>{words.help}</h3>
          <p class="hint">{words.helpHint}</p>
          <Helps {...props} />
        </section>
        <section>
          <h3>{words.ways}</h3>
          <Choices of="ways" {...props} />
          <div class="buttons">
            {(['left', 'right'] as const).map((side) => (
              <Button
                key={side}
                data-keys-for={side}
                onClick={() => onChange({ keys: KEYS_FOR_ONE_HAND[side] })}
              >
                {words.keysFor[side]}
              </Button>
            ))}
          </div>
          <Choices of="switch" {...props} />
        </section>
        <KeyChoices {...props} />
        <PadChoices {...props} />
      </form>
    </Dialog>
  );
}

/** Help that is shown even where a level leaves it out. */
function Helps({ settings: { aidsOn }, onChange }: SettingsDialogProps): JSX.Element {
  return (
    <>
      {AIDS.map((aid) => (
        <Tick
          key={aid}
          label={words.aids[aid]}
          checked={aidsOn.includes(aid)}
          onChange={(on) =>
            onChange({ aidsOn: AIDS.filter((one) => (one === aid ? on : aidsOn.includes(one))) })
          }
        />
      ))}
    </>
  );
}

/** How long is of no interest while nothing scans. */
const shows = (name: ChoiceName, { scanning }: Settings): boolean => name !== 'scanS' || scanning;

/** Everything that is chosen in a section. */
function Choices({ of, settings, onChange }: SettingsDialogProps & { readonly of: Section }): JSX.Element {
  const format = createFormat(settings.units);
  const inWords = {
    paceRatio: format.percent,
    scanS: (value: number): string => words.seconds(format.number(value, 1)),
  };
  const names = Object.keys(CHOICES) as ChoiceName[];
  return (
    <>
      {names
        .filter((name) => CHOICES[name].section === of && shows(name, settings))
        .map((name) => {
          const one = CHOICES[name];
          const shared = { key: name, label: words.labels[name] };
          const set = (value: unknown): void => onChange({ [name]: value });
          if (one.kind === 'on-off')
            return <Tick {...shared} checked={settings[name] === true} onChange={set} />;
          if (one.kind === 'one-of') {
            const called: Readonly<Record<string, string>> =
              words.options[name as keyof typeof words.options];
            return (
              <Choice
                key={name}
                legend={shared.label}
                name={name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}
                value={String(settings[name])}
                options={one.options.map((option: string) => [option, called[option] ?? option] as const)}
                onChoose={set}
              />
            );
          }
          const value = Number(settings[name]);
          const shown = inWords[name as keyof typeof inWords](value);
          return (
            <Slider
              {...shared}
              {...{ value, shown }}
              low={one.low}
              high={one.high}
              step={one.step}
              onInput={set}
            />
          );
        })}
    </>
  );
}

function KeyChoices({ settings, keyAsked, onAskKey, onKey }: SettingsDialogProps): JSX.Element {
  const keyDown = (action: KeyAction, event: KeyboardEvent): void => {
    if (keyAsked !== action || event.code === 'Tab') return;
    event.preventDefault();
    event.stopPropagation();
    if (event.code === 'Escape' && action !== 'pause') onAskKey(null);
    else onKey(action, event.code);
  };
  return (
    <section>
      <h3>{words.keys}</h3>
      <p class="hint">{words.keysHint}</p>
      <div class="key-choices">
        {KEY_ACTIONS.map((action) => {
          const asked = keyAsked === action;
          const called = commonWords.keys[action];
          const keys = settings.keys[action].map(keyName).join(' / ');
          return (
            <Button
              key={action}
              look="key-button"
              data-key-action={action}
              aria-label={asked ? words.pushKey : words.changeKey(called, keys)}
              aria-pressed={asked}
              onClick={() => onAskKey(asked ? null : action)}
              onBlur={() => asked && onAskKey(null)}
              onKeyDown={(event) => keyDown(action, event)}
            >
              <span>{called}</span>
              <kbd>{asked ? words.pushKey : keys}</kbd>
            </Button>
          );
        })}
      </div>
    </section>
  );
}

type PadAction = keyof PadButtons;

/** Which button of a gamepad does what; asked for and then pushed. */
function PadChoices({ settings, onChange }: SettingsDialogProps): JSX.Element {
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
      <h3>{words.pad.title}</h3>
      <p class="hint">{words.pad.hint}</p>
      <div class="key-choices">
        {(Object.keys(USUAL_PAD_BUTTONS) as PadAction[]).map((action) => (
          <Button
            key={action}
            look="key-button"
            data-pad-action={action}
            aria-pressed={asked === action}
            onClick={() => setAsked(asked === action ? null : action)}
          >
            <span>{commonWords.keys[action]}</span>
            <kbd>{asked === action ? words.pad.push : words.pad.button(padButtons[action] + 1)}</kbd>
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
