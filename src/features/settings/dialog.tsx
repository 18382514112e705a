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
  ROAD_AHEAD_M,
  type Section,
  type Settings,
  USUAL_PAD_BUTTONS,
  VOLUMES,
  WIDER_RPM,
  withPadButton,
} from '../../core/settings/settings.ts';
import { Button, Choice, Slider, Tick } from '../../ui/controls.tsx';
import { createFormat } from '../../words/format.ts';
import { Dialog } from '../../ui/parts.tsx';
import { keyName, keyWords } from '../../words/common.ts';
import { ENGLISH, spokenLanguage, words } from '../../words/words.ts';

const say = words('settings');

/** What there is to say about languages. */
interface LanguageShown {
  readonly all: readonly string[];
  /** Not everything is translated. */
  readonly unfinished: boolean;
  /** The words of what was chosen did not come. */
  readonly failed: boolean;
}

/** What the dialog is given; which key is being asked for is its own business. */
interface SettingsDialogProps {
  readonly settings: Settings;
  readonly keyAsked: KeyAction | null;
  readonly language: LanguageShown;
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
    <Dialog title={say('title')} class="settings" onClose={onClose}>
      <form method="dialog" onSubmit={(event) => event.preventDefault()}>
        <section>
          <h3>{say('look')}</h3>
          <Language {...props} />
          <Choices of="look" {...props} />
        </section>
        <section>
          <h3>{say('sound')}</h3>
          <Choices of="sound" {...props} />
          {VOLUMES.map((name) => (
            <Slider
              key={name}
              label={say(`volumes-${name}`)}
              value={volumes[name]}
              low={0}
              shown={percent(volumes[name])}
              onInput={(value) => onChange({ volumes: { ...volumes, [name]: value } })}
            />
          ))}
        </section>
        <section>
          <h3>{say('ride')}</h3>
          <Choices of="ride" {...props} />
        </section>
        <section>
          <h3>{say('help')}</h3>
          <p class="hint">{say('helpHint')}</p>
          <Helps {...props} />
        </section>
        <section>
          <h3>{say('ways')}</h3>
          <Choices of="ways" {...props} />
          <div class="buttons">
            {(['left', 'right'] as const).map((side) => (
              <Button
                key={side}
                data-keys-for={side}
                onClick={() => onChange({ keys: KEYS_FOR_ONE_HAND[side] })}
              >
                {say(`keysFor-${side}`)}
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

/** How a language is called by those who speak it. */
function languageName(tag: string): string {
  const name = new Intl.DisplayNames([tag], { type: 'language', fallback: 'code' }).of(tag) ?? tag;
  return name.slice(0, 1).toLocaleUpperCase(tag) + name.slice(1);
}

function Language({ settings, language, onChange }: SettingsDialogProps): JSX.Element {
  const { all, unfinished, failed } = language;
  return (
    <>
      <Choice
        legend={say('language')}
        name="language"
        value={settings.language}
        options={[
          ['', say('language-device')],
          ...all.map((tag) => [tag, <span lang={tag}>{languageName(tag)}</span>] as const),
        ]}
        onChoose={(chosen) => onChange({ language: chosen })}
      />
      <output class="hint">{failed ? say('notFetched') : unfinished && say('untranslated')}</output>
      {spokenLanguage() !== ENGLISH && <p class="hint">{say('translated')}</p>}
    </>
  );
}

/** Help that is shown even where a level leaves it out. */
function Helps({ settings: { aidsOn, units }, onChange }: SettingsDialogProps): JSX.Element {
  const { distance } = createFormat(units);
  return (
    <>
      {AIDS.map((aid) => (
        <Tick
          key={aid}
          label={say.coded(`aids-${aid}`, { length: distance(ROAD_AHEAD_M) })}
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

/** Messages of all options. */
type OptionMessage = {
  [Name in ChoiceName]: (typeof CHOICES)[Name] extends {
    readonly options: readonly (infer Option extends string)[];
  }
    ? `options-${Name}-${Option}`
    : never;
}[ChoiceName];
type AmountName = {
  [Name in ChoiceName]: (typeof CHOICES)[Name]['kind'] extends 'amount' ? Name : never;
}[ChoiceName];

/** Everything that is chosen in a section. */
function Choices({ of, settings, onChange }: SettingsDialogProps & { readonly of: Section }): JSX.Element {
  const format = createFormat(settings.units);
  const inWords: Readonly<Record<AmountName, (value: number) => string>> = {
    paceRatio: format.percent,
    scanS: (value) => say('seconds', { seconds: format.number(value, 1) }),
  };
  const names = Object.keys(CHOICES) as ChoiceName[];
  return (
    <>
      {names
        .filter((name) => CHOICES[name].section === of && shows(name, settings))
        .map((name) => {
          const one = CHOICES[name];
          const shared = { key: name, label: say(`labels-${name}`, { turns: WIDER_RPM }) };
          const set = (value: unknown): void => onChange({ [name]: value });
          if (one.kind === 'on-off')
            return <Tick {...shared} checked={settings[name] === true} onChange={set} />;
          if (one.kind === 'one-of') {
            return (
              <Choice
                key={name}
                legend={shared.label}
                name={name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}
                value={String(settings[name])}
                options={one.options.map(
                  (option: string) => [option, say(`options-${name}-${option}` as OptionMessage)] as const,
                )}
                onChoose={set}
              />
            );
          }
          const value = Number(settings[name]);
          const shown = inWords[name as AmountName](value);
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
