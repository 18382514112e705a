/**
 * The owner of group sessions on this device: what the pages of the clinic know and ask for, kept at every step so
 * that a reload or a crash at any moment finds each ride once. Draws nothing and rides nothing itself.
 */
import type { ClinicPlan } from '../../core/group/plan.ts';
import { makeRecord, type RideRecord, RULES_VERSION } from '../../core/group/records/record.ts';
import type { ClinicShelf, FinishedTurn, ShelfContents } from './clinicShelf.ts';
import type { HandoverDesk } from './handoverDesk.ts';
import type { Kept } from '../afterRide.ts';
import { after, awaits } from '../../pages/clinic/session.ts';
import type { ClinicDesk, ClinicState, RideStart, SavedRound } from '../../pages/clinic/types.ts';
import type { Level } from '../../core/level/schema.ts';
import type { Judged } from '../../worker/client.ts';
import type { GroupCounter } from '../../worker/groupClient.ts';

/**
 * Marks a ride and hands the result to `keep`; a promise that ends without it means that it could not be marked.
 * `kept` says whether the ride itself, without marks, lies in the database.
 */
export type MarkRide = (keep: (judged: Judged) => Promise<Kept>, kept: boolean) => Promise<void>;

/** The rides of a session on all devices. */
export type CarriedRides = Pick<HandoverDesk, 'collected' | 'handOver' | 'withdraw' | 'drop' | 'reload'>;

/** What the desk is given. */
export interface DeskOptions extends Pick<ClinicDesk, 'gone' | 'newId' | 'newSeed' | 'now'> {
  readonly shelf: ClinicShelf;
  readonly counter: GroupCounter;
  readonly levels: readonly Level[];
  readonly ownLevels: readonly Level[];
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
  /** A turn came to its end. */
  take(turn: FinishedTurn, mark: MarkRide): Promise<void>;
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
    onRide: options.ride,
    onTakeBack: (recordId) => void desk.takeBack(recordId),
    onDeleteSession: (planId) => void desk.deleteSession(planId),
    newId: options.newId,
    newSeed: options.newSeed,
    now: options.now,
  };
}

class Desk {
  readonly #options: DeskOptions;
  readonly #listeners = new Set<() => void>();
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
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async reload(): Promise<void> {
    const contents = await this.#options.shelf.load();
    const { plans, rounds, records } = contents;
    this.#change({ saved: { plans, rounds, records }, marking: null, debriefOf: null, picture: null });
    await this.#settle(contents);
    this.#count();
  }

  look(place: string): void {
    if (sessionOf(place) !== sessionOf(this.#place)) this.#change({ picture: null, apart: [] });
    this.#place = place;
    this.#count();
    const session = this.state.saved.rounds.find(({ plan }) => plan.id === sessionOf(place));
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

  async takeBack(recordId: string): Promise<void> {
    const { records, rounds } = this.state.saved;
    const record = records.find(({ id }) => id === recordId);
    const saved = rounds.find(({ plan }) => plan.id === record?.planId);
    this.#save({ records: records.filter(({ id }) => id !== recordId) });
    // Its number stays used, and whoever has it already will be told.
    if (record !== undefined && saved !== undefined)
      await (await this.#options.carry(saved.plan)).withdraw(record);
    await this.#write((shelf) => shelf.dropRecords([recordId]));
    if (saved !== undefined) this.#options.onKept(saved);
  }

  /** Rides go first and the round last: should this break off, the session is still there to be deleted. */
  async deleteSession(planId: string): Promise<void> {
    const { rounds, records } = this.state.saved;
    const gone = records.filter((record) => record.planId === planId);
    const session = rounds.find(({ plan }) => plan.id === planId);
    this.#save({
      rounds: rounds.filter(({ plan }) => plan.id !== planId),
      records: records.filter((record) => record.planId !== planId),
    });
    this.#change({ picture: null, debriefOf: null, marking: null });
    await this.#write((shelf) => shelf.dropRecords(gone.map(({ id }) => id)));
    if (session !== undefined) await (await this.#options.carry(session.plan)).drop();
    await this.#write((shelf) => shelf.dropFinished(planId));
    await this.#write((shelf) => shelf.dropRound(planId));
  }

  async take(turn: FinishedTurn, mark: MarkRide): Promise<void> {
    const { planId, nickname } = turn;
    const marking = { planId, nickname, failed: false };
    this.#change({ marking, debriefOf: null });
    // Marking takes a while; a reload meanwhile must not cost the rider their ride.
    const kept = await this.#write((shelf) => shelf.putFinished(turn));
    try {
      await mark((judged) => this.#keep(turn, judged), kept);
    } catch {
      // Told below, as for a promise that ended without a result.
    }
    if (this.state.marking === marking) this.#change({ marking: { ...marking, failed: true } });
  }

  /** Makes the record of a marked ride; the round moves on in the same breath. */
  async #keep(turn: FinishedTurn, judged: Judged): Promise<Kept> {
    const { newId } = this.#options;
    const lastSeq = await this.#lastSeq(turn.planId);
    const saved = this.state.saved.rounds.find((one) => awaits(one, turn));
    if (saved === undefined) return { state: 'not-saved', code: 'not-judged', smallCopy: false };
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
    const moved = after(saved, { kind: 'finish', recordId: record.id });
    const { rounds, records } = this.state.saved;
    this.#save({ records: [...records, record], rounds: rounds.map((one) => (one === saved ? moved : one)) });
    this.#change({ marking: null, debriefOf: record.id });
    this.#count();
    const kept = await this.#write(
      async (shelf) =>
        (await shelf.putRecord(record)) &&
        (await shelf.putRound(moved)) &&
        (await shelf.dropFinished(planId)),
    );
    await (await this.#options.carry(saved.plan)).reload();
    this.#options.onKept(moved);
    return kept ? { state: 'saved' } : { state: 'not-saved', code: 'hangs', smallCopy: false };
  }

  /** The last number this device has used in a session, also for rides that were taken back. */
  async #lastSeq(planId: string): Promise<number> {
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === planId);
    if (saved === undefined) return 0;
    const carried = await this.#options.carry(saved.plan);
    return carried.handOver(saved.deviceId).lastSeq;
  }

  /** Brings together what a crash may have left apart: records, rounds, and rides that were never marked. */
  async #settle({ rounds, records, finished }: ShelfContents): Promise<void> {
    const { markLater } = this.#options;
    for (const saved of rounds) {
      const named = new Set(saved.round.rides.map(({ recordId }) => recordId));
      const loose = records.filter((one) => one.deviceId === saved.deviceId && !named.has(one.id));
      const awaited = loose.find((one) => awaits(saved, one));
      if (awaited !== undefined) await this.saveRound(after(saved, { kind: 'finish', recordId: awaited.id }));
      for (const record of loose) if (record !== awaited) await this.takeBack(record.id);
    }
    for (const turn of finished) {
      if (this.state.saved.rounds.some((one) => awaits(one, turn)))
        void this.take(turn, async (keep) => void (await keep(await markLater(turn))));
      else await this.#write((shelf) => shelf.dropFinished(turn.planId));
    }
  }

  /** Counts the picture of the session that is looked at, if it is on the screen. */
  #count(): void {
    const planId = sessionOf(this.#place);
    const saved = this.state.saved.rounds.find(({ plan }) => plan.id === planId);
    this.#counting += 1;
    const mine = this.#counting;
    if (saved === undefined || !/\/(picture|report)$/.test(this.#place)) return;
    const { counter, levels } = this.#options;
    const records = this.state.saved.records.filter((record) => record.planId === planId);
    if (this.state.notCounted) this.#change({ notCounted: false });
    counter.count({ plan: saved.plan, levels, records }).then(
      (counted) => this.#counting === mine && this.#change(counted),
      () => this.#counting === mine && this.#change({ notCounted: true }),
    );
  }

  /** One write after the other, in the order they were asked for: an older round must not land on a newer one. */
  #write(work: (shelf: ClinicShelf) => Promise<boolean>): Promise<boolean> {
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
    for (const listener of this.#listeners) listener();
  }
}

function sessionOf(place: string): string {
  const [kind, id] = place.split('/');
  return kind === 's' ? (id ?? '') : '';
}

function nextSeq(records: readonly RideRecord[], deviceId: string): number {
  return records.reduce((seq, one) => (one.deviceId === deviceId ? Math.max(seq, one.seq) : seq), 0) + 1;
}
