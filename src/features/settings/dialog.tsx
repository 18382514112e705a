/**
 * All choices that are not bike or rider, in one dialog that can be opened from everywhere. What there is to choose is
 * read from `CHOICES`; only language, volumes and help are drawn by hand here, keys and buttons in `hands.tsx`.
 */
import type { JSX } from 'preact';
import {
  AIDS,
  CHOICES,
  type ChoiceName,
  KEYS_FOR_ONE_HAND,
  ROAD_AHEAD_M,
  type Section,
  type Settings,
  VOLUMES,
  WIDER_RPM,
} from '../../core/settings/settings.ts';
import { Button, Choice, Slider, Tick } from '../../ui/controls.tsx';
import { createFormat } from '../../words/format.ts';
import { Dialog } from '../../ui/parts.tsx';
import { type HandChoices, KeyChoices, PadChoices } from './hands.tsx';
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

interface SettingsDialogProps extends HandChoices {
  readonly language: LanguageShown;
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
