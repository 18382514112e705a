/** The pages there are, one line each. An address without a page here leads to the start page. */
import type { View } from '../state/address.ts';
import { lazyPage } from './lazy.tsx';
import type { Services } from './services.ts';
import type { Page } from '../ui/page.ts';
import { preloadSettings } from './lazySettings.tsx';
import { ridePage } from '../features/ride/page.tsx';
import { startPage } from '../features/start/page.tsx';

const levels = lazyPage('levels', async () => (await import('../features/levels/page.tsx')).levelsPage);
const children = lazyPage(
  'children',
  async () => (await import('../features/children/page.tsx')).childrenPage,
);
const bike = lazyPage('bike', async () => (await import('../features/bike/page.tsx')).bikePage);
const about = lazyPage('about', async () => (await import('../features/about/page.tsx')).aboutPage);
const progress = lazyPage(
  'progress',
  async () => (await import('../features/progress/page.tsx')).progressPage,
);
const gearCheck = lazyPage(
  'gearcheck',
  async () => (await import('../features/gearcheck/page.tsx')).gearCheckPage,
);
const road = lazyPage('road', async () => (await import('../features/road/page.tsx')).roadPage);
const two = lazyPage('two', async () => (await import('../features/two/page.tsx')).twoPage);
const debrief = lazyPage('debrief', async () => (await import('../features/debrief/page.tsx')).debriefPage);

const carry = () => import('./carryPages.tsx');
const join = lazyPage('join', async () => (await carry()).joinPage);
const collect = lazyPage('collect', async () => (await carry()).collectPage);
const clinic = lazyPage('clinic', async () => (await import('./clinicPages.tsx')).clinicPage);
const teach = lazyPage('teach', async () => (await import('../features/teach/page.tsx')).teachPage);
const bench = lazyPage('bench', async () => (await import('../features/bench/page.tsx')).benchPage);

/** What is wanted when a ride ends, or is paused, is fetched while it is ridden. */
export const preloadAfterRide = async (): Promise<void> => {
  await Promise.all([debrief.preload(), preloadSettings()]);
};

/** Fetches every page and the settings now; settles when all are there or cannot be had. */
export const preloadAllPages = async (): Promise<void> => {
  const pages = [levels, children, bike, about, progress, gearCheck, road, two, teach, debrief];
  await Promise.all([preloadSettings(), ...pages.map((one) => one.preload())]);
};

export const PAGES: Readonly<Partial<Record<View, Page<Services>>>> = {
  start: startPage,
  levels: levels.page,
  children: children.page,
  bike: bike.page,
  ride: ridePage,
  debrief: debrief.page,
  progress: progress.page,
  gearcheck: gearCheck.page,
  road: road.page,
  two: two.page,
  bench: bench.page,
  about: about.page,
  clinic: clinic.page,
  join: join.page,
  collect: collect.page,
  teach: teach.page,
};
