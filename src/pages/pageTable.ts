/** The pages there are, one line each. An address without a page here leads to the start page. */
import { aboutPage } from './about.tsx';
import type { View } from './address.ts';
import { bikePage } from './bike.tsx';
import { debriefPage } from './debrief.tsx';
import { levelsPage } from './levels.tsx';
import type { Page } from './page.ts';
import { ridePage } from './ride.tsx';
import { startPage } from './start.tsx';

export const PAGES: Readonly<Partial<Record<View, Page>>> = {
  start: startPage,
  levels: levelsPage,
  bike: bikePage,
  ride: ridePage,
  debrief: debriefPage,
  about: aboutPage,
};
