/**
 * Help on the road that fades as a rider learns: the next step for the hands, the marks so far, and a dot that beats
 * with the click track. Shows what it is told; whether it is shown at all is the level's and the player's choice.
 */
import './hud-help.css';
import type { KeyAction } from '../../core/settings/settings.ts';
import { words } from '../../words/words.ts';
import { put } from './dom.ts';

/** A hint in words. */
export interface HudStep {
  /** What to do: "Easier, 2 steps". Changes seldom, so that it can be read aloud. */
  readonly action: string;
  /** When: "now", "in 24 m". */
  readonly when: string;
  readonly now: boolean;
  /** What the hand does first. */
  readonly move: KeyAction;
  /** The legs are to be soft while it is done. */
  readonly softens: boolean;
  /** Names of the keys to hold for soft feet; none where there are pads. */
  readonly softKeys: readonly string[];
  /** Names of the keys to press, in order; none where there are pads. */
  readonly keys: readonly string[];
}

/** One mark so far. */
interface HudMark {
  readonly name: string;
  /** 0 to 100, or null while there is nothing to judge. */
  readonly value: number | null;
}

/** The elements and what can be told to them. */
export interface HudHelp {
  setStep(step: HudStep | null): void;
  setMarks(marks: readonly HudMark[] | null): void;
  /** The click track clicks; seen as well as heard. */
  beat(): void;
}

/** Builds the help into the head of the instruments and beside the cadence. */
export function buildHelp(
  head: HTMLElement,
  cadence: HTMLElement,
  drawSign: (action: KeyAction) => SVGElement,
): HudHelp {
  const card = put(head, 'div', 'hud-card hud-step hud-empty');
  card.dataset['aid'] = 'nextStep';
  const sign = put(card, 'i', 'hud-step-sign');
  const action = put(card, 'span', 'hud-step-action');
  action.dataset['hud'] = 'next-step';
  action.setAttribute('role', 'status');
  const when = put(card, 'span', 'hud-step-when');
  when.setAttribute('aria-hidden', 'true');
  const keys = put(card, 'span', 'hud-step-keys');
  const dot = put(cadence, 'i', 'hud-beat');
  dot.dataset['aid'] = 'clickTrack';
  dot.setAttribute('aria-hidden', 'true');
  const marks = buildMarks(head);
  return {
    setStep(step) {
      card.classList.toggle('hud-empty', step === null);
      if (step === null) return;
      const signs: readonly KeyAction[] = step.softens ? ['ease', step.move] : [step.move];
      if (sign.dataset['moves'] !== signs.join()) sign.replaceChildren(...signs.map(drawSign));
      sign.dataset['moves'] = signs.join();
      card.dataset['now'] = String(step.now);
      if (action.textContent !== step.action) action.textContent = step.action;
      if (when.textContent !== step.when) when.textContent = step.when;
      const names = [...step.softKeys, '+', ...step.keys].join(' ');
      if (keys.dataset['keys'] === names) return;
      keys.dataset['keys'] = names;
      keys.replaceChildren();
      for (const name of step.softKeys) put(keys, 'kbd', '', name);
      if (step.softKeys.length > 0) put(keys, 'span', '', '+');
      for (const name of step.keys) put(keys, 'kbd', '', name);
    },
    setMarks: marks,
    beat() {
      dot.dataset['beat'] = dot.dataset['beat'] === 'on' ? 'off' : 'on';
    },
  };
}

function buildMarks(head: HTMLElement): HudHelp['setMarks'] {
  const card = put(head, 'section', 'hud-card hud-marks hud-empty');
  card.dataset['aid'] = 'liveMarks';
  put(card, 'span', 'hud-label', words('hud')('marksSoFar'));
  const list = put(card, 'dl', '');
  const rows = new Map<
    string,
    { readonly row: HTMLElement; readonly value: HTMLElement; readonly fill: HTMLElement }
  >();
  const rowOf = (name: string) => {
    const known = rows.get(name);
    if (known !== undefined) return known;
    const row = put(list, 'div', '');
    put(row, 'dt', '', name);
    const value = put(row, 'dd', '');
    value.dataset['liveMark'] = name;
    const made = { row, value, fill: put(put(row, 'dd', 'hud-mark-bar'), 'i', '') };
    rows.set(name, made);
    return made;
  };
  return (marks) => {
    card.classList.toggle('hud-empty', marks === null);
    for (const { name, value } of marks ?? []) {
      const row = rowOf(name);
      const text = value === null ? '–' : String(Math.round(value));
      if (row.value.textContent === text) continue;
      row.value.textContent = text;
      row.fill.style.width = `${value ?? 0}%`;
    }
  };
}
