/** The pages there are, one line each. An address without a page here leads to the start page. */
import { aboutPage } from '../pages/about.tsx';
import type { View } from '../ui/address.ts';
import { lazyPage } from './lazy.tsx';
import type { Page } from './page.ts';
import { ridePage } from '../pages/ride.tsx';
import { startPage } from '../pages/start.tsx';
import { words } from '../pages/words.ts';

const levels = lazyPage(words.levels.title, async () => (await import('../pages/levels.tsx')).levelsPage);
const bike = lazyPage(words.bike.title, async () => (await import('../pages/bike.tsx')).bikePage);
const progress = lazyPage(
  words.nav.progress,
  async () => (await import('../pages/progress.tsx')).progressPage,
);
const gearCheck = lazyPage(
  words.nav.gearCheck,
  async () => (await import('../pages/gearcheck.tsx')).gearCheckPage,
);
const two = lazyPage(words.start.two, async () => (await import('../pages/two.tsx')).twoPage);
const debrief = lazyPage(words.after.title, async () => (await import('../pages/debrief.tsx')).debriefPage);

const carry = () => import('../pages/handover/site.tsx');
const join = lazyPage(words.start.join, async () => (await carry()).joinPage);
const collect = lazyPage(words.start.collect, async () => (await carry()).collectPage);
const clinic = lazyPage(
  words.start.clinic,
  async () => (await import('../pages/clinic/site.tsx')).clinicPage,
);
const bench = lazyPage(words.bench.title, async () => (await import('../pages/bench/page.tsx')).benchPage);

/** What is wanted when a ride ends is fetched while it is ridden. */
export const preloadAfterRide = debrief.preload;

/** Fetches every page now; settles when all are there or cannot be had. */
export const preloadAllPages = async (): Promise<void> => {
  await Promise.all([levels, bike, progress, gearCheck, two, debrief].map((one) => one.preload()));
};

export const PAGES: Readonly<Partial<Record<View, Page>>> = {
  start: startPage,
  levels: levels.page,
  bike: bike.page,
  ride: ridePage,
  debrief: debrief.page,
  progress: progress.page,
  gearcheck: gearCheck.page,
  two: two.page,
  bench: bench.page,
  about: aboutPage,
  clinic: clinic.page,
  join: join.page,
  collect: collect.page,
};
