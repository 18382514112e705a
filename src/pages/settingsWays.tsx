/** Settings for those who play otherwise: help on the road, by ear, with one hand or one switch, and a gamepad. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { createFormat } from '../ui/format.ts';
import { Button, Tick } from '../ui/controls.tsx';
import {
  AIDS,
  KEYS_FOR_ONE_HAND,
  type PadButtons,
  QUICKEST_SCAN_S,
  type Settings,
  SLOWEST_SCAN_S,
  USUAL_PAD_BUTTONS,
  WIDER_RPM,
  withPadButton,
} from '../core/settings/settings.ts';
import type { Send, State } from '../app/store.ts';
import { words } from './words.ts';

interface Props {
  readonly state: State;
  readonly send: Send;
}

/** Levels take help away as a rider learns; here it can be had back. */
export function Help({ state, send }: Props): JSX.Element {
  const text = words.settings;
  const { aidsOn } = state.settings;
  return (
    <section>
      <h3>{text.help}</h3>
      <p class="hint">{text.helpHint}</p>
      {AIDS.map((aid) => (
        <Tick
          key={aid}
          label={text.aids[aid]}
          checked={aidsOn.includes(aid)}
          onChange={(on) =>
            send({
              kind: 'set',
              settings: { aidsOn: AIDS.filter((one) => (one === aid ? on : aidsOn.includes(one))) },
            })
          }
        />
      ))}
    </section>
  );
}

/** By ear, with a wider band, with one hand, with one switch. */
export function Ways({ state, send }: Props): JSX.Element {
  const text = words.settings.ways;
  const { byEar, widerBand, oneHand, scanning, scanS, units } = state.settings;
  const set = (settings: Partial<Settings>): void => send({ kind: 'set', settings });
  const seconds = text.seconds(createFormat(units).number(scanS, 1));
  return (
    <section>
      <h3>{text.title}</h3>
      <Tick label={text.byEar} checked={byEar} onChange={(value) => set({ byEar: value })} />
      <Tick
        label={text.widerBand(WIDER_RPM)}
        checked={widerBand}
        onChange={(value) => set({ widerBand: value })}
      />
      <Tick label={text.oneHand} checked={oneHand} onChange={(value) => set({ oneHand: value })} />
      <div class="buttons">
        {(['left', 'right'] as const).map((side) => (
          <Button key={side} data-keys-for={side} onClick={() => set({ keys: KEYS_FOR_ONE_HAND[side] })}>
            {text.keysFor[side]}
          </Button>
        ))}
      </div>
      <Tick label={text.scanning} checked={scanning} onChange={(value) => set({ scanning: value })} />
      {scanning && (
        <label class="slider">
          <span>{text.scanS}</span>
          <input
            type="range"
            min={QUICKEST_SCAN_S}
            max={SLOWEST_SCAN_S}
            step="0.2"
            value={scanS}
            aria-valuetext={seconds}
            onInput={(event) => set({ scanS: event.currentTarget.valueAsNumber })}
          />
          <output>{seconds}</output>
        </label>
      )}
    </section>
  );
}

type PadAction = keyof PadButtons;
const PAD_ACTIONS = Object.keys(USUAL_PAD_BUTTONS) as PadAction[];

/** Which button of a gamepad does what; asked for and then pushed. */
export function PadChoices({ state, send }: Props): JSX.Element {
  const text = words.settings.pad;
  const { padButtons } = state.settings;
  const [asked, setAsked] = useState<PadAction | null>(null);
  useEffect(() => {
    if (asked === null) return undefined;
    return nextButton((button) => {
      send({ kind: 'set', settings: { padButtons: withPadButton(padButtons, asked, button) } });
      setAsked(null);
    });
  }, [asked, padButtons, send]);
  return (
    <section>
      <h3>{text.title}</h3>
      <p class="hint">{text.hint}</p>
      <div class="key-choices">
        {PAD_ACTIONS.map((action) => (
          <Button
            look="key-button"
            key={action}
            data-pad-action={action}
            aria-pressed={asked === action}
            onClick={() => setAsked(asked === action ? null : action)}
          >
            <span>{words.keys[action]}</span>
            <kbd>{asked === action ? text.push : text.button(padButtons[action] + 1)}</kbd>
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
