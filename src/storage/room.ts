/**
 * What the parts of the storage share: vault, small copy, clock and the list of what was found unreadable.
 */
import { canonicalJson } from '../core/math/hash.ts';
import type { Environment } from './environment.ts';
import type { StoredReading } from './ladder.ts';
import { createSecondCopy } from './secondCopy.ts';
import { createLocalBackup, ERASED_KEY, type LocalBackup } from './localBackup.ts';
import type { Damaged, Health, ProblemCode, SaveAnswer, StoreName } from './types.ts';
import { createVault, type Vault, type Written } from './vault.ts';

/** The shared things. */
export interface Room {
  readonly vault: Vault;
  readonly localBackup: LocalBackup;
  readonly nowMs: () => number;
  /** Opens the vault and brings back what a lost database had. */
  open(): Promise<void>;
  health(): Health;
  damaged(): readonly Damaged[];
  /** The value that was read, or null after noting what is wrong with it. */
  checked<T>(store: StoreName, id: string, reading: StoredReading<T>): T | null;
  isSame(one: unknown, other: unknown): boolean;
  readonly subscribe: (listener: (health: Health) => void) => () => void;
  /** Calls back when another tab deletes everything; the answer stops it. */
  readonly onDeletedElsewhere: (listener: () => void) => () => void;
  /** Forgets what was in memory and what was found. */
  empty(): void;
}

/** Makes the shared things. */
export function createRoom(environment: Environment): Room {
  const listeners = new Set<(health: Health) => void>();
  const damaged = new Map<string, Damaged>();
  const deletedListeners = new Set<() => void>();
  let recordingsLost = false;
  const localBackup = createLocalBackup(environment.simpleStore);
  let told = '';
  const health = (): Health => healthOf(vault.fault(), localBackup, recordingsLost, [...damaged.values()]);
  const tell = (): void => {
    const now = health();
    if (canonicalJson(now) === told) return;
    told = canonicalJson(now);
    for (const listener of listeners) listener(now);
  };
  const secondCopy = createSecondCopy(environment.caches, environment.timeoutMs);
  const vault = createVault({ ...environment, secondCopy }, tell, () => {
    damaged.clear();
    recordingsLost = false;
    for (const listener of deletedListeners) listener();
  });
  // The database tells only tabs that have it open.
  environment.tabs()?.addEventListener('storage', (event) => {
    const { key, newValue } = event as StorageEvent;
    if (key === ERASED_KEY && newValue !== null) vault.deletedElsewhere();
  });
  return {
    vault,
    localBackup,
    nowMs: environment.nowMs,
    async open() {
      recordingsLost = await bringBack(vault, localBackup);
      tell();
    },
    health,
    damaged: () => [...damaged.values()],
    checked(store, id, reading) {
      const name = `${store} ${id}`;
      if (reading.ok) {
        damaged.delete(name);
        return reading.value;
      }
      damaged.set(name, { store, id, code: reading.code });
      tell();
      return null;
    },
    isSame: (one, other) => canonicalJson(one) === canonicalJson(other),
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    onDeletedElsewhere(listener) {
      deletedListeners.add(listener);
      return () => deletedListeners.delete(listener);
    },
    empty() {
      damaged.clear();
      recordingsLost = false;
      vault.letGo();
    },
  };
}

function healthOf(
  fault: ProblemCode | null,
  localBackup: LocalBackup,
  recordingsLost: boolean,
  damaged: readonly Damaged[],
): Health {
  if (fault !== null) return { kind: localBackup.works() ? 'small-copy' : 'memory', problem: fault };
  return { kind: 'kept', problem: recordingsLost ? 'recordings-lost' : worstOf(damaged) };
}

function worstOf(damaged: readonly Damaged[]): Damaged['code'] | null {
  const codes = damaged.map(({ code }) => code);
  return codes.includes('corrupt') ? 'corrupt' : (codes[0] ?? null);
}

/** Brings back what a lost database had; true where of some rides only the results are left. */
async function bringBack(vault: Vault, localBackup: LocalBackup): Promise<boolean> {
  const pieces = localBackup.pieces();
  const { outcomes, code } = await vault.open(pieces);
  // The pieces of the small copy come last. A result that was in no store has lost its ride.
  const own = outcomes.slice(outcomes.length - pieces.length);
  return code === null && own.some((one, i) => one === 'added' && pieces[i]?.store === 'results');
}

/** What the person is told after writing one thing; `copy` writes the small copy and says whether it is there. */
export function answerOf(written: Written, copy: () => boolean): SaveAnswer {
  const outcome = written.outcomes.find((one) => one !== 'added' && one !== 'already');
  if (outcome === 'deleted') return { saved: false, code: 'connection-lost', localBackup: false };
  if (outcome === 'newer-version') return { saved: false, code: 'newer-version', localBackup: false };
  if (outcome === 'differs') return { saved: false, code: 'corrupt', localBackup: false };
  const localBackup = copy();
  return written.code === null ? { saved: true } : { saved: false, code: written.code, localBackup };
}
