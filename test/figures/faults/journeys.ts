/** What people do in the game, step by step, and what the page promised them on the way. Whether it is true is looked up by others. */
import type { JourneyName } from './types.ts';
import type { Visit } from './visit.ts';

/** What the page said is kept, by the store it must be found in; `gone` means all of it was said to be deleted. */
export interface Promises {
  readonly rides: number;
  readonly turns: number;
  readonly rideIds: readonly string[];
  readonly levelTitles: readonly string[];
  readonly gone: boolean;
  /** Deleting was asked for: what is missing is not lost, even where the page could not say that it is gone. */
  readonly mayBeGone: boolean;
}

export const NOTHING: Promises = {
  rides: 0,
  turns: 0,
  rideIds: [],
  levelTitles: [],
  gone: false,
  mayBeGone: false,
};

/** Things a journey needs. */
export interface Bag {
  /** A file with rides of another device, and their ids. */
  readonly file: string;
  readonly fileRideIds: readonly string[];
  readonly gpx: string;
  readonly planId: string;
  /** Makes titles that were not there before. */
  readonly mark: string;
}

/** A journey; `promised` is told at once what the page promises, for it may end at any moment. */
export interface Journey {
  readonly name: JourneyName;
  readonly from: string;
  readonly go: (visit: Visit, bag: Bag, promised: (more: Partial<Promises>) => void) => Promise<void>;
}

const file = (name: string, mimeType: string, text: string) => ({
  name,
  mimeType,
  buffer: Buffer.from(text),
});

/** From the countdown to the page after it. */
async function rideThrough(visit: Visit, ...after: readonly string[]): Promise<number> {
  if ((await visit.reach('riding', 'body[data-ride-state="riding"]', '[data-accept]', ...after)) === 1) {
    await visit.click('[data-accept]');
    await visit.reach('riding', 'body[data-ride-state="riding"]', ...after);
  }
  await visit.at('riding');
  await visit.reach('the end of the ride', 'body:not([data-view="ride"])');
  await visit.at('over');
  return visit.reach('what became of the ride', ...after);
}

async function ride(visit: Visit, level: string): Promise<boolean> {
  await visit.reach('levels', '[data-level]');
  await visit.at('opened');
  await visit.click(`[data-level="${level}"]`);
  await visit.at('acting');
  const saved = await rideThrough(visit, '[data-saved="saved"]', '[data-saved="not-saved"]');
  return saved === 0;
}

const PAGES = ['#levels', '#bike', '#progress', '#gearcheck', '#two', '#about', '#clinic', '#join', '#bench'];

export const JOURNEYS: Readonly<Record<JourneyName, Journey>> = {
  ride: {
    name: 'ride',
    from: '#levels',
    async go(visit, _bag, promised) {
      if (await ride(visit, 'short-and-steep')) promised({ rides: 1 });
      await visit.reach('the debrief', '[data-guess]', '[data-mark]');
      await visit.at('done');
      await visit.goTo('#progress');
      await visit.reach('progress', 'body[data-view="progress"] h1');
    },
  },
  turn: {
    name: 'turn',
    from: '#clinic',
    async go(visit, _bag, promised) {
      await visit.click('[data-go-on]');
      await visit.reach('whose turn it is', '[data-start]', '[data-next-rider]', '[data-again]');
      await visit.at('opened');
      if ((await visit.page.locator('[data-next-rider]').count()) > 0) await visit.click('[data-next-rider]');
      await visit.click(
        (await visit.page.locator('[data-again]').count()) > 0 ? '[data-again]' : '[data-start]',
      );
      await visit.at('acting');
      const ends = ['[data-remark]', '[data-again]'];
      if ((await rideThrough(visit, ...ends)) === 0)
        if ((await visit.page.locator('.not-kept').count()) === 0) promised({ turns: 1 });
      await visit.at('done');
      await visit.click('[data-next-rider]');
      await visit.reach('the next turn', '[data-start]', '[data-picture]');
    },
  },
  'hand-back': {
    name: 'hand-back',
    from: '#clinic',
    async go(visit, { planId }) {
      await visit.reach('the clinic', '[data-go-on]');
      await visit.at('opened');
      await visit.goTo(`#clinic/s/${planId}/back`);
      await visit.at('acting');
      await visit.reach('the codes', '[data-size]');
      await visit.goTo(`#clinic/s/${planId}/picture`);
      await visit.reach('the group picture', '.board-head h2');
      await visit.at('done');
      await visit.goTo(`#clinic/s/${planId}/report`);
      await visit.reach('the report', '.report-says');
    },
  },
  import: {
    name: 'import',
    from: '#about',
    async go(visit, bag, promised) {
      await visit.reach('what is kept', '[data-take-back]');
      await visit.at('opened');
      await visit.page.setInputFiles('[data-take-back]', file('rides.json', 'application/json', bag.file));
      await visit.at('acting');
      await visit.reach('an answer', '.kept-told[data-told="true"]', '.kept-told[data-told="false"]');
      const told = (await visit.page.locator('.kept-told').textContent()) ?? '';
      const taken = Number(/(\d+) taken back/.exec(told)?.[1] ?? 0);
      const already = Number(/(\d+) were already/.exec(told)?.[1] ?? 0);
      if (taken + already >= bag.fileRideIds.length) promised({ rideIds: bag.fileRideIds });
      await visit.at('done');
      await visit.click('[data-save-everything]');
      await visit.reach('the file', '.kept-told');
    },
  },
  edit: {
    name: 'edit',
    from: '#bench',
    async go(visit, bag, promised) {
      await visit.reach('the bench', '[data-new]');
      await visit.at('opened');
      await visit.click('[data-new]');
      await visit.reach('the editor', '[data-level-title]');
      await visit.page.fill('[data-level-title]', `Made ${bag.mark}`);
      await visit.click('[data-add="pitch"]');
      await visit.at('acting');
      await visit.click('[data-save]');
      await visit.reach('kept', '[data-keep-state="saved"]');
      promised({ levelTitles: [`Made ${bag.mark}`] });
      await visit.at('done');
      await visit.reach('the best ride', '[data-reference="done"]');
      await visit.goTo('#levels');
      await visit.reach('levels', '[data-level]');
    },
  },
  recorded: {
    name: 'recorded',
    from: '#bench/road',
    async go(visit, bag, promised) {
      await visit.reach('the way to a file', '[data-gpx]');
      await visit.at('opened');
      await visit.page.setInputFiles('[data-gpx]', file('ride.gpx', 'application/gpx+xml', bag.gpx));
      await visit.at('acting');
      await visit.reach('the road', '[data-stretch]');
      await visit.page.fill('[data-title]', `Recorded ${bag.mark}`);
      await visit.click('[data-save-road]');
      await visit.reach('kept', '[data-keep-state="saved"]');
      promised({ levelTitles: [`Recorded ${bag.mark}`] });
      await visit.at('done');
    },
  },
  delete: {
    name: 'delete',
    from: '#about',
    async go(visit, _bag, promised) {
      await visit.click('[data-delete-everything]');
      await visit.at('opened');
      promised({ mayBeGone: true });
      await visit.click('[data-delete-sure]');
      await visit.at('acting');
      await visit.reach('an answer', '.kept-told[data-told="true"]', '.kept-told[data-told="false"]');
      if ((await visit.page.locator('.kept-told[data-told="true"]').count()) > 0) promised({ gone: true });
      await visit.at('done');
      await visit.goTo('#levels');
      await visit.reach('levels', '[data-level]');
    },
  },
  tour: {
    name: 'tour',
    from: '',
    async go(visit) {
      await visit.reach('the start page', '[data-ride-next]');
      await visit.at('opened');
      for (const hash of PAGES) {
        await visit.goTo(hash);
        if (hash === '#progress') await visit.at('acting');
        await visit.reach(hash, `body[data-view="${hash.slice(1)}"]:not(:has([data-coming])) h1`);
      }
      await visit.at('done');
    },
  },
};
