/**
 * What the pages of group sessions know, for everybody who wants to hear of changes, and the way of each change into the
 * storage. Which changes there are is said by `clinicDesk.ts` and `turnDesk.ts`.
 */
import type { RideRecord } from '../../core/group/records/record.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { Level } from '../../core/level/schema.ts';
import type { ClinicState } from '../../features/clinic/services.ts';
import { Listeners } from '../../state/listeners.ts';
import type { KeptSessions, OwnedSessions } from '../../storage/sessions.ts';

export class SessionBook {
  readonly shelf: OwnedSessions;
  readonly #listeners = new Listeners();
  #writing: Promise<unknown> = Promise.resolve();
  /** Rides of this device: their marks were made here. */
  own = new Set<RideRecord>();
  state: ClinicState;

  constructor(shelf: OwnedSessions, ownLevels: readonly Level[]) {
    this.shelf = shelf;
    this.state = {
      saved: { plans: [], rounds: [], records: [] },
      ownLevels,
      kept: true,
      marking: null,
      debriefOf: null,
      picture: null,
      notCounted: false,
      apart: [],
    };
  }

  readonly subscribe = this.#listeners.add;

  async load(): Promise<KeptSessions> {
    const contents = await this.shelf.load();
    const { plans, rounds, records, own } = contents;
    this.own = new Set(own);
    this.change({ saved: { plans, rounds, records }, marking: null, debriefOf: null, picture: null });
    return contents;
  }

  session(planId: string | undefined): SavedRound | undefined {
    return this.state.saved.rounds.find(({ plan }) => plan.id === planId);
  }

  ride(recordId: string): { readonly record: RideRecord; readonly saved: SavedRound } | null {
    const record = this.state.saved.records.find(({ id }) => id === recordId);
    const saved = this.session(record?.planId);
    return record === undefined || saved === undefined ? null : { record, saved };
  }

  /** A round has moved on, and these are the rides of all sessions now. */
  move(saved: SavedRound, moved: SavedRound, records: readonly RideRecord[]): void {
    const rounds = this.state.saved.rounds.map((one) => (one === saved ? moved : one));
    this.save({ rounds, records });
  }

  save(part: Partial<ClinicState['saved']>): void {
    this.change({ saved: { ...this.state.saved, ...part } });
  }

  change(part: Partial<ClinicState>): void {
    this.state = { ...this.state, ...part };
    this.#listeners.tell();
  }

  async saveRound(saved: SavedRound): Promise<void> {
    const others = this.state.saved.rounds.filter(({ plan }) => plan.id !== saved.plan.id);
    this.save({ rounds: [saved, ...others] });
    if (this.state.marking?.failed === true) this.change({ marking: null });
    await this.write((shelf) => shelf.putRound(saved));
  }

  /** One write after the other, in the order they were asked for: an older round must not land on a newer one. */
  write(work: (shelf: OwnedSessions) => Promise<boolean>): Promise<boolean> {
    const written = this.#writing.then(async () => {
      const kept = await work(this.shelf);
      if (kept !== this.state.kept) this.change({ kept });
      return kept;
    });
    this.#writing = written;
    return written;
  }

  /** Comes when everything that was asked for by now is written. */
  async written(): Promise<void> {
    await this.#writing;
  }
}
