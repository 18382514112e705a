/**
 * The owner of group sessions on this device: what the pages of the clinic know and ask for, kept at every step so
 * that a reload or a crash at any moment finds each ride once. Draws nothing and rides nothing itself.
 */
import type { ClinicPlan } from '../../core/group/plan.ts';
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { makeRecord, type RideRecord, sealRecord } from '../../core/group/records/record.ts';
import type { KeptSessions, OwnedSessions } from '../../storage/sessions.ts';
import type { HandoverDesk } from './handoverDesk.ts';
import type { Kept } from '../../state/afterRide.ts';
import { hashJson } from '../../core/math/hash.ts';
import { after, awaits } from '../../features/clinic/session.ts';
import type { FinishedTurn, SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicDesk, ClinicState, RideStart } from '../../features/clinic/services.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Judged } from '../../worker/client.ts';
import type { GroupVerifier } from '../../worker/verifierClient.ts';
import { sessionOfPlace } from '../../state/groupTurn.ts';
import { Listeners } from '../../state/listeners.ts';

/**
 * Marks a ride and hands the result to `keep`; a promise that ends without it means that it could not be marked.
 * `kept` says whether the ride itself, without marks, lies in the database.
 */
export type MarkRide = (keep: (judged: Judged) => Promise<Kept>, kept: boolean) => Promise<void>;

/** The rides of a session on all devices. */
type CarriedRides = Pick<HandoverDesk, 'collected' | 'handOver' | 'withdraw' | 'drop' | 'reload'>;

/** What the desk is given. */
interface DeskOptions extends Pick<ClinicDesk, 'gone' | 'newId' | 'newSeed' | 'now'> {
  readonly shelf: OwnedSessions;
  readonly verifier: Pick<GroupVerifier, 'picture'>;
  readonly ownLevels: readonly Level[];
  /** Has the cautions read where nobody has yet; false when they were put away unread. */
  readonly cautionsRead: () => Promise<boolean>;
  /** Begins a ride. */
  readonly ride: (start: RideStart) => void;
  /** Marks a ride that was finished before the page was closed. */
  readonly markLater: (turn: FinishedTurn) => Promise<Judged>;
  /** What is carried between devices in a session: counts rides for good, and tells others what was taken back. */
  readonly carry: (plan: ClinicPlan) => Promise<CarriedRides>;
  /** A ride of this device was kept or taken back. */
  readonly onKept: (saved: SavedRound) => void;
}

/** The desk, with what only the owner of the ride asks of it. */
export interface OwnedDesk extends ClinicDesk {
  /** A turn came to its end. False: another tab has taken over before the ride was put down; ask its next owner. */
  take(turn: FinishedTurn, mark: MarkRide): Promise<boolean>;
  /** All rides of a session, when some have come from other devices or gone. */
  collected(planId: string, records: readonly RideRecord[]): void;
  /** Reads everything anew: something else has changed or deleted what is kept. */
  reload(): Promise<void>;
}

/** Opens the desk on what was kept. */
export async function openClinicDesk(options: DeskOptions): Promise<OwnedDesk> {
  const desk = new Desk(options);
  await desk.reload();
  return {
    gone: options.gone,
    state: () => desk.state,
    subscribe: (listener) => desk.subscribe(listener),
    look: (place) => desk.look(place),
    take: (turn, mark) => desk.take(turn, mark),
    collected: (planId, records) => desk.collected(planId, records),
    reload: () => desk.reload(),
    onSavePlan: (plan) => void desk.savePlan(plan),
    onDeletePlan: (planId) => void desk.deletePlan(planId),
    onSaveRound: (saved) => desk.saveRound(saved),
    onRide: (start) => void desk.ride(start),
    onTakeBack: (recordId) => desk.takeBack(recordId),
    onGive: (recordId, nickname) => desk.give(recordId, nickname),
    onDeleteSession: (planId) => desk.deleteSession(planId),
    newId: options.newId,
    newSeed: options.newSeed,
    now: options.now,
  };
}

class Desk {
  readonly #options: DeskOptions;
  readonly #listeners = new Listeners();
  /** Rides of this device: their marks were made here. */
  #own = new Set<RideRecord>();
  #place = '';
  #counting = 0;
  #writing: Promise<unknown> = Promise.resolve();
  state: ClinicState;

  constructor(options: DeskOptions) {
    this.#options = options;
    this.state = {
      saved: { plans: [], rounds: [], records: [] },
      ownLevels: options.ownLevels,
      kept: true,
      marking: null,
      debriefOf: null,
      picture: null,
      notCounted: false,
      apart: [],
    };
  }

  subscribe(listener: () => void): () => void {
    return this.#listeners.add(listener);
  }

  async reload(): Promise<void> {
    const contents = await this.#options.shelf.load();
    const { plans, rounds, records, own } = contents;
    this.#own = new Set(own);
    this.#change({ saved: { plans, rounds, records }, marking: null, debriefOf: null, picture: null });
    await this.#settle(contents);
    this.#count();
  }

  look(place: string): void {
    const planId = sessionOfPlace(place)?.planId;
    if (planId !== sessionOfPlace(this.#place)?.planId) this.#change({ picture: null, apart: [] });
    this.#place = place;
    this.#count();
    const session = this.state.saved.rounds.find(({ plan }) => plan.id === planId);
    if (session !== undefined) void this.#follow(session.plan);
  }

  /** Rides of other devices as they count now: each once, and none that was taken back. */
  async #follow(plan: ClinicPlan): Promise<void> {
    await this.#writing;
    const carried = await this.#options.carry(plan);
    await carried.reload();
    this.collected(plan.id, carried.collected().set.records);
  }

  collected(planId: string, records: readonly RideRecord[]): void {
    const own = this.state.saved.rounds.find(({ plan }) => plan.id === planId)?.deviceId;
    // Rides of this device are known here first: the newest may not have reached the shelf yet.
    const here = this.state.saved.records.filter(
      (record, i, all) =>
        (record.planId !== planId || record.deviceId === own) &&
        all.findIndex(({ checksum }) => checksum === record.checksum) === i,
    );
    this.#save({ records: [...here, ...records.filter(({ deviceId }) => deviceId !== own)] });
    this.#count();
  }

  async savePlan(plan: ClinicPlan): Promise<void> {
    const { plans } = this.state.saved;
    this.#save({ plans: [plan, ...plans.filter(({ id }) => id !== plan.id)] });
    await this.#write((shelf) => shelf.putPlan(plan));
  }

  async deletePlan(planId: string): Promise<void> {
    this.#save({ plans: this.state.saved.plans.filter(({ id }) => id !== planId) });
    await this.#write((shelf) => shelf.dropPlan(planId));
  }

  async saveRound(saved: SavedRound): Promise<void> {
    const { rounds } = this.state.saved;
    this.#save({ rounds: [saved, ...rounds.filter(({ plan }) => plan.id !== saved.plan.id)] });
    if (this.state.marking?.failed === true) this.#change({ marking: null });
    await this.#write((shelf) => shelf.putRound(saved));
  }

  /** The turn begins in its round before the ride does, so that a reload finds it; before the cautions it does not. */
  async ride(start: RideStart): Promise<void> {
    const { shelf, cautionsRead, ride } = this.#options;
    if (!(await cautionsRead())) return;
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === start.planId);
    if (saved === undefined) return;
    const begun = after(saved, { kind: 'start', nickname: start.nickname });
    if (!awaits(begun, start)) return;
    if (begun !== saved) await this.saveRound(begun);
    // What another tab goes on with is not ridden here.
    if (shelf.isOwned()) ride(start);
  }

  async takeBack(recordId: string): Promise<void> {
    const { records, rounds } = this.state.saved;
    const record = records.find(({ id }) => id === recordId);
    const saved = rounds.find(({ plan }) => plan.id === record?.planId);
    if (record === undefined || saved === undefined) return;
    const moved = saved.round.rides.at(-1)?.recordId === recordId ? after(saved, { kind: 'undo' }) : saved;
    // Somebody rides again, or has ridden since: what the round names stays.
    if (moved.round.rides.some((ride) => ride.recordId === recordId)) return;
    this.#save({
      records: records.filter(({ id }) => id !== recordId),
      rounds: rounds.map((one) => (one === saved ? moved : one)),
    });
    await this.#write((shelf) => shelf.undoRide(recordId, moved));
    if (this.#options.shelf.isOwned()) await this.#drop(record, moved);
  }

  /** A record is never changed: the ride gets another one in the name of who rode it, and the old one is taken back. */
  async give(recordId: string, nickname: string): Promise<void> {
    const { records, rounds } = this.state.saved;
    const record = records.find(({ id }) => id === recordId);
    const saved = rounds.find(({ plan }) => plan.id === record?.planId);
    if (record === undefined || saved === undefined || saved.round.rides.at(-1)?.recordId !== recordId)
      return;
    const lastSeq = await this.#lastSeq(record.planId);
    const id = this.#options.newId();
    const moved = after(saved, { kind: 'give', nickname, recordId: id });
    const { attempt } = moved.round.rides.at(-1) ?? record;
    if (moved === saved || this.state.saved.rounds.find(({ plan }) => plan.id === record.planId) !== saved)
      return;
    const seq = Math.max(lastSeq + 1, nextSeq(records, saved.deviceId));
    const given = sealRecord({ ...record, id, seq, nickname, attempt });
    this.#own.add(given);
    this.#save({
      records: [...this.state.saved.records.filter((one) => one !== record), given],
      rounds: this.state.saved.rounds.map((one) => (one === saved ? moved : one)),
    });
    if (this.state.debriefOf === recordId) this.#change({ debriefOf: id });
    this.#count();
    await this.#write((shelf) => shelf.giveRide(given, recordId, moved));
    if (this.#options.shelf.isOwned()) await this.#drop(record, moved);
  }

  /** The rest of taking a ride back. Its number stays used, and whoever has it already will be told. */
  async #drop(record: RideRecord, saved: SavedRound): Promise<void> {
    await (await this.#options.carry(saved.plan)).withdraw(record);
    await this.#write((shelf) => shelf.dropRide(record.id));
    this.#options.onKept(saved);
  }

  async deleteSession(planId: string): Promise<void> {
    const { rounds, records } = this.state.saved;
    const session = rounds.find(({ plan }) => plan.id === planId);
    this.#save({
      rounds: rounds.filter(({ plan }) => plan.id !== planId),
      records: records.filter((record) => record.planId !== planId),
    });
    this.#change({ picture: null, debriefOf: null, marking: null });
    await this.#write((shelf) => shelf.dropSession(planId));
    if (session !== undefined && this.#options.shelf.isOwned())
      await (await this.#options.carry(session.plan)).drop();
  }

  async take(turn: FinishedTurn, mark: MarkRide): Promise<boolean> {
    const { planId, nickname } = turn;
    const marking = { planId, nickname, failed: false };
    this.#change({ marking, debriefOf: null });
    // Marking takes a while; a reload meanwhile must not cost the rider their ride.
    const kept = await this.#write((shelf) => shelf.putFinished(turn));
    if (!this.#options.shelf.isOwned()) return false;
    try {
      await mark((judged) => this.#keep(turn, judged), kept);
    } catch {
      // Told below, as for a promise that ended without a result.
    }
    if (this.state.marking === marking) this.#change({ marking: { ...marking, failed: true } });
    return true;
  }

  /**
   * Makes the record of a marked ride; the round moves on in the same breath. Where it waits for another one, because
   * the turn was ridden in another tab as well, the ride counts all the same.
   */
  async #keep(turn: FinishedTurn, judged: Judged): Promise<Kept> {
    const { shelf, newId } = this.#options;
    const lastSeq = await this.#lastSeq(turn.planId);
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === turn.planId);
    if (saved === undefined) {
      await this.#write((it) => it.dropFinished(turn));
      return { state: 'not-saved', code: 'not-judged', localBackup: false };
    }
    if (this.#isKept(turn)) {
      this.#change({ marking: null });
      await this.#write((it) => it.dropFinished(turn));
      return { state: 'saved' };
    }
    const { planId, nickname, rideIndex, attempt, recording } = turn;
    const record = makeRecord({
      id: newId(),
      planId,
      deviceId: saved.deviceId,
      seq: Math.max(lastSeq + 1, nextSeq(this.state.saved.records, saved.deviceId)),
      nickname,
      attempt,
      rideIndex,
      version: RULES_VERSION,
      recording,
      report: judged.report,
    });
    this.#own.add(record);
    const moved = awaits(saved, turn) ? after(saved, { kind: 'finish', recordId: record.id }) : saved;
    const { rounds, records } = this.state.saved;
    this.#save({ records: [...records, record], rounds: rounds.map((one) => (one === saved ? moved : one)) });
    this.#change({ marking: null, debriefOf: record.id });
    this.#count();
    const kept = await this.#write((it) => it.keepRide(record, moved));
    // Another tab has taken over with the finished turn, and marks it there.
    if (!shelf.isOwned()) return { state: 'saved' };
    await (await this.#options.carry(saved.plan)).reload();
    this.#options.onKept(moved);
    return kept ? { state: 'saved' } : { state: 'not-saved', code: 'hangs', localBackup: false };
  }

  /** Whether this very ride has its record already, as when it was marked in two tabs. */
  #isKept({ planId, nickname, rideIndex, attempt, recording }: FinishedTurn): boolean {
    const ridden = hashJson(recording);
    return this.state.saved.records.some(
      (one) =>
        one.planId === planId &&
        one.nickname === nickname &&
        one.rideIndex === rideIndex &&
        one.attempt === attempt &&
        one.recording !== null &&
        hashJson(one.recording) === ridden,
    );
  }

  /** The last number this device has used in a session, also for rides that were taken back. */
  async #lastSeq(planId: string): Promise<number> {
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === planId);
    if (saved === undefined) return 0;
    const carried = await this.#options.carry(saved.plan);
    // Another tab may have used more.
    await carried.reload();
    return carried.handOver(saved.deviceId).lastSeq;
  }

  /**
   * Brings to its end what a crash or another tab has cut off: rides that were being taken back, and rides that were
   * never marked. A ride that nobody took back stays, also where its round does not name it.
   */
  async #settle({ rounds, records, finished, undone }: KeptSessions): Promise<void> {
    const { markLater } = this.#options;
    for (const id of undone) {
      const record = records.find((one) => one.id === id);
      const saved = rounds.find(({ plan }) => plan.id === record?.planId);
      this.#save({ records: this.state.saved.records.filter((one) => one.id !== id) });
      if (record === undefined || saved === undefined) await this.#write((shelf) => shelf.dropRide(id));
      else await this.#drop(record, saved);
    }
    for (const saved of rounds) {
      const awaited = this.state.saved.records.find(
        (one) => one.deviceId === saved.deviceId && awaits(saved, one),
      );
      if (awaited !== undefined) await this.saveRound(after(saved, { kind: 'finish', recordId: awaited.id }));
    }
    const unmarked: FinishedTurn[] = [];
    for (const turn of finished) {
      const isThere = this.state.saved.rounds.some(({ plan }) => plan.id === turn.planId);
      if (isThere && !this.#isKept(turn)) unmarked.push(turn);
      else await this.#write((shelf) => shelf.dropFinished(turn));
    }
    const markThem = async (): Promise<void> => {
      for (const turn of unmarked)
        await this.take(turn, async (keep) => void (await keep(await markLater(turn))));
    };
    // Takes a while; nobody who opens a session waits for it.
    void markThem();
  }

  /** Counts the picture of the session that is looked at, if it is on the screen. */
  #count(): void {
    const { planId, tab } = sessionOfPlace(this.#place) ?? {};
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === planId);
    this.#counting += 1;
    const mine = this.#counting;
    if (saved === undefined || (tab !== 'picture' && tab !== 'report')) return;
    const rides = this.state.saved.records
      .filter((record) => record.planId === planId)
      .map((record) => ({ record, own: this.#own.has(record) }));
    if (this.state.notCounted) this.#change({ notCounted: false });
    this.#options.verifier.picture(saved.plan, rides).then(
      (counted) => this.#counting === mine && this.#change(counted),
      () => this.#counting === mine && this.#change({ notCounted: true }),
    );
  }

  /** One write after the other, in the order they were asked for: an older round must not land on a newer one. */
  #write(work: (shelf: OwnedSessions) => Promise<boolean>): Promise<boolean> {
    const written = this.#writing.then(async () => {
      const kept = await work(this.#options.shelf);
      if (kept !== this.state.kept) this.#change({ kept });
      return kept;
    });
    this.#writing = written;
    return written;
  }

  #save(part: Partial<ClinicState['saved']>): void {
    this.#change({ saved: { ...this.state.saved, ...part } });
  }

  #change(part: Partial<ClinicState>): void {
    this.state = { ...this.state, ...part };
    this.#listeners.tell();
  }
}

function nextSeq(records: readonly RideRecord[], deviceId: string): number {
  return records.reduce((seq, one) => (one.deviceId === deviceId ? Math.max(seq, one.seq) : seq), 0) + 1;
}
