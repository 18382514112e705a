/** All choices that are not bike or rider, in one dialog that can be opened from everywhere. */
import type { JSX } from 'preact';
import { createFormat } from '../ui/format.ts';
import { Button, Choice, Slider, Tick } from '../ui/controls.tsx';
import { Dialog } from '../ui/parts.tsx';
import { KEY_ACTIONS, type KeyAction, SLOWEST_PACE_RATIO, VOLUMES } from '../core/settings/settings.ts';
import { Help, PadChoices, Ways } from './settingsWays.tsx';
import type { Send, State } from '../app/store.ts';
import { keyName } from '../ui/words.ts';
import { words } from './words.ts';

interface Props {
  readonly state: State;
  readonly send: Send;
}

export function SettingsDialog({ state, send }: Props): JSX.Element {
  return (
    <Dialog title={words.settings.title} class="settings" onClose={() => send({ kind: 'close-dialog' })}>
      <form method="dialog" onSubmit={(event) => event.preventDefault()}>
        <Look state={state} send={send} />
        <Sound state={state} send={send} />
        <RideChoices state={state} send={send} />
        <Help state={state} send={send} />
        <Ways state={state} send={send} />
        <KeyChoices state={state} send={send} />
        <PadChoices state={state} send={send} />
      </form>
    </Dialog>
  );
}

function Look({ state, send }: Props): JSX.Element {
  const text = words.settings;
  const { theme, motion, units } = state.settings;
  return (
    <section>
      <h3>{text.look}</h3>
      <Choice
        legend={text.theme}
        name="theme"
        value={theme}
        options={[
          ['indoor', text.indoor],
          ['field', text.field],
        ]}
        onChoose={(value) => send({ kind: 'set', settings: { theme: value } })}
      />
      <Choice
        legend={text.motion}
        name="motion"
        value={motion}
        options={[
          ['system', text.system],
          ['reduced', text.reduced],
          ['full', text.full],
        ]}
        onChoose={(value) => send({ kind: 'set', settings: { motion: value } })}
      />
      <Choice
        legend={text.units}
        name="units"
        value={units}
        options={[
          ['metric', text.metric],
          ['imperial', text.imperial],
        ]}
        onChoose={(value) => send({ kind: 'set', settings: { units: value } })}
      />
    </section>
  );
}

function Sound({ state, send }: Props): JSX.Element {
  const { volumes, muted, units } = state.settings;
  const format = createFormat(units);
  return (
    <section>
      <h3>{words.settings.sound}</h3>
      <Tick
        label={words.settings.muted}
        checked={muted}
        onChange={(value) => send({ kind: 'set', settings: { muted: value } })}
      />
      {VOLUMES.map((name) => (
        <Slider
          key={name}
          label={words.settings.volumes[name]}
          value={volumes[name]}
          low={0}
          shown={format.percent(volumes[name])}
          onInput={(value) => send({ kind: 'set', settings: { volumes: { ...volumes, [name]: value } } })}
        />
      ))}
    </section>
  );
}

function RideChoices({ state, send }: Props): JSX.Element {
  const text = words.settings;
  const { paceRatio, autoEase, holdMode, hand, pads, units } = state.settings;
  const set = (settings: Partial<State['settings']>): void => send({ kind: 'set', settings });
  return (
    <section>
      <h3>{text.ride}</h3>
      <Slider
        label={text.pace}
        value={paceRatio}
        low={SLOWEST_PACE_RATIO}
        shown={createFormat(units).percent(paceRatio)}
        onInput={(value) => set({ paceRatio: value })}
      />
      <Tick label={text.autoEase} checked={autoEase} onChange={(value) => set({ autoEase: value })} />
      <Choice
        legend={text.holdMode}
        name="hold-mode"
        value={holdMode}
        options={[
          ['hold', text.hold],
          ['switch', text.switch],
        ]}
        onChoose={(value) => set({ holdMode: value })}
      />
      <Choice
        legend={text.hand}
        name="hand"
        value={hand}
        options={[
          ['left', text.left],
          ['right', text.right],
        ]}
        onChoose={(value) => set({ hand: value })}
      />
      <Choice
        legend={text.pads}
        name="pads"
        value={pads}
        options={[
          ['auto', text.auto],
          ['always', text.always],
          ['never', text.never],
        ]}
        onChoose={(value) => set({ pads: value })}
      />
    </section>
  );
}

function KeyChoices({ state, send }: Props): JSX.Element {
  return (
    <section>
      <h3>{words.settings.keys}</h3>
      <p class="hint">{words.settings.keysHint}</p>
      <div class="key-choices">
        {KEY_ACTIONS.map((action) => (
          <KeyButton key={action} action={action} state={state} send={send} />
        ))}
      </div>
    </section>
  );
}

function KeyButton({ action, state, send }: Props & { readonly action: KeyAction }): JSX.Element {
  const asked = state.keyAsked === action;
  const names = state.settings.keys[action].map(keyName).join(' / ');
  return (
    <Button
      look="key-button"
      data-key-action={action}
      aria-label={asked ? words.settings.pushKey : words.settings.changeKey(words.keys[action], names)}
      aria-pressed={asked}
      onClick={() => send({ kind: 'ask-key', action: asked ? null : action })}
      onBlur={() => asked && send({ kind: 'ask-key', action: null })}
      onKeyDown={(event) => {
        if (!asked || event.code === 'Tab') return;
        event.preventDefault();
        event.stopPropagation();
        send(
          event.code === 'Escape' && action !== 'pause'
            ? { kind: 'ask-key', action: null }
            : { kind: 'set-key', action, code: event.code },
        );
      }}
    >
      <span>{words.keys[action]}</span>
      <kbd>{asked ? words.settings.pushKey : names}</kbd>
    </Button>
  );
}
