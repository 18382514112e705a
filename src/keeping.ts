/**
 * Joins the store to the keeping: choices come back at the start and are kept when they change, rides are kept
 * when they have been judged. The keeping is loaded after the first picture; nothing waits for it.
 */
import type { KeptResult, RideResult } from './core/coach/results.ts';
import type { Judged } from './worker/client.ts';
import { levelHash } from './core/level/build.ts';
import type { Keys, Settings } from './core/settings/settings.ts';
import type { Kept } from './app/afterRide.ts';
import { type KeptChoices, readChoices, SETTINGS_VERSION, withEarly } from './core/settings/kept.ts';
import type { Store } from './app/createStore.ts';
import type { ListedRide, Storage } from './storage/index.ts';

/** Changes that follow each other are kept this long after the last (ms), so that dragging a slider writes twice. */
const REST_MS = 400;

/** The keeping, joined. */
export interface Keeping {
  /** The storage, once it is open. */
  readonly storage: Promise<Storage>;
  /** Keeps a judged ride and says what became of it. */
  keepRide(last: RideResult, judged: Judged): Promise<Kept>;
  /** Reads the results anew. */
  refresh(): Promise<void>;
  /** Everything was deleted, here or in another tab: choices are as on the first visit, and none is written back. */
  forget(): Promise<void>;
}

/** Opens the keeping and follows the store. */
export function joinKeeping(store: Store, keys: Keys): Keeping {
  const untouched = store.state().settings;
  let whileDeaf = (change: () => void): void => change();
  const opened = open();
  const storage = opened.then((rooms) => rooms.storage);
  const refresh = async (): Promise<void> => {
    const kept = await storage;
    const rides = await kept.listRides();
    store.send({ kind: 'results', results: rides.map(resultOf) });
    const own = await kept.listLevels();
    store.send({ kind: 'own-levels', levels: own.map((one) => one.level) });
  };
  void storage.then(async (kept) => {
    const tellHealth = (): void =>
      store.send({ kind: 'keeping', code: kept.health.kind === 'kept' ? null : kept.health.kind });
    kept.subscribe(tellHealth);
    tellHealth();
    whileDeaf = await bringBack(store, kept, keys, untouched);
    await refresh();
  });
  return {
    storage,
    refresh,
    forget() {
      whileDeaf(() => store.send({ kind: 'forget', settings: untouched }));
      return refresh();
    },
    async keepRide(last, judged) {
      const { storage: kept, newRideId } = await opened;
      const { level, recording } = last;
      const { report } = judged;
      const answer = await kept.saveRide({
        id: newRideId(),
        levelId: level.id,
        levelTitle: level.title,
        levelHash: levelHash(level),
        seed: recording.seed,
        bikeId: recording.bike.id,
        riderId: recording.rider.id,
        kind: level.teaches === 'check' ? 'check' : 'ride',
        total: report.total,
        marks: {
          cadence: report.marks.cadence.value,
          foresight: report.marks.foresight.value,
          easing: report.marks.easing.value,
          chainLine: report.marks.chainLine.value,
          economy: report.marks.economy.value,
        },
        passed: report.passed,
        recording,
        level,
      });
      await refresh();
      if (!answer.saved) return { state: 'not-saved', code: answer.code, smallCopy: answer.smallCopy };
      // Now the person has something to lose, and the browser a reason to agree.
      void kept.requestPersistence();
      return { state: 'saved' };
    },
  };
}

/** Brings the kept choices back and follows what becomes of them; `untouched` are those the page opened with. */
async function bringBack(
  store: Store,
  kept: Storage,
  keys: Keys,
  untouched: Settings,
): Promise<(change: () => void) => void> {
  const choices = await kept.loadSettings({
    schema: SETTINGS_VERSION,
    steps: [],
    read: (value) => readChoices(value, keys),
  });
  if (choices !== null) {
    const settings = withEarly(choices.settings, untouched, store.state().settings);
    store.send({ kind: 'restore', ...choices, settings });
  }
  return followChoices(store, kept, choices ?? { settings: untouched, cautionsSeen: false });
}

async function open() {
  const { openStorage, newRideId } = await import('./storage/index.ts');
  return { storage: await openStorage(), newRideId };
}

/**
 * Keeps choices when they differ from the kept ones: the first change at once, a row of them when it has rested. The
 * answer makes a change that is not to be written, because everything was deleted.
 */
function followChoices(store: Store, storage: Storage, before: KeptChoices): (change: () => void) => void {
  const now = () => ({ settings: store.state().settings, cautionsSeen: store.state().cautionsSeen });
  let kept = before;
  let timer = 0;
  let deaf = false;
  const keep = (): void => {
    const next = now();
    if (deaf) return;
    if (next.settings === kept.settings && next.cautionsSeen === kept.cautionsSeen) return;
    kept = next;
    void storage.saveSettings(next, SETTINGS_VERSION);
  };
  // The first change at once, for a page can be closed at any moment and then there is no time to write.
  store.subscribe(() => {
    if (timer === 0) keep();
    window.clearTimeout(timer);
    timer = window.setTimeout(() => {
      timer = 0;
      keep();
    }, REST_MS);
  });
  window.addEventListener('pagehide', keep);
  keep();
  return (change) => {
    deaf = true;
    change();
    kept = now();
    deaf = false;
  };
}

function resultOf(ride: ListedRide): KeptResult {
  const { id, savedAtMs, levelId, levelTitle, kind, bikeId, total, marks, passed } = ride;
  return { id, atMs: savedAtMs, levelId, levelTitle, kind, bikeId, total, marks, passed };
}
