/** The pages there are, one line each. An address without a page here leads to the start page. */
import { aboutPage } from './about.tsx';
import type { View } from './address.ts';
import { bikePage } from './bike.tsx';
import { lazyPage } from './lazy.tsx';
import { levelsPage } from './levels.tsx';
import type { Page } from './page.ts';
import { ridePage } from './ride.tsx';
import { startPage } from './start.tsx';
import { words } from './words.ts';

const debrief = lazyPage(words.after.title, async () => (await import('./debrief.tsx')).debriefPage);

const bench = lazyPage(words.bench.title, async () => (await import('./bench/page.tsx')).benchPage);

/** What is wanted when a ride ends is fetched while it is ridden. */
export const preloadAfterRide = debrief.preload;

export const PAGES: Readonly<Partial<Record<View, Page>>> = {
  start: startPage,
  levels: levelsPage,
  bike: bikePage,
  ride: ridePage,
  debrief: debrief.page,
  bench: bench.page,
  about: aboutPage,
};
