/**
 * What the parts of the storage share: vault, small copy, clock and the list of what was found unreadable.
 */
import { canonicalJson } from '../core/math/hash.ts';
import { LIMITS } from '../core/math/limits.ts';
import { isTooDeep } from '../core/math/measure.ts';
import type { Environment } from './environment.ts';
import { CORRUPT, type StoredReading } from './ladder.ts';
import { createLocalBackup, ERASED_KEY, type LocalBackup } from './localBackup.ts';
import { type KeptThings, READERS, type StoreName } from './shapes.ts';
import type { Damaged, Health, ProblemCode, SaveAnswer } from './types.ts';
import { Vault, type Written } from './vault.ts';

export class Room {
  readonly vault: Vault;
  readonly localBackup: LocalBackup;
  readonly nowMs: () => number;
  readonly #listeners = new Set<(health: Health) => void>();
  readonly #deletedListeners = new Set<() => void>();
  readonly #damaged = new Map<string, Damaged>();
  #recordingsLost = false;
  #told = '';

  constructor(environment: Environment) {
    this.nowMs = environment.nowMs;
    this.localBackup = createLocalBackup(environment.localStorage);
    this.vault = new Vault(environment, {
      onChange: () => this.#tell(),
      onDeleted: () => {
        this.#forgetFindings();
        for (const listener of this.#deletedListeners) listener();
      },
    });
    // The database tells only tabs that have it open.
    environment.tabs()?.addEventListener('storage', (event) => {
      const { key, newValue } = event as StorageEvent;
      if (key === ERASED_KEY && newValue !== null) this.vault.deletedElsewhere();
    });
  }

  /** Opens the vault and brings back what a lost database had. */
  async open(): Promise<void> {
    const pieces = this.localBackup.pieces();
    const { outcomes, code } = await this.vault.open(pieces);
    // The pieces of the small copy come last. A result that was in no store has lost its ride.
    const own = outcomes.slice(outcomes.length - pieces.length);
    this.#recordingsLost =
      code === null && own.some((one, i) => one === 'added' && pieces[i]?.store === 'results');
    this.#tell();
  }

  health(): Health {
    const fault = this.vault.fault();
    if (fault !== null) return { kind: this.localBackup.works() ? 'small-copy' : 'memory', problem: fault };
    return { kind: 'kept', problem: this.#recordingsLost ? 'recordings-lost' : worstOf(this.damaged()) };
  }

  damaged(): readonly Damaged[] {
    return [...this.#damaged.values()];
  }

  /** The value that was read, or null after noting what is wrong with it. */
  checked<T>(store: StoreName, id: string, reading: StoredReading<T>): T | null {
    const name = `${store} ${id}`;
    if (reading.ok) {
      this.#damaged.delete(name);
      return reading.value;
    }
    this.#damaged.set(name, { store, id, code: reading.code });
    this.#tell();
    return null;
  }

  /** What is kept there, or null where there is nothing that can be read. */
  async read<S extends StoreName>(store: S, key: string): Promise<KeptThings[S] | null> {
    const value = await this.vault.readOne(store, key);
    return value === undefined ? null : this.checked(store, key, READERS[store](value));
  }

  /** All of a store that can be read, of the keys that are wanted. */
  async list<S extends StoreName>(
    store: S,
    isWanted = (_key: string): boolean => true,
  ): Promise<KeptThings[S][]> {
    const all: KeptThings[S][] = [];
    for (const [key, value] of await this.vault.readAll(store)) {
      const thing = isWanted(key) ? this.checked(store, key, READERS[store](value)) : null;
      if (thing !== null) all.push(thing);
    }
    return all;
  }

  /** Writes one thing of this person; without a small copy of its own, nothing of it survives a failure. */
  async keep<S extends StoreName>(
    store: S,
    key: string,
    value: unknown,
    copy: (kept: KeptThings[S]) => boolean = () => false,
  ): Promise<SaveAnswer> {
    const reading = readBack(store, value);
    if (!reading.ok) return notSaved(reading.code);
    const written = await this.vault.change({ pieces: [{ store, key, value: reading.value, mine: true }] });
    return answerOf(written, () => copy(reading.value));
  }

  /** Calls back when `health` has changed; the answer stops it. */
  subscribe(listener: (health: Health) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Calls back when another tab deletes everything; the answer stops it. */
  onDeletedElsewhere(listener: () => void): () => void {
    this.#deletedListeners.add(listener);
    return () => this.#deletedListeners.delete(listener);
  }

  /** Forgets what was in memory and what was found. */
  empty(): void {
    this.#forgetFindings();
    this.vault.letGo();
  }

  #forgetFindings(): void {
    this.#damaged.clear();
    this.#recordingsLost = false;
  }

  #tell(): void {
    const now = this.health();
    if (canonicalJson(now) === this.#told) return;
    this.#told = canonicalJson(now);
    for (const listener of this.#listeners) listener(now);
  }
}

function worstOf(damaged: readonly Damaged[]): Damaged['code'] | null {
  const codes = damaged.map(({ code }) => code);
  return codes.includes('corrupt') ? 'corrupt' : (codes[0] ?? null);
}

/** Read as it would be read later: what could not be read back must not count as kept. */
export function readBack<S extends StoreName>(store: S, value: unknown): StoredReading<KeptThings[S]> {
  if (isTooDeep(value, LIMITS.copy.deep.most)) return CORRUPT;
  return READERS[store](JSON.parse(JSON.stringify(value)));
}

/** Of two things the one that was saved later comes first. */
export function lastSavedFirst(
  a: { readonly id: string; readonly savedAtMs: number },
  b: { readonly id: string; readonly savedAtMs: number },
): number {
  return b.savedAtMs - a.savedAtMs || (a.id < b.id ? -1 : 1);
}

export const notSaved = (code: ProblemCode): SaveAnswer => ({ saved: false, code, localBackup: false });

/** What the person is told after writing one thing; `copy` writes the small copy and says whether it is there. */
export function answerOf(written: Written, copy: () => boolean): SaveAnswer {
  const outcome = written.outcomes.find((one) => one !== 'added' && one !== 'already');
  if (outcome === 'deleted') return notSaved('connection-lost');
  if (outcome === 'newer-version') return notSaved('newer-version');
  if (outcome === 'differs') return notSaved('corrupt');
  const localBackup = copy();
  return written.code === null ? { saved: true } : { saved: false, code: written.code, localBackup };
}
