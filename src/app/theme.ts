/** How the page looks for this player on this device, and what style sheets and those who look from outside read. */
import type { State } from '../state/store.ts';
import { common } from '../words/common.ts';
import { spokenLanguage } from '../words/words.ts';
import type { RideLook } from './ride/views.ts';

const wantsLessMotion = window.matchMedia('(prefers-reduced-motion: reduce)');
const hasCoarsePointer = window.matchMedia('(pointer: coarse)');

/** Whoever asks every page for more contrast gets the theme made for sunlight. */
export const usualTheme = (): 'field' | 'indoor' =>
  window.matchMedia('(prefers-contrast: more)').matches ? 'field' : 'indoor';

/** Calls back when the device begins to ask for less motion, or no longer does. */
export function onMotionChange(tell: () => void): void {
  wantsLessMotion.addEventListener('change', tell);
}

/** Settings and device put together. */
export function lookOf({ settings }: Pick<State, 'settings'>): RideLook {
  const { motion, pads } = settings;
  return {
    settings,
    reducedMotion: motion === 'reduced' || (motion === 'system' && wantsLessMotion.matches),
    showPads: pads === 'always' || (pads === 'auto' && hasCoarsePointer.matches),
    language: spokenLanguage(),
  };
}

/** Writes language, view, ride, theme and motion where style sheets find them. */
export function markDocument(state: State): void {
  const { documentElement } = document;
  // Browsers style the whole page anew when these are written, even if they stay as they are.
  if (documentElement.lang !== spokenLanguage()) {
    documentElement.lang = spokenLanguage();
    documentElement.dir = common('direction');
  }
  document.body.dataset['view'] = state.view;
  if (state.ride === null) delete document.body.dataset['rideState'];
  else document.body.dataset['rideState'] = state.ride.phase;
  markTheme(state.settings.theme);
  documentElement.dataset['motion'] = lookOf(state).reducedMotion ? 'reduced' : 'full';
}

/** The colour of the paper as style sheets give it: empty where none has come, null where the browser does not say. */
export function paperColour(): string | null {
  try {
    return getComputedStyle(document.documentElement).getPropertyValue('--paper').trim();
  } catch {
    return null;
  }
}

/** The browser's own frame takes the colour of the paper; where it is not known the frame stays as it is. */
function markTheme(theme: string): void {
  const { documentElement } = document;
  if (documentElement.dataset['theme'] === theme) return;
  documentElement.dataset['theme'] = theme;
  const paper = paperColour();
  if (paper !== null) document.querySelector('meta[name="theme-color"]')?.setAttribute('content', paper);
}
