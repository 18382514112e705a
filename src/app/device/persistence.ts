/**
 * Joins the store to the keeping: choices come back at the start and are kept when they change, rides are kept
 * as soon as they are over, before they are judged. The keeping is loaded after the first picture; nothing waits for it.
 */
import type { KeptResult, RideResult, UnmarkedRide } from '../../core/coach/results.ts';
import type { Judged } from '../../worker/client.ts';
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { MARK_NAMES } from '../../core/coach/types.ts';
import { levelHash } from '../../core/level/build.ts';
import type { Keys, Settings } from '../../core/settings/settings.ts';
import type { Kept } from '../../state/afterRide.ts';
import { type KeptChoices, readChoices, SETTINGS_VERSION, withEarly } from '../../core/settings/kept.ts';
import type { Store } from '../../state/createStore.ts';
import type { State } from '../../state/store.ts';
import type { UnfinishedRide } from '../../state/unfinished.ts';
import { PHYSICS_VERSION } from '../../core/ride/recording.ts';
import type { Health, Marking, NewRide, Storage, StoredResult } from '../../storage/index.ts';

/** Changes that follow each other are kept this long after the last (ms), so that dragging a slider writes twice. */
const REST_MS = 400;

type RiddenRide = Pick<RideResult, 'level' | 'recording'>;

/** The storage's part of the program is fetched again after so long (ms), and as soon as there is a network. */
const AGAIN_AFTER_MS = 5000;

/** Nothing is said of a storage that comes within so long (ms). */
const SLOW_MS = 15_000;

export function joinKeeping(store: Store, keys: Keys, open = openHere, slowMs = SLOW_MS) {
  const untouched = store.state().settings;
  let whileDeaf = (change: () => void): void => change();
  let opened: Promise<Storage> | null = null;
  let arrive = (_: Storage): void => undefined;
  const there = new Promise<Storage>((resolve) => {
    arrive = resolve;
  });
  const refresh = async (): Promise<void> => {
    const kept = await get();
    const rides = await kept.listRides();
    store.send({ kind: 'results', results: rides.flatMap(resultOf), unmarked: rides.flatMap(unmarkedOf) });
    const own = await kept.listLevels();
    store.send({ kind: 'found', found: { ownLevels: own.map((one) => one.level) } });
  };
  // Neither come nor failed: nobody could tell that from a device on which nothing is kept.
  const slow = window.setTimeout(() => store.send({ kind: 'found', found: { keeping: 'slow' } }), slowMs);
  const begin = async (kept: Storage): Promise<void> => {
    window.clearTimeout(slow);
    followHealth(store, kept);
    whileDeaf = await bringBack(store, kept, keys, untouched);
    await refresh();
    arrive(kept);
  };
  const get = (): Promise<Storage> => {
    if (opened !== null) return opened;
    const mine = open();
    opened = mine;
    mine.then(begin, () => {
      opened = null;
      store.send({ kind: 'found', found: { keeping: 'not-fetched' } });
    });
    return mine;
  };
  const tryUntilThere = (): void => {
    get().catch(() => window.setTimeout(tryUntilThere, AGAIN_AFTER_MS));
  };
  tryUntilThere();
  window.addEventListener('online', () => void get().catch(() => undefined));
  const persistence = askToPersist(store, there);
  const keep = async (ride: NewRide): Promise<Kept> => {
    const kept = await keepRideIn(get(), ride);
    if (kept.state === 'saved') persistence.rideIsKept();
    if (opened !== null) await refresh();
    return kept;
  };
  return {
    /**
     * The storage, once it is open. Rejects where its part of the program cannot be fetched; each time it is asked for
     * it is tried again.
     */
    get storage() {
      return get();
    },
    /** Comes with the storage, however long that takes. */
    there,
    /** Reads the results anew. */
    refresh,
    /** Everything was deleted, here or in another tab: choices are as on the first visit, and none is written back. */
    forget(): Promise<void> {
      whileDeaf(() => store.send({ kind: 'forget', settings: untouched }));
      return refresh();
    },
    /** Keeps a ride whose marks are still to be worked out; the same id again is the same ride. */
    keepRide: (id: string, ridden: RiddenRide): Promise<Kept> => keep(newRide(id, ridden)),
    /** Keeps what was ridden of a ride that broke off; it never gets marks. */
    keepUnfinished: (ride: UnfinishedRide): Promise<Kept> => keep(brokenOff(ride)),
    async markRide(id: string, { report }: Judged): Promise<void> {
      await (await get()).markRide(id, markingOf(report));
      await refresh();
    },
  };
}
export type Keeping = ReturnType<typeof joinKeeping>;

async function keepRideIn(storage: Promise<Storage>, ride: NewRide): Promise<Kept> {
  const kept = await storage.catch(() => null);
  if (kept === null) return { state: 'not-saved', code: 'not-fetched', localBackup: false };
  const answer = await kept.saveRide(ride);
  if (!answer.saved) return { state: 'not-saved', code: answer.code, localBackup: answer.localBackup };
  return { state: 'saved' };
}

/** Pages on which somebody rides or reads what became of a ride; a question of the browser would speak over it. */
const BUSY_PAGES: ReadonlySet<State['view']> = new Set(['ride', 'debrief', 'two']);

/** Asks the browser to keep what is kept, once: when a ride is there to be lost, and on the first page that is quiet. */
function askToPersist(store: Store, there: Promise<Storage>): { rideIsKept(): void } {
  let isDue = false;
  const stop = store.subscribe(({ view }) => {
    if (!isDue || BUSY_PAGES.has(view)) return;
    stop();
    void there.then((kept) => kept.requestPersistence());
  });
  return {
    rideIsKept() {
      isDue = true;
    },
  };
}

function followHealth(store: Store, kept: Storage): void {
  const tell = (): void => store.send({ kind: 'found', found: { keeping: noticeOf(kept.health) } });
  kept.subscribe(tell);
  tell();
}

function markingOf({ total, marks, passed }: Judged['report']): Marking {
  const values = Object.fromEntries(MARK_NAMES.map((name) => [name, marks[name].value]));
  return { total, marks: values as Marking['marks'], passed, rulesVersion: RULES_VERSION };
}

/** A ride that never came to its end. */
function brokenOff({ id, turn, physicsVersion, ...ridden }: UnfinishedRide): NewRide {
  const ride = newRide(id, ridden);
  // What somebody of a group has ridden is no ride of whoever owns this device.
  return { ...ride, standing: 'unfinished', physicsVersion, kind: turn === null ? ride.kind : 'clinic' };
}

/** A ride that was just ridden to its end. */
function newRide(id: string, { level, recording }: RiddenRide): NewRide {
  return {
    id,
    levelId: level.id,
    levelTitle: level.title,
    levelHash: levelHash(level),
    seed: recording.seed,
    bikeId: recording.bike.id,
    riderId: recording.rider.id,
    kind: level.teaches === 'check' ? 'check' : 'ride',
    standing: 'to-mark',
    physicsVersion: PHYSICS_VERSION,
    rulesVersion: null,
    total: null,
    marks: { cadence: null, foresight: null, easing: null, chainLine: null, economy: null },
    passed: false,
    recording,
    level,
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
    read: (value) => readChoices(value, keys),
  });
  if (choices !== null) {
    const settings = withEarly(choices.settings, untouched, store.state().settings);
    store.send({ kind: 'restore', ...choices, settings });
  }
  return followChoices(store, kept, choices ?? { settings: untouched, cautionsSeen: false });
}

async function openHere(): Promise<Storage> {
  const { openStorage } = await import('../../storage/index.ts');
  return openStorage();
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

/** What a person should know about the keeping, or null. */
function noticeOf({ kind, problem }: Health): string | null {
  if (problem === 'disk-full' || problem === 'recordings-lost') return problem;
  return kind === 'kept' ? null : kind;
}

function resultOf(ride: StoredResult): readonly KeptResult[] {
  const { id, savedAtMs, levelId, levelTitle, kind, bikeId, total, marks, passed } = ride;
  const older = ride.physicsVersion !== PHYSICS_VERSION || ride.rulesVersion !== RULES_VERSION;
  return total === null
    ? []
    : [{ id, atMs: savedAtMs, levelId, levelTitle, kind, bikeId, total, marks, passed, older }];
}

function unmarkedOf(ride: StoredResult): readonly UnmarkedRide[] {
  const { id, savedAtMs, levelId, levelTitle, kind, standing, physicsVersion } = ride;
  if (standing === 'marked') return [];
  const lost = standing === 'to-mark' && physicsVersion !== PHYSICS_VERSION;
  return [{ id, atMs: savedAtMs, levelId, levelTitle, kind, standing: lost ? 'older' : standing }];
}
