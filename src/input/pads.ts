/**
 * Pads for thumbs: rings on one side, gears on the other, legs and brake between, pause in a corner. Builds
 * the buttons and turns fingers into actions; where things sit is decided in `pads.css`.
 */
import type { Pressure } from '../core/model/types.ts';
import type { KeyAction } from '../core/settings/settings.ts';
import type { HoldMode } from './held.ts';
import type { InputHub } from './hub.ts';
import { words } from '../words/words.ts';

const say = words('hud');

type DrawSign = (action: KeyAction) => SVGElement;

interface PadOptions {
  /** There is a shifter for chainrings, too. */
  readonly twoShifters: boolean;
  /** Where the bike has its gears. */
  readonly gears: 'hub' | 'sprockets';
  /** The side of the gear pads. */
  readonly hand: 'right' | 'left';
  /** All pads on that side. */
  readonly oneHand: boolean;
  /** Two big ones for the gears, on either side, and nothing else but the pause. */
  readonly few: boolean;
  /** Whoever pushes them sits on the other side of the screen. */
  readonly turned: boolean;
  readonly mode: () => HoldMode;
  readonly drawSign: DrawSign;
}

type PadAction = Exclude<KeyAction, 'coast'>;

/** A finger that slides up this far on the legs' pad presses (px). */
const SLIDE_TO_PRESS_PX = 28;

/** What the legs' pad means for a finger: its upper half or a slide upwards press, the rest eases. Pure. */
export function legsAction(startShare: number, movedUpPx: number): 'press' | 'ease' {
  if (movedUpPx >= SLIDE_TO_PRESS_PX) return 'press';
  return startShare < 0.5 && movedUpPx > -SLIDE_TO_PRESS_PX ? 'press' : 'ease';
}

export function createPads(root: HTMLElement, hub: InputHub, options: PadOptions) {
  const box = element('div', 'pads');
  box.setAttribute('role', 'group');
  box.setAttribute('aria-label', say('pads'));
  box.dataset['hand'] = options.hand;
  box.dataset['one'] = options.oneHand ? 'yes' : 'no';
  box.dataset['rings'] = options.twoShifters ? 'many' : 'one';

  const make = (action: PadAction): HTMLButtonElement => {
    const pad = padButton(action, options);
    tie(pad, hub, () => action);
    return pad;
  };
  if (options.twoShifters) {
    const rings = element('div', 'pads-rings');
    rings.append(make('front-bigger'), make('front-smaller'));
    box.append(rings);
  }
  box.dataset['few'] = options.few ? 'yes' : 'no';
  const middle = element('div', 'pads-middle');
  const legs = legsPad(hub, options);
  const brake = make('brake');
  middle.append(legs, brake);
  const gears = element('div', 'pads-gears');
  gears.append(make('rear-harder'), make('rear-easier'));
  const pause = make('pause');
  if (!options.few) box.append(middle);
  box.append(gears);
  root.append(pause, box);
  const noMenu = (event: Event): void => event.preventDefault();
  box.addEventListener('contextmenu', noMenu);

  let shown = '';
  let wanted = '';
  return {
    /** Shows what the hands ask for, whichever device they use. */
    show({ pressure, braking }: { readonly pressure: Pressure; readonly braking: boolean }): void {
      const next = `${pressure} ${braking}`;
      if (next === shown) return;
      shown = next;
      legs.dataset['asks'] = pressure;
      brake.setAttribute('aria-pressed', String(braking));
    },
    /** Lights the pads of these actions, and no others. */
    want(actions: readonly KeyAction[]): void {
      if (actions.join() === wanted) return;
      wanted = actions.join();
      for (const pad of box.querySelectorAll<HTMLElement>('[data-pad], [data-half]'))
        pad.toggleAttribute(
          'data-wanted',
          actions.some((action) => action === (pad.dataset['half'] ?? pad.dataset['pad'])),
        );
    },
    destroy(): void {
      box.remove();
      pause.remove();
    },
  };
}

function padButton(
  action: PadAction,
  { gears, drawSign }: Pick<PadOptions, 'gears' | 'drawSign'>,
): HTMLButtonElement {
  const pad = element('button', 'pad') as HTMLButtonElement;
  pad.type = 'button';
  pad.dataset['pad'] = action;
  pad.setAttribute('aria-label', say(`spoken-${action}`, { gears }));
  pad.append(drawSign(action), padLabel(action));
  return pad;
}

/** The word on a pad. How many letters it has is told to the style sheet, which makes a long one small enough. */
function padLabel(action: PadAction): HTMLElement {
  const label = element('span', 'pad-label');
  label.textContent = say(`pad-${action}`);
  label.style.setProperty('--letters', String(label.textContent.length));
  return label;
}

/** One pad with two halves, because a thumb slides from ease to press and back without looking. */
function legsPad(
  hub: InputHub,
  { mode, gears, turned, drawSign }: Pick<PadOptions, 'mode' | 'gears' | 'turned' | 'drawSign'>,
): HTMLButtonElement {
  const pad = element('button', 'pad') as HTMLButtonElement;
  pad.type = 'button';
  pad.dataset['pad'] = 'legs';
  pad.setAttribute('aria-label', say('spoken-ease', { gears }));
  for (const action of ['press', 'ease'] as const) {
    const half = element('span', 'pad-half');
    half.dataset['half'] = action;
    half.append(drawSign(action), padLabel(action));
    pad.append(half);
  }
  let startY = 0;
  let startShare = 1;
  tie(pad, hub, (event) => {
    if (event === null) return 'ease';
    const box = pad.getBoundingClientRect();
    startY = event.clientY;
    const downShare = (event.clientY - box.top) / Math.max(1, box.height);
    startShare = turned ? 1 - downShare : downShare;
    return legsAction(startShare, 0);
  });
  pad.addEventListener('pointermove', (event) => {
    if (mode() === 'switch' || !pad.hasPointerCapture(event.pointerId)) return;
    const movedUpPx = (startY - event.clientY) * (turned ? -1 : 1);
    const action = legsAction(startShare, movedUpPx);
    if (pad.dataset['doing'] === action) return;
    pad.dataset['doing'] = action;
    hub.up(sourceOf(event));
    hub.down(action, sourceOf(event), event.timeStamp);
  });
  return pad;
}

/** Fingers, several at once, each its own source; keyboard and assistive clicks push and let go. */
function tie(
  pad: HTMLButtonElement,
  hub: InputHub,
  actionFor: (event: PointerEvent | null) => PadAction,
): void {
  pad.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    event.preventDefault();
    pad.setPointerCapture(event.pointerId);
    pad.dataset['down'] = 'true';
    const action = actionFor(event);
    pad.dataset['doing'] = action;
    hub.down(action, sourceOf(event), event.timeStamp);
  });
  const lift = (event: PointerEvent): void => {
    delete pad.dataset['down'];
    delete pad.dataset['doing'];
    hub.up(sourceOf(event));
  };
  pad.addEventListener('pointerup', lift);
  pad.addEventListener('pointercancel', lift);
  pad.addEventListener('lostpointercapture', lift);
  pad.addEventListener('click', (event) => {
    // A click that no finger or mouse made; those have been dealt with above.
    if (event.detail !== 0) return;
    const source = `click:${pad.dataset['pad'] ?? ''}`;
    hub.down(actionFor(null), source, event.timeStamp);
    if (pad.dataset['held'] === undefined && isLasting(pad)) pad.dataset['held'] = 'true';
    else {
      delete pad.dataset['held'];
      hub.up(source);
    }
  });
}

function isLasting(pad: HTMLButtonElement): boolean {
  return pad.dataset['pad'] === 'legs' || pad.dataset['pad'] === 'brake';
}

function sourceOf(event: PointerEvent): string {
  return `finger:${event.pointerId}`;
}

function element(tag: 'div' | 'button' | 'span', className: string): HTMLElement {
  const made = document.createElement(tag);
  made.className = className;
  return made;
}
