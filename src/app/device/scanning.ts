/**
 * Menus with one switch: what can be chosen gets the focus, one after the other, and Space or Enter takes what has
 * it. Works on whatever is in the document; a ride that is going on is left alone.
 */
import type { Settings } from '../../core/settings/settings.ts';

const CHOICES = 'a[href], button, select, summary, input:not([type="text"], [type="file"])';

/** Everything that can be chosen now, in reading order; of a dialog only what is in it. */
function choicesOf(root: Document): readonly HTMLElement[] {
  const dialogs = [...root.querySelectorAll<HTMLElement>('dialog[open]')];
  const within: ParentNode = dialogs.at(-1) ?? root;
  return [...within.querySelectorAll<HTMLElement>(CHOICES)].filter(
    (one) => !one.matches(':disabled') && (one.checkVisibility?.() ?? true),
  );
}

/** The choice after the one that has the focus; the first after the last. */
function nextChoice(choices: readonly HTMLElement[], focused: Element | null): HTMLElement | null {
  const at = choices.findIndex((one) => one === focused);
  return choices[(at + 1) % Math.max(1, choices.length)] ?? null;
}

let scanned = '';
let stopScanning = (): void => undefined;

/** Scans for those who asked for it; never during a ride. */
export function followScanning({ scanning, scanS }: Pick<Settings, 'scanning' | 'scanS'>): void {
  const key = scanning ? String(scanS) : '';
  if (key === scanned) return;
  scanned = key;
  stopScanning();
  stopScanning = scanning ? startScanning(scanS) : () => undefined;
}

/** While a ride goes on the switch is a lever. */
const isRiding = (): boolean => ['ready', 'riding'].includes(document.body.dataset['rideState'] ?? '');

/** Goes on to the next choice every `everyS` seconds; the answer stops it. */
function startScanning(everyS: number): () => void {
  const timer = window.setInterval(() => {
    if (isRiding() || document.hidden) return;
    const next = nextChoice(choicesOf(document), document.activeElement);
    next?.focus({ focusVisible: true } as FocusOptions);
    next?.scrollIntoView({ block: 'nearest' });
  }, everyS * 1000);
  const onKey = (event: KeyboardEvent): void => {
    if (isRiding() || (event.code !== 'Space' && event.code !== 'Enter') || event.repeat) return;
    const focused = document.activeElement;
    if (!(focused instanceof HTMLElement) || !focused.matches(CHOICES)) return;
    event.preventDefault();
    event.stopPropagation();
    focused.click();
  };
  window.addEventListener('keydown', onKey, true);
  return () => {
    window.clearInterval(timer);
    window.removeEventListener('keydown', onKey, true);
  };
}
