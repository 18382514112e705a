/**
 * Turns of a session and the rides they become: a finished turn is kept, marked and gets its record, once, whatever
 * breaks off in between; a ride is taken back, or given to whoever rode it.
 */
import { RULES_VERSION } from '../../core/coach/rules.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { makeRecord, type RideRecord, sealRecord } from '../../core/group/records/record.ts';
import type { FinishedTurn, SavedRound } from '../../core/group/savedRound.ts';
import { hashJson } from '../../core/math/hash.ts';
import { after, awaits } from '../../features/clinic/session.ts';
import type { RideStart } from '../../features/clinic/services.ts';
import type { Kept } from '../../state/afterRide.ts';
import { isSameTurn } from '../../state/groupTurn.ts';
import type { KeptSessions } from '../../storage/sessions.ts';
import type { Judged } from '../../worker/client.ts';
import type { HandoverDesk } from './handoverDesk.ts';
import type { SessionBook } from './sessionBook.ts';

/**
 * Marks a ride and hands the result to `keep`; a promise that ends without it means that it could not be marked.
 * `kept` says whether the ride itself, without marks, lies in the database.
 */
export type MarkRide = (keep: (judged: Judged) => Promise<Kept>, kept: boolean) => Promise<void>;

export interface TurnOptions {
  /** Has the cautions read where nobody has yet; false when they were put away unread. */
  readonly cautionsRead: () => Promise<boolean>;
  readonly ride: (start: RideStart) => void;
  /** Marks a ride that was finished before the page was closed. */
  readonly markLater: (turn: FinishedTurn) => Promise<Judged>;
  /** What is carried between devices in a session: counts rides for good, and tells others what was taken back. */
  readonly carry: (
    plan: ClinicPlan,
  ) => Promise<Pick<HandoverDesk, 'collected' | 'handOver' | 'withdraw' | 'drop' | 'reload'>>;
  /** A ride of this device was kept or taken back. */
  readonly onKept: (saved: SavedRound) => void;
  readonly newId: () => string;
}

export class TurnDesk {
  readonly #book: SessionBook;
  readonly #options: TurnOptions;
  readonly #onRides: () => void;

  /** `onRides` is called when there are other rides to be counted. */
  constructor(book: SessionBook, options: TurnOptions, onRides: () => void) {
    this.#book = book;
    this.#options = options;
    this.#onRides = onRides;
  }

  /** The turn begins in its round before the ride does, so that a reload finds it; before the cautions it does not. */
  async ride(start: RideStart): Promise<void> {
    const { cautionsRead, ride } = this.#options;
    if (!(await cautionsRead())) return;
    const saved = this.#book.session(start.planId);
    if (saved === undefined) return;
    const begun = after(saved, { kind: 'start', nickname: start.nickname });
    if (!awaits(begun, start)) return;
    if (begun !== saved) await this.#book.saveRound(begun);
    // What another tab goes on with is not ridden here.
    if (this.#book.shelf.isOwned()) ride(start);
  }

  /** A turn came to its end. False: another tab has taken over before the ride was put down; ask its next owner. */
  async take(turn: FinishedTurn, mark: MarkRide): Promise<boolean> {
    const book = this.#book;
    const { planId, nickname } = turn;
    const marking = { planId, nickname, failed: false };
    book.change({ marking, debriefOf: null });
    // Marking takes a while; a reload meanwhile must not cost the rider their ride.
    const kept = await book.write((shelf) => shelf.putFinished(turn));
    if (!book.shelf.isOwned()) return false;
    try {
      await mark((judged) => this.#keep(turn, judged), kept);
    } catch {
      // Told below, as for a promise that ended without a result.
    }
    if (book.state.marking === marking) book.change({ marking: { ...marking, failed: true } });
    return true;
  }

  /**
   * Makes the record of a marked ride; the round moves on in the same breath. Where it waits for another one, because
   * the turn was ridden in another tab as well, the ride counts all the same.
   */
  async #keep(turn: FinishedTurn, { report }: Judged): Promise<Kept> {
    const book = this.#book;
    const seq = await this.#nextSeq(turn.planId);
    const saved = book.session(turn.planId);
    if (saved === undefined || this.#isKept(turn)) {
      if (saved !== undefined) book.change({ marking: null });
      await book.write((shelf) => shelf.dropFinished(turn));
      return saved === undefined
        ? { state: 'not-saved', code: 'not-judged', localBackup: false }
        : { state: 'saved' };
    }
    const { planId, nickname, rideIndex, attempt, recording } = turn;
    const record = makeRecord({
      id: this.#options.newId(),
      planId,
      deviceId: saved.deviceId,
      seq: seq(),
      nickname,
      attempt,
      rideIndex,
      version: RULES_VERSION,
      recording,
      report,
    });
    book.own.add(record);
    const moved = awaits(saved, turn) ? after(saved, { kind: 'finish', recordId: record.id }) : saved;
    book.move(saved, moved, [...book.state.saved.records, record]);
    book.change({ marking: null, debriefOf: record.id });
    this.#onRides();
    const kept = await book.write((shelf) => shelf.keepRide(record, moved));
    // Another tab has taken over with the finished turn, and marks it there.
    if (!book.shelf.isOwned()) return { state: 'saved' };
    await (await this.#options.carry(saved.plan)).reload();
    this.#options.onKept(moved);
    return kept ? { state: 'saved' } : { state: 'not-saved', code: 'hangs', localBackup: false };
  }

  /** Whether this very ride has its record already, as when it was marked in two tabs. */
  #isKept(turn: FinishedTurn): boolean {
    const ridden = hashJson(turn.recording);
    return this.#book.state.saved.records.some(
      (one) => isSameTurn(one, turn) && one.recording !== null && hashJson(one.recording) === ridden,
    );
  }

  /**
   * The next number of this device in a session, asked for once nothing else comes in between. Numbers of rides that were
   * taken back stay used, and another tab may have used more.
   */
  async #nextSeq(planId: string): Promise<() => number> {
    const saved = this.#book.session(planId);
    if (saved === undefined) return () => 1;
    const { plan, deviceId } = saved;
    const handover = await this.#options.carry(plan);
    await handover.reload();
    const { lastSeq } = handover.handOver(deviceId);
    return () =>
      this.#book.state.saved.records.reduce(
        (last, one) => (one.deviceId === deviceId ? Math.max(last, one.seq) : last),
        lastSeq,
      ) + 1;
  }

  /** The coach takes a ride back: its record goes, and the last ride of a round leaves it too. */
  async takeBack(recordId: string): Promise<void> {
    const book = this.#book;
    const found = book.ride(recordId);
    if (found === null) return;
    const { record, saved } = found;
    const moved = saved.round.rides.at(-1)?.recordId === recordId ? after(saved, { kind: 'undo' }) : saved;
    // Somebody rides again, or has ridden since: what the round names stays.
    if (moved.round.rides.some((ride) => ride.recordId === recordId)) return;
    book.move(
      saved,
      moved,
      book.state.saved.records.filter((one) => one !== record),
    );
    await book.write((shelf) => shelf.undoRide(recordId, moved));
    if (book.shelf.isOwned()) await this.#drop(record, moved);
  }

  /** A record is never changed: the ride gets another one in the name of who rode it, and the old one is taken back. */
  async give(recordId: string, nickname: string): Promise<void> {
    const book = this.#book;
    const found = book.ride(recordId);
    if (found === null) return;
    const { record, saved } = found;
    if (saved.round.rides.at(-1)?.recordId !== recordId) return;
    const seq = await this.#nextSeq(record.planId);
    const id = this.#options.newId();
    const moved = after(saved, { kind: 'give', nickname, recordId: id });
    const { attempt } = moved.round.rides.at(-1) ?? record;
    if (moved === saved || book.session(record.planId) !== saved) return;
    const given = sealRecord({ ...record, id, seq: seq(), nickname, attempt });
    book.own.add(given);
    book.move(saved, moved, [...book.state.saved.records.filter((one) => one !== record), given]);
    if (book.state.debriefOf === recordId) book.change({ debriefOf: id });
    this.#onRides();
    await book.write((shelf) => shelf.giveRide(given, recordId, moved));
    if (book.shelf.isOwned()) await this.#drop(record, moved);
  }

  /** The rest of taking a ride back. Its number stays used, and whoever has it already will be told. */
  async #drop(record: RideRecord, saved: SavedRound): Promise<void> {
    await (await this.#options.carry(saved.plan)).withdraw(record);
    await this.#book.write((shelf) => shelf.dropRide(record.id));
    this.#options.onKept(saved);
  }

  /**
   * Brings to its end what a crash or another tab has cut off: rides that were being taken back, and rides that were
   * never marked. A ride that nobody took back stays, also where its round does not name it.
   */
  async settle({ rounds, records, finished, undone }: KeptSessions): Promise<void> {
    const book = this.#book;
    for (const id of undone) {
      const record = records.find((one) => one.id === id);
      const saved = rounds.find(({ plan }) => plan.id === record?.planId);
      book.save({ records: book.state.saved.records.filter((one) => one.id !== id) });
      if (record === undefined || saved === undefined) await book.write((shelf) => shelf.dropRide(id));
      else await this.#drop(record, saved);
    }
    for (const saved of rounds) {
      const awaited = book.state.saved.records.find(
        (one) => one.deviceId === saved.deviceId && awaits(saved, one),
      );
      if (awaited !== undefined) await book.saveRound(after(saved, { kind: 'finish', recordId: awaited.id }));
    }
    const unmarked: FinishedTurn[] = [];
    for (const turn of finished) {
      if (book.session(turn.planId) !== undefined && !this.#isKept(turn)) unmarked.push(turn);
      else await book.write((shelf) => shelf.dropFinished(turn));
    }
    const markThem = async (): Promise<void> => {
      for (const turn of unmarked)
        await this.take(turn, async (keep) => void (await keep(await this.#options.markLater(turn))));
    };
    // Takes a while; nobody who opens a session waits for it.
    void markThem();
  }
}
