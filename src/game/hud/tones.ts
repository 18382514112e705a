/**
 * Colours of the instruments' small canvases, read from the page's custom properties so that both themes
 * reach them; the fallbacks are the same as in `hud.css`.
 */

import type { MachineTones } from '../paint/palette.ts';

/** Reads `--paper`, `--ink` and so on as they apply to `element`. */
export function readTones(element: HTMLElement): MachineTones {
  const style = getComputedStyle(element);
  const read = (name: string, fallback: string) => style.getPropertyValue(name).trim() || fallback;
  return {
    paper: read('--paper', '#fff8ec'),
    ink: read('--ink', '#22303a'),
    sand: read('--sand', '#d9ccb2'),
    sandDark: read('--sand-dark', '#8f8168'),
    rider: read('--rider', '#e2552c'),
    attention: read('--attention', '#f0a51e'),
  };
}
