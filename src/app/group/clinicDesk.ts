/**
 * The owner of group sessions on this device: what the pages of the clinic know and ask for, kept at every step so
 * that a reload or a crash at any moment finds each ride once. Draws nothing and rides nothing itself.
 */
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { Level } from '../../core/level/schema.ts';
import type { ClinicDesk } from '../../features/clinic/services.ts';
import { sessionOfPlace } from '../../state/groupTurn.ts';
import type { OwnedSessions } from '../../storage/sessions.ts';
import type { GroupVerifier } from '../../worker/verifierClient.ts';
import { SessionBook } from './sessionBook.ts';
import { TurnDesk, type TurnOptions } from './turnDesk.ts';

interface DeskOptions extends TurnOptions, Pick<ClinicDesk, 'gone' | 'newSeed' | 'now'> {
  readonly shelf: OwnedSessions;
  readonly verifier: Pick<GroupVerifier, 'picture'>;
  readonly ownLevels: readonly Level[];
}

/** The desk, with what only the owner of the ride asks of it. */
export interface OwnedDesk extends ClinicDesk, Pick<TurnDesk, 'take'> {
  /** All rides of a session, when some have come from other devices or gone. */
  collected(planId: string, records: readonly RideRecord[]): void;
  /** Reads everything anew: something else has changed or deleted what is kept. */
  reload(): Promise<void>;
}

/** Opens the desk on what was kept. */
export async function openClinicDesk(options: DeskOptions): Promise<OwnedDesk> {
  const { gone, newId, newSeed, now, carry } = options;
  const book = new SessionBook(options.shelf, options.ownLevels);
  let place = '';
  const count = pictureCount(book, options.verifier, () => place);
  const turns = new TurnDesk(book, options, count);
  const collected = (planId: string, records: readonly RideRecord[]): void => {
    const own = book.session(planId)?.deviceId;
    // Rides of this device are known here first: the newest may not have reached the shelf yet.
    const here = book.state.saved.records.filter(
      (record, i, all) =>
        (record.planId !== planId || record.deviceId === own) &&
        all.findIndex(({ checksum }) => checksum === record.checksum) === i,
    );
    book.save({ records: [...here, ...records.filter(({ deviceId }) => deviceId !== own)] });
    count();
  };
  /** Rides of other devices as they count now: each once, and none that was taken back. */
  const follow = async (plan: ClinicPlan): Promise<void> => {
    await book.written();
    const handover = await carry(plan);
    await handover.reload();
    collected(plan.id, handover.collected().set.records);
  };
  const reload = async (): Promise<void> => {
    await turns.settle(await book.load());
    count();
  };
  await reload();
  return {
    gone,
    newId,
    newSeed,
    now,
    collected,
    reload,
    state: () => book.state,
    subscribe: book.subscribe,
    take: (turn, mark) => turns.take(turn, mark),
    look(next) {
      const planId = sessionOfPlace(next)?.planId;
      if (planId !== sessionOfPlace(place)?.planId) book.change({ picture: null, apart: [] });
      place = next;
      count();
      const session = book.session(planId);
      if (session !== undefined) void follow(session.plan);
    },
    onSavePlan(plan) {
      book.save({ plans: [plan, ...book.state.saved.plans.filter(({ id }) => id !== plan.id)] });
      void book.write((shelf) => shelf.putPlan(plan));
    },
    onDeletePlan(planId) {
      book.save({ plans: book.state.saved.plans.filter(({ id }) => id !== planId) });
      void book.write((shelf) => shelf.dropPlan(planId));
    },
    onSaveRound: (saved) => book.saveRound(saved),
    onRide: (start) => void turns.ride(start),
    onTakeBack: (recordId) => turns.takeBack(recordId),
    onGive: (recordId, nickname) => turns.give(recordId, nickname),
    async onDeleteSession(planId) {
      const { rounds, records } = book.state.saved;
      const session = book.session(planId);
      book.save({
        rounds: rounds.filter(({ plan }) => plan.id !== planId),
        records: records.filter((record) => record.planId !== planId),
      });
      book.change({ picture: null, debriefOf: null, marking: null });
      await book.write((shelf) => shelf.dropSession(planId));
      if (session !== undefined && book.shelf.isOwned()) await (await carry(session.plan)).drop();
    },
  };
}

/** Counts the picture of the session that is looked at, if it is on the screen; the last one that was asked for is shown. */
function pictureCount(
  book: SessionBook,
  verifier: Pick<GroupVerifier, 'picture'>,
  place: () => string,
): () => void {
  let counting = 0;
  return () => {
    const { planId, tab } = sessionOfPlace(place()) ?? {};
    const saved = book.session(planId);
    counting += 1;
    const mine = counting;
    if (saved === undefined || (tab !== 'picture' && tab !== 'report')) return;
    const rides = book.state.saved.records
      .filter((record) => record.planId === planId)
      .map((record) => ({ record, own: book.own.has(record) }));
    if (book.state.notCounted) book.change({ notCounted: false });
    verifier.picture(saved.plan, rides).then(
      (counted) => counting === mine && book.change(counted),
      () => counting === mine && book.change({ notCounted: true }),
    );
  };
}
