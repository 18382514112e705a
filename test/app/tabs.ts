/**
 * A tab as far as group sessions go: the game's own storage and desk, and what a person in it can do. It goes in Node
 * over one storage and in a browser over its own; `tabsPlay.ts` is who uses several of them.
 */
import { createCarriedSessions, createOwnedSessions } from '../../src/storage/sessions.ts';
import type { RideRecord } from '../../src/core/group/records/record.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import type { OwnedDesk } from '../../src/app/group/clinicDesk.ts';
import { after, startOf } from '../../src/features/clinic/session.ts';
import type { SavedRound } from '../../src/core/group/savedRound.ts';
import type { Storage } from '../../src/storage/index.ts';
import { takePart } from '../../src/app/device/tabLock.ts';
import { markTurn, openDesk, propsOf, sessionOfThree, turnOf } from './clinicGiven.ts';
import type { Tab } from './tabsPlay.ts';

const SESSION = 'session-1';

/** A tab; `token` gives ids that no other tab has, `skill` makes its rides differ from those of the others. */
export function createTab(storage: Storage, token: () => string, skill: number): Tab {
  let desk: OwnedDesk | null = null;
  let isOwned = (): boolean => false;
  let riding: ReturnType<typeof turnOf> | null = null;
  const open = async (): Promise<OwnedDesk> => {
    const owner = takePart('before-the-hill.clinic-owner', token());
    isOwned = owner.isOwned;
    desk = await openDesk(
      createOwnedSessions(storage, owner),
      [],
      markTurn,
      () => null,
      token,
      createCarriedSessions(storage),
    );
    return desk;
  };
  const session = (): SavedRound | undefined => desk?.state().saved.rounds[0];
  const save = async (saved: SavedRound): Promise<boolean> => {
    await desk?.onSaveRound(saved);
    return isOwned();
  };
  return {
    open: async () => void (await open()),
    create: async () => desk !== null && session() === undefined && save(sessionOfThree()),
    async add(nickname) {
      const saved = session();
      if (saved === undefined) return false;
      const more = after(saved, { kind: 'add', nickname });
      return more !== saved && save(more);
    },
    async begin() {
      const saved = session();
      if (desk === null || saved === undefined || riding !== null) return false;
      const ready = after(saved, { kind: 'next' });
      const { phase, line } = ready.round;
      const nickname = phase.kind === 'riding' ? phase.nickname : line[0];
      const start = nickname === undefined ? null : startOf(ready, nickname, propsOf(desk, ''));
      if (nickname === undefined || start === null) return false;
      const begun = after(ready, { kind: 'start', nickname });
      if (begun !== saved && !(await save(begun))) return false;
      riding = turnOf(start, skill);
      return true;
    },
    async end() {
      if (riding === null) return null;
      const turn = riding;
      riding = null;
      let saved = false;
      const keepIt = async (on: OwnedDesk): Promise<boolean> =>
        on.take(turn, async (keep) => {
          saved = (await keep(await markTurn(turn))).state === 'saved' || saved;
        });
      while (!(await keepIt(desk !== null && isOwned() ? desk : await open())));
      return saved || isMemory(storage) ? nameOf(turn) : null;
    },
    async takeBack() {
      const id = session()?.round.rides.at(-1)?.recordId;
      const record = desk?.state().saved.records.find((one) => one.id === id);
      if (desk === null || record === undefined) return null;
      await desk.onTakeBack(record.id);
      if (desk.state().saved.records.includes(record)) return null;
      return { ride: nameOf(record), done: isOwned() };
    },
    async remove() {
      if (desk === null || session() === undefined) return false;
      await desk.onDeleteSession(SESSION);
      return isOwned();
    },
    async see() {
      await open();
      // Finished turns that were left are being marked now, one after the other.
      const isLeft = async (): Promise<boolean> =>
        (await storage.exportAll()).records.some(
          (record) => (record as { kind?: unknown }).kind === 'clinic-finished',
        );
      while (desk?.state().marking?.failed !== true && (await isLeft()))
        await new Promise((resolve) => setTimeout(resolve, 1));
      const { records } = desk!.state().saved;
      const seqs = records.map(({ seq }) => seq);
      const ids = new Set(records.map(({ id }) => id));
      const round = session()?.round;
      const kept = await storage.exportAll();
      return {
        riders: round?.riders.map(({ nickname }) => nickname) ?? [],
        rides: records.map(nameOf),
        missing: round?.rides.filter(({ recordId }) => !ids.has(recordId)).length ?? 0,
        doubled: seqs.length - new Set(seqs).size,
        session: round !== undefined,
        unmarked: desk!.state().marking === null ? 0 : 1,
        left: kept.records.length,
      };
    },
  };
}

/** Two children may ride the very same way. */
function nameOf({
  nickname,
  attempt,
  recording,
}: Pick<RideRecord, 'nickname' | 'attempt' | 'recording'>): string {
  return `${nickname} ${attempt} ${hashJson(recording)}`;
}

/** Without a database nothing is ever called kept, so there every ride that came to its end has to be there. */
function isMemory(storage: Storage): boolean {
  return storage.health.kind !== 'kept';
}
