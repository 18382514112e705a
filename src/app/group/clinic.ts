/**
 * Joins group sessions to the game: fetches their owner when somebody wants it, begins the rides it asks for and
 * hands it the ones that came to their end.
 */
import type { RideResult } from '../../core/coach/results.ts';
import type { Kept } from '../../state/afterRide.ts';
import type { OwnedDesk } from './clinicDesk.ts';
import type { MarkRide } from './turnDesk.ts';
import { joinCarrying } from './carrying.ts';
import type { GroupVerifier } from '../../worker/verifierClient.ts';
import type { Judging } from '../device/scoring.ts';
import type { Keeping } from '../device/persistence.ts';
import { bikeById, riderById } from '../../core/model/presets.ts';
import type { FinishedTurn, SavedRound } from '../../core/group/savedRound.ts';
import type { RideStart } from '../../features/clinic/services.ts';
import type { GroupTurn } from '../../state/groupTurn.ts';
import { riderFor, type Settings } from '../../core/settings/settings.ts';
import type { Store } from '../../state/createStore.ts';
import { takePart } from '../device/tabLock.ts';
import { workplace } from '../device/workplace.ts';
import { newId } from '../../storage/ids.ts';

/** So many sessions, the newest ones, are looked after when the network is back. */
const MOST_SYNCED = 3;

/** The name under which tabs tell each other who owns the group sessions. */
const OWNER = 'before-the-hill.clinic-owner';

export function joinClinic(store: Store, keeping: Keeping, judging: Judging) {
  let opened: Promise<OwnedDesk> | null = null;
  let verifying: Promise<GroupVerifier> | null = null;
  /** One for all sessions and everything that is asked of them, so that no ride is ridden again twice. */
  const verifier = (): Promise<GroupVerifier> => {
    verifying ??= import('../../worker/verifierClient.ts').then(({ createGroupVerifier }) =>
      createGroupVerifier(workplace, store.state().levels),
    );
    verifying.catch(() => {
      verifying = null;
    });
    return verifying;
  };
  const carrying = joinCarrying(keeping, verifier, (planId, records) => {
    void opened?.then((desk) => desk.collected(planId, records));
  });
  const sync = ({ plan, deviceId }: SavedRound): void => {
    // What could not be sent is sent after the next ride; the store's own state says what is wrong.
    carrying.sync(plan, deviceId).catch(() => undefined);
  };
  window.addEventListener('online', () => {
    void opened?.then((desk) => newestOf(desk).forEach(sync));
  });
  const open = async (): Promise<OwnedDesk> => {
    const [room, { createOwnedSessions }] = await Promise.all([
      import('./clinicDesk.ts'),
      import('../../storage/sessions.ts'),
    ]);
    const storage = await keeping.storage;
    const owner = takePart(OWNER, newId());
    return room.openClinicDesk({
      gone: owner.gone,
      shelf: createOwnedSessions(storage, owner),
      verifier: await verifier(),
      ownLevels: (await storage.listLevels()).map(({ level }) => level),
      cautionsRead: () => cautionsRead(store),
      ride: (start) => store.send({ kind: 'ride-turn', turn: turnOf(start, store.state().settings) }),
      markLater: ({ level, recording }) => judging.planner.judge(level, recording),
      carry: carrying.session,
      onKept: sync,
      newId,
      newSeed: () => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0,
      now: () => Date.now(),
    });
  };
  const desk = (): Promise<OwnedDesk> => {
    if (opened !== null) return opened;
    const mine = open();
    opened = mine;
    // What could not be fetched, or was taken over by another tab, is asked for again.
    const forget = (): void => {
      if (opened === mine) opened = null;
    };
    mine.then(({ gone }) => gone.then(forget), forget);
    return mine;
  };
  return {
    /**
     * The owner. One tab at a time has it, or they would overwrite what the other has kept: whichever asks takes it
     * over, with all that was kept until then.
     */
    desk,
    /** Plans and rides that go from device to device. */
    carrying,
    /**
     * Sends what is new in a session to the club's store and takes what is there; without one, in the newest sessions.
     * Does nothing where this tab does not have the sessions. `inPassing`: nobody asked for it.
     */
    async sync(planId: string | null, inPassing: boolean): Promise<void> {
      // Nobody asks for the sessions, and takes them from another tab, only because some time has passed.
      const now = await opened;
      if (now === null) return;
      const { rounds } = now.state().saved;
      const wanted = planId === null ? newestOf(now) : rounds.filter(({ plan }) => plan.id === planId);
      await Promise.all(wanted.map(({ plan, deviceId }) => carrying.sync(plan, deviceId, inPassing)));
    },
    /** A turn of a group came to its end; `onKept` is called once it lies in the database, before it is marked. */
    async finished(turn: GroupTurn, result: RideResult, onKept: () => void): Promise<void> {
      const mark = markerOf(judging, result, onKept);
      const ridden = finishedTurn(turn, result);
      // The session comes back to the tab in which the ride has ended, as often as another one takes it.
      while (!(await (await desk()).take(ridden, mark)));
    },
    /** What is kept was changed or deleted by somebody else. */
    async reload(): Promise<void> {
      carrying.forget();
      if (opened !== null) await (await opened).reload();
    },
  };
}
export type Clinic = ReturnType<typeof joinClinic>;

/** Shows the cautions unless they have been read on this device, and waits until they are read or put away. */
function cautionsRead(store: Store): Promise<boolean> {
  if (store.state().cautionsSeen) return Promise.resolve(true);
  store.send({ kind: 'open-dialog', dialog: 'cautions' });
  return new Promise((resolve) => {
    const stop = store.subscribe(({ dialog, cautionsSeen }) => {
      if (dialog === 'cautions') return;
      stop();
      resolve(cautionsSeen);
    });
  });
}

function newestOf(desk: OwnedDesk): readonly SavedRound[] {
  return desk.state().saved.rounds.slice(0, MOST_SYNCED);
}

function markerOf(judging: Judging, result: RideResult, onKept: () => void): MarkRide {
  return async (keep, kept) => {
    if (kept) onKept();
    await judging.judge(result, { keep: () => Promise.resolve(keptAs(kept)), mark: keep });
  };
}

function finishedTurn(turn: GroupTurn, { level, recording }: RideResult): FinishedTurn {
  const { planId, nickname, rideIndex, attempt } = turn;
  return { planId, nickname, rideIndex, attempt, level, recording };
}

function keptAs(kept: boolean): Kept {
  return kept ? { state: 'saved' } : { state: 'not-saved', code: 'hangs', localBackup: false };
}

/** The turn with bike and rider whole; what the plan leaves to the device is taken from its settings. */
function turnOf(start: RideStart, settings: Settings): GroupTurn {
  const { planId, nickname, rideIndex, attempt, level } = start;
  const bundled = bikeById(start.bikeId);
  const bike = bundled ?? settings.bike;
  const suiting = bundled === undefined ? settings.rider : riderFor(bundled);
  return { planId, nickname, rideIndex, attempt, level, bike, rider: riderById(start.riderId) ?? suiting };
}
