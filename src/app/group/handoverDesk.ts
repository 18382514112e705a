/**
 * The owner of what is carried between devices: takes in what was read, keeps it beside the rides of this device,
 * knows what is missing, and talks to a club's own store where one is used. Draws nothing.
 */
import { mergeSets } from '../../core/group/records/merge.ts';
import { type Heard, mergeHeard } from '../../core/group/records/missing.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { Remark } from '../../core/group/records/remark.ts';
import type { HandOver, ReadFile } from '../../core/transfer/rideFile.ts';
import { type CarriedSession, type CarriedSessions, NOTHING_CARRIED } from '../../storage/sessions.ts';
import { inTurn } from '../../storage/inTurn.ts';
import type { GroupVerifier } from '../../worker/verifierClient.ts';
import type { Collected } from '../../features/handover/services.ts';
import { Listeners } from '../../state/listeners.ts';

interface HandoverOptions {
  readonly sessions: CarriedSessions;
  readonly verifier: Pick<GroupVerifier, 'verify'>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Records of other devices have come, or one of this device was taken back. */
  readonly onChanged: () => void;
}

/** Records that are ridden again in one go; in between the page can draw. */
const CHECKED_AT_ONCE = 8;

export async function openHandoverDesk(plan: ClinicPlan, options: HandoverOptions): Promise<HandoverDesk> {
  const desk = new HandoverDesk(plan, options);
  await desk.reload();
  return desk;
}

export class HandoverDesk {
  readonly #plan: ClinicPlan;
  readonly #options: HandoverOptions;
  readonly #listeners = new Listeners();
  readonly #remarks = new Map<string, Remark>();
  /** Rides of this device: their marks were made here, and nobody makes them again. */
  #own: ReadonlySet<RideRecord> = new Set();
  #kept: CarriedSession = NOTHING_CARRIED;
  #collected: Collected = { ...NOTHING_CARRIED, remarks: [], toCheck: 0 };
  readonly #handOvers = new Map<string, HandOver>();
  /** One after the other: two readings at once must not each keep only their own half. */
  readonly #oneByOne = inTurn();
  #checking = false;

  constructor(plan: ClinicPlan, options: HandoverOptions) {
    this.#plan = plan;
    this.#options = options;
  }

  collected(): Collected {
    return this.#collected;
  }

  subscribe(listener: () => void): () => void {
    return this.#listeners.add(listener);
  }

  /** Reads anew what the clinic has kept, such as a new ride. */
  reload(): Promise<void> {
    return this.#oneByOne(async () => {
      const { own, ...kept } = await this.#options.sessions.load(this.#plan.id);
      this.#own = own;
      this.#settle(kept);
    });
  }

  /**
   * Everything of one device, ready to be handed over: the very same until something changes, so that pages need not
   * pack it anew.
   */
  handOver(deviceId: string): HandOver {
    const made = this.#handOvers.get(deviceId) ?? this.#handOverOf(deviceId);
    this.#handOvers.set(deviceId, made);
    return made;
  }

  /** The same with the rides of all devices that are here. */
  everything(deviceId: string): HandOver {
    return { ...this.handOver(deviceId), records: this.#kept.set.records };
  }

  #handOverOf(deviceId: string): HandOver {
    const { set, heard } = this.#kept;
    const records = set.records.filter((record) => record.deviceId === deviceId);
    const lastSeq = [...records.map(({ seq }) => seq), ...heardOf(heard, deviceId)].reduce(
      (last, seq) => Math.max(last, seq),
      0,
    );
    return { planId: this.#plan.id, deviceId, lastSeq, withdrawn: set.withdrawn, records };
  }

  /** Takes in what was read; false where it could not be kept. Twice is the same as once. */
  take(read: ReadFile): Promise<boolean> {
    return this.#oneByOne(() => this.#take(read));
  }

  /** A ride of this device is taken back: it stays counted, is no longer a ride, and others are told. */
  withdraw({ id, deviceId, seq }: RideRecord): Promise<boolean> {
    return this.take({
      set: { records: [], damaged: [], withdrawn: [id] },
      heard: [{ deviceId, lastSeq: seq }],
    });
  }

  async drop(): Promise<boolean> {
    const done = await this.#options.sessions.drop(this.#plan.id);
    this.#remarks.clear();
    await this.reload();
    return done;
  }

  async #take(read: ReadFile): Promise<boolean> {
    const { sessions, now, onChanged } = this.#options;
    const records = read.set.records.filter((record) => record.planId === this.#plan.id);
    const before = this.#kept;
    const set = mergeSets(before.set, { ...read.set, records });
    const after = { set, heard: withHeard(before.heard, read.heard, now()) };
    const answer = await sessions.keep(this.#plan.id, before, after);
    this.#settle(after);
    onChanged();
    return answer;
  }

  #settle(kept: CarriedSession): void {
    this.#kept = kept;
    this.#handOvers.clear();
    this.#show();
    void this.#check();
  }

  #show(): void {
    const { set, heard } = this.#kept;
    const remarks = set.records.flatMap((record) => this.#remarks.get(keyOf(record)) ?? []);
    const toCheck = this.#unchecked().length;
    // A ride that does not come out as it says is kept and shown, and counts nowhere.
    this.#collected = { set, heard, remarks, toCheck };
    this.#listeners.tell();
  }

  #unchecked(): RideRecord[] {
    return this.#kept.set.records.filter(
      (record) => record.recording !== null && !this.#own.has(record) && !this.#remarks.has(keyOf(record)),
    );
  }

  async #check(): Promise<void> {
    if (this.#checking) return;
    this.#checking = true;
    try {
      for (;;) {
        const some = this.#unchecked().slice(0, CHECKED_AT_ONCE);
        if (some.length === 0) break;
        const remarks = await this.#options.verifier.verify(this.#plan, some);
        // An answer for every question, or it would be asked for ever.
        if (remarks.length !== some.length) break;
        for (const [i, record] of some.entries()) this.#remarks.set(keyOf(record), remarks[i] as Remark);
        this.#show();
      }
    } catch {
      // They stay to be checked; the next arrival asks again.
    } finally {
      this.#checking = false;
    }
  }
}

function keyOf(record: RideRecord): string {
  return `${record.id} ${record.checksum} ${record.recording === null ? '' : 'whole'}`;
}

function heardOf(heard: readonly Heard[], deviceId: string): number[] {
  return heard.filter((item) => item.deviceId === deviceId).map((item) => item.lastSeq);
}

/** What was heard before and what was read now. */
export function withHeard(before: readonly Heard[], read: ReadFile['heard'], atMs: number): readonly Heard[] {
  return mergeHeard([...before, ...read.map((item) => ({ ...item, atMs }))]);
}
