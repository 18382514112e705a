/** The pages there are, one line each. Start and ride are always here; the others are fetched when they are wanted. */
import type { View } from '../state/address.ts';
import { type LazyPage, lazyPage } from './lazy.tsx';
import type { Services } from './services.ts';
import type { Page } from '../ui/parts.tsx';
import { ridePage } from '../features/ride/page.tsx';
import { startPage } from '../features/start/page.tsx';

type LazyView = Exclude<View, 'start' | 'ride'>;

const FETCHED: Readonly<Record<LazyView, () => Promise<Page<Services>>>> = {
  levels: async () => (await import('../features/levels/page.tsx')).levelsPage,
  children: async () => (await import('../features/children/page.tsx')).childrenPage,
  bike: async () => (await import('../features/bike/page.tsx')).bikePage,
  debrief: async () => (await import('../features/debrief/page.tsx')).debriefPage,
  progress: async () => (await import('../features/progress/page.tsx')).progressPage,
  gearcheck: async () => (await import('../features/gearcheck/page.tsx')).gearCheckPage,
  road: async () => (await import('../features/road/page.tsx')).roadPage,
  two: async () => (await import('../features/two/page.tsx')).twoPage,
  bench: async () => (await import('../features/bench/page.tsx')).benchPage,
  about: async () => (await import('../features/about/page.tsx')).aboutPage,
  clinic: async () => (await import('./clinicPages.tsx')).clinicPage,
  join: async () => (await import('./carryPages.tsx')).joinPage,
  collect: async () => (await import('./carryPages.tsx')).collectPage,
  teach: async () => (await import('../features/teach/page.tsx')).teachPage,
};

const LAZY = Object.fromEntries(
  Object.entries(FETCHED).map(([view, fetchPage]) => [view, lazyPage(view as LazyView, fetchPage)]),
) as Readonly<Record<LazyView, LazyPage>>;

/** Fetches a page now, because it will be wanted soon; settles when it is here or cannot be had. */
export const preload = (view: LazyView): Promise<unknown> => LAZY[view].preload();

/** What to draw where; a page that is fetched says so until it is here. */
export function pageOf(view: View): Page<Services> {
  if (view === 'start') return startPage;
  return view === 'ride' ? ridePage : LAZY[view].page;
}
