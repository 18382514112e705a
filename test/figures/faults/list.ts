/**
 * Every single thing that can be broken: what the build made, what the journeys really call, what browsers may lack,
 * and what people do. Which of them exist is observed by playing each journey once with nothing broken.
 */
import {
  HANDS,
  type CallFault,
  type Cause,
  type Fault,
  type Hand,
  type How,
  type JourneyName,
  type Misdeed,
  type Moment,
  MOMENTS,
} from './types.ts';

/** What one journey did when nothing was broken. */
export interface Observed {
  readonly calls: Readonly<Record<string, number>>;
  readonly files: readonly string[];
}

export type Observations = ReadonlyMap<JourneyName, Observed>;

const STORE_CALLS = [
  'IDBFactory.prototype.open',
  'IDBDatabase.prototype.transaction',
  'IDBObjectStore.prototype.put',
  'IDBObjectStore.prototype.add',
  'IDBObjectStore.prototype.get',
  'IDBObjectStore.prototype.getAll',
  'IDBObjectStore.prototype.getAllKeys',
  'IDBObjectStore.prototype.openCursor',
  'IDBObjectStore.prototype.delete',
  'IDBObjectStore.prototype.clear',
  'IDBFactory.prototype.deleteDatabase',
  'IDBFactory.prototype.databases',
  'Storage.prototype.getItem',
  'Storage.prototype.setItem',
  'Storage.prototype.removeItem',
  'Storage.prototype.key',
];

const PICTURE_CALLS = [
  'drawImage',
  'fill',
  'stroke',
  'beginPath',
  'moveTo',
  'lineTo',
  'arc',
  'closePath',
  'save',
  'restore',
  'translate',
  'rotate',
  'scale',
  'setTransform',
  'transform',
  'fillRect',
  'clearRect',
  'clip',
  'bezierCurveTo',
  'quadraticCurveTo',
  'ellipse',
  'createLinearGradient',
  'createRadialGradient',
  'createPattern',
  'getImageData',
  'putImageData',
  'setLineDash',
  'rect',
].map((name) => `CanvasRenderingContext2D.prototype.${name}`);

const OTHER_CALLS = [
  'HTMLCanvasElement.prototype.getContext',
  'requestAnimationFrame',
  'History.prototype.pushState',
  'History.prototype.replaceState',
  'HTMLDialogElement.prototype.showModal',
  'HTMLElement.prototype.focus',
  'Element.prototype.scrollIntoView',
  'Element.prototype.animate',
  'scrollTo',
  'matchMedia',
  'getComputedStyle',
  'Crypto.prototype.getRandomValues',
  'Crypto.prototype.randomUUID',
  'SubtleCrypto.prototype.digest',
  'LockManager.prototype.request',
  'StorageManager.prototype.persist',
  'StorageManager.prototype.persisted',
  'WakeLock.prototype.request',
  'Navigator.prototype.getGamepads',
  'Navigator.prototype.vibrate',
  'Clipboard.prototype.writeText',
  'CacheStorage.prototype.keys',
  'CacheStorage.prototype.open',
  'BaseAudioContext.prototype.decodeAudioData',
  'BaseAudioContext.prototype.createGain',
  'BaseAudioContext.prototype.createBufferSource',
  'BaseAudioContext.prototype.createOscillator',
  'AudioContext.prototype.resume',
  'AudioContext.prototype.suspend',
  'AudioContext.prototype.close',
  'AudioContext',
  'ResizeObserver',
  'ResizeObserver.prototype.observe',
  'CompressionStream',
  'DecompressionStream',
  'Blob.prototype.text',
  'URL.createObjectURL',
  'structuredClone',
  'HTMLMediaElement.prototype.play',
  'XMLHttpRequest.prototype.send',
  'fetch',
  'Response.prototype.text',
  'Worker.prototype.postMessage',
];

/** What is watched while nothing is broken. */
export const WATCHED: readonly string[] = [...STORE_CALLS, ...PICTURE_CALLS, ...OTHER_CALLS];

/** Calls that answer with a promise in the browser. */
const PROMISING =
  /digest|LockManager|StorageManager|WakeLock|Clipboard|CacheStorage|decodeAudio|AudioContext\.prototype\.(resume|suspend|close)|Blob|play|fetch|Response|\.databases/;

/** What some browser, window or policy goes without. */
const ABSENT = [
  'AudioContext',
  'Worker',
  'navigator.locks',
  'crypto.subtle',
  'crypto.randomUUID',
  'CompressionStream',
  'DecompressionStream',
  'navigator.serviceWorker',
  'caches',
  'navigator.storage',
  'navigator.getGamepads',
  'navigator.vibrate',
  'navigator.wakeLock',
  'navigator.clipboard',
  'navigator.mediaDevices',
  'navigator.permissions',
  'ResizeObserver',
  'IntersectionObserver',
  'OffscreenCanvas',
  'createImageBitmap',
  'structuredClone',
  'requestIdleCallback',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'CanvasRenderingContext2D.prototype.roundRect',
  'CanvasRenderingContext2D.prototype.filter',
  'HTMLDialogElement.prototype.showModal',
  'Element.prototype.animate',
  'document.getAnimations',
  'BroadcastChannel',
  'navigator.connection',
  'navigator.userAgentData',
  'Intl.DisplayNames',
  'Intl.Segmenter',
  'navigator.onLine',
  'speechSynthesis',
  'visualViewport',
  'screen.orientation',
  'IDBFactory.prototype.databases',
  'IDBTransaction.prototype.commit',
  'reportError',
];

const SECOND = 1000;
const HOUR = 3600 * SECOND;
const DAY = 24 * HOUR;
const CLOCKS: readonly (readonly [name: string, byMs: number])[] = [
  ['an hour on', HOUR],
  ['an hour back', -HOUR],
  ['thirteen hours on', 13 * HOUR],
  ['a day back', -DAY],
  ['ten years on', 3652 * DAY],
  ['ten years back', -3652 * DAY],
  ['to before 1970', -60 * 365 * DAY],
];

/** Journeys in the order in which one is chosen for something that several use. */
const ORDER: readonly JourneyName[] = [
  'ride',
  'turn',
  'edit',
  'import',
  'recorded',
  'hand-back',
  'delete',
  'tour',
];

const word = (path: string): string => path.replace('.prototype', '');

function fileFaults(seen: Observations): Fault[] {
  const firstOf = new Map<string, JourneyName>();
  for (const journey of ORDER)
    for (const file of seen.get(journey)?.files ?? []) if (!firstOf.has(file)) firstOf.set(file, journey);
  const faults: Fault[] = [];
  for (const [file, journey] of firstOf) {
    const script = file.endsWith('.js');
    if (file === '' || !/\.\w+$/.test(file)) continue;
    const answers = script
      ? (['missing', 'portal', 'hangs', 'throws', 'refused'] as const)
      : (['missing', 'portal', 'hangs'] as const);
    // The build names files by what is in them; without that they keep their name from build to build.
    const name = file.replace(/^assets\//, '').replace(/-[\w-]{8}\./, '.');
    for (const answer of answers)
      faults.push({
        name: `${name} ${answer} (${journey})`,
        group: script
          ? /worker/.test(name)
            ? 'files of workers'
            : 'lazy parts'
          : 'styles, sounds, pictures',
        journey,
        cause: 'network',
        how: { kind: 'file', file, answer },
      });
  }
  return faults;
}

function workerFaults(): Fault[] {
  const script = 'work.worker';
  const journeys: readonly JourneyName[] = ['ride', 'turn', 'edit', 'recorded', 'hand-back'];
  const ends = ['at-start', 'with-an-error', 'silent', 'in-mid-work', 'unreadably'] as const;
  return journeys.flatMap((journey) =>
    ends.map(
      (end): Fault => ({
        name: `${script} ends ${end} (${journey})`,
        group: 'workers',
        journey,
        cause: 'worker',
        how: { kind: 'page', fault: { what: 'worker', script, ends: end } },
      }),
    ),
  );
}

interface Wish {
  readonly group: string;
  readonly cause: (error: string) => Cause;
  readonly journey: JourneyName;
  readonly path: string;
  readonly misdeed: Misdeed;
  readonly error?: string;
  readonly nth?: number;
  readonly forever?: boolean;
  readonly from?: Moment;
}

function call({
  group,
  cause,
  journey,
  path,
  misdeed,
  error = 'Error',
  nth = 1,
  forever = false,
  from = 'start',
}: Wish): Fault {
  const fault: CallFault = { what: 'call', path, misdeed, error, nth, forever, from };
  const which = forever ? `from call ${nth} on` : `call ${nth}`;
  const named = misdeed === 'throws' || misdeed === 'rejects' ? `${misdeed} ${error}` : misdeed;
  return {
    name: `${word(path)} ${named}, ${which} since ${from} (${journey})`,
    group,
    journey,
    // Where no database can ever be opened there is none.
    cause:
      path === 'IDBFactory.prototype.open' && misdeed === 'throws' && forever ? 'no-store' : cause(error),
    how: { kind: 'page', fault },
  };
}

/** How often something is called from a moment on. */
function countFrom(observed: Observed | undefined, path: string, from: Moment): number {
  let count = 0;
  for (const moment of MOMENTS.slice(MOMENTS.indexOf(from)))
    count += observed?.calls[`${moment} ${path}`] ?? 0;
  return count;
}

function storeFaults(seen: Observations): Fault[] {
  const faults: Fault[] = [];
  const cause = (error: string): Cause => (error === 'QuotaExceededError' ? 'disk-full' : 'store');
  for (const journey of ORDER)
    for (const path of STORE_CALLS) {
      const observed = seen.get(journey);
      const writes = /put|add|setItem|delete|clear|removeItem/.test(path);
      const group = path.startsWith('Storage.') ? 'local storage' : 'database';
      for (const from of ['start', 'acting'] as const) {
        const count = countFrom(observed, path, from);
        if (count === 0) continue;
        const wish = { group, cause, journey, path, from };
        const errors = writes
          ? ['QuotaExceededError', 'UnknownError']
          : ['UnknownError', 'InvalidStateError'];
        for (const error of errors) {
          faults.push(call({ ...wish, misdeed: 'throws', error }));
          faults.push(call({ ...wish, misdeed: 'throws', error, forever: true }));
          if (count > 2) faults.push(call({ ...wish, misdeed: 'throws', error, nth: Math.ceil(count / 2) }));
        }
        if (path.startsWith('Storage.') || path.endsWith('databases')) continue;
        if (path.endsWith('transaction')) faults.push(call({ ...wish, misdeed: 'closes' }));
        faults.push(
          call({ ...wish, misdeed: 'is-not-heard' }),
          call({ ...wish, misdeed: 'is-not-heard', forever: true }),
        );
        if (path.includes('IDBObjectStore'))
          faults.push(
            call({ ...wish, misdeed: 'aborts' }),
            call({ ...wish, misdeed: 'aborts', forever: true }),
          );
      }
    }
  return faults;
}

function pictureFaults(seen: Observations): Fault[] {
  const faults: Fault[] = [];
  const cause = (): Cause => 'picture';
  const group = 'picture';
  for (const journey of ['ride', 'turn'] as const)
    for (const path of PICTURE_CALLS) {
      const wish = { group, cause, journey, path, misdeed: 'throws' } as const;
      if (
        countFrom(seen.get(journey), path, 'riding') > 0 &&
        (journey === 'ride' || /drawImage|fill$|save/.test(path))
      ) {
        faults.push(call({ ...wish, from: 'riding' }), call({ ...wish, from: 'riding', nth: 40 }));
        faults.push(call({ ...wish, from: 'riding', forever: true }));
      }
      if (countFrom(seen.get(journey), path, 'start') > 0 && journey === 'ride')
        faults.push(call({ ...wish, forever: true }));
    }
  const frames = { group, cause, journey: 'ride', path: 'requestAnimationFrame' } as const;
  const canvas = { group, cause, journey: 'ride', path: 'HTMLCanvasElement.prototype.getContext' } as const;
  return [
    ...faults,
    call({ ...frames, misdeed: 'does-nothing', from: 'riding' }),
    call({ ...frames, misdeed: 'does-nothing', from: 'riding', forever: true }),
    call({ ...frames, misdeed: 'throws', from: 'riding' }),
    call({ ...canvas, misdeed: 'gives-null' }),
    call({ ...canvas, misdeed: 'gives-null', nth: 2 }),
    call({ ...canvas, misdeed: 'gives-null', forever: true }),
    call({ ...canvas, misdeed: 'throws', forever: true }),
  ];
}

function browserFaults(seen: Observations): Fault[] {
  const faults: Fault[] = [];
  const group = 'calls of the browser';
  const cause = (): Cause => 'browser';
  for (const path of OTHER_CALLS) {
    if (/getContext|requestAnimationFrame/.test(path)) continue;
    const journey = ORDER.find((one) => countFrom(seen.get(one), path, 'start') > 0);
    if (journey === undefined) continue;
    const wish = { group, cause, journey, path } as const;
    if (PROMISING.test(path)) {
      faults.push(call({ ...wish, misdeed: 'rejects', error: 'NotAllowedError', forever: true }));
      faults.push(call({ ...wish, misdeed: 'never-settles', forever: true }));
    }
    faults.push(
      call({ ...wish, misdeed: 'throws', error: 'SecurityError', forever: true }),
      call({ ...wish, misdeed: 'throws', error: 'Error' }),
    );
  }
  for (const [path, journey] of ABSENT.flatMap((one) =>
    (['ride', 'tour', 'hand-back'] as const).map((j) => [one, j] as const),
  ))
    faults.push({
      name: `no ${word(path)} (${journey})`,
      group: 'missing in the browser',
      journey,
      cause: /indexedDB|localStorage/.test(path) ? 'no-store' : 'browser',
      how: { kind: 'page', fault: { what: 'absent', path } },
    });
  return faults;
}

function clockFaults(): Fault[] {
  return CLOCKS.flatMap(([name, byMs]) =>
    (['ride', 'turn', 'import', 'edit'] as const).flatMap((journey) =>
      (['start', 'acting'] as const).map(
        (from): Fault => ({
          name: `the clock is turned ${name} since ${from} (${journey})`,
          group: 'clock',
          journey,
          cause: 'clock',
          how: { kind: 'page', fault: { what: 'clock', byMs, from } },
        }),
      ),
    ),
  );
}

const CAUSE_OF_HAND: Readonly<Partial<Record<Hand, Cause>>> = {
  offline: 'network',
  'real-quota': 'disk-full',
  'second-tab': 'tabs',
  'second-tab-same-journey': 'tabs',
  'close-databases': 'tabs',
  'close-tab': 'killed',
  'kill-tab': 'killed',
  reload: 'killed',
};

function handFaults(): Fault[] {
  const faults: Fault[] = [];
  const group = (hand: Hand): string =>
    /tab$|reload|journey/.test(hand) ? 'tabs closed, killed, doubled' : 'window, system, network';
  for (const hand of HANDS)
    for (const journey of ORDER)
      for (const at of ['opened', 'acting', 'riding', 'over', 'done'] as const) {
        const rides = journey === 'ride' || journey === 'turn';
        if (!rides && (at === 'riding' || at === 'over')) continue;
        if (hand === 'press-everything' && (!rides || at !== 'riding')) continue;
        if (
          !rides &&
          ![
            'reload',
            'close-tab',
            'kill-tab',
            'second-tab-same-journey',
            'offline',
            'real-quota',
            'close-databases',
          ].includes(hand)
        )
          continue;
        const how: How = { kind: 'hand', hand, at };
        faults.push({
          name: `${hand} at ${at} (${journey})`,
          group: group(hand),
          journey,
          cause: CAUSE_OF_HAND[hand] ?? 'looks',
          how,
        });
      }
  return faults;
}

/** All of them, each with a name of its own. */
export function allFaults(seen: Observations): Fault[] {
  const faults = [
    ...fileFaults(seen),
    ...workerFaults(),
    ...storeFaults(seen),
    ...pictureFaults(seen),
    ...browserFaults(seen),
    ...clockFaults(),
    ...handFaults(),
  ];
  const byName = new Map(faults.map((fault) => [fault.name, fault]));
  return [...byName.values()];
}
