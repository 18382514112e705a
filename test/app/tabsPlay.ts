/**
 * People who use several tabs at once: riding, taking back, adding riders, deleting, taking over, in an order made by
 * a seed. What they were told is remembered and looked for at the end. What a tab is made of is not known here.
 */
import { offerNicknames } from '../../src/core/group/nicknames.ts';
import type { Random } from '../../src/core/math/random.ts';

/** What can be seen of the session. Rides are named by the fingerprint of their recording. */
export interface Seen {
  readonly riders: readonly string[];
  readonly rides: readonly string[];
  /** Rides the round names that are not there. */
  readonly missing: number;
  /** Numbers that two rides share. */
  readonly doubled: number;
  /** Whether there is a session, and whatever else of it is kept. */
  readonly session: boolean;
  /** Finished turns that could not be marked. */
  readonly unmarked: number;
  readonly left: number;
}

/** One tab. What it answers with is what a person was told; null or false where nothing was promised. */
export interface Tab {
  open(): Promise<void>;
  create(): Promise<boolean>;
  add(nickname: string): Promise<boolean>;
  begin(): Promise<boolean>;
  /** The ride that was begun here comes to its end. */
  end(): Promise<string | null>;
  takeBack(): Promise<{ readonly ride: string; readonly done: boolean } | null>;
  remove(): Promise<boolean>;
  see(): Promise<Seen>;
}

/** What became of a play. */
export interface Played {
  /** What was lost or undone, in words; empty when all is well. */
  readonly faults: readonly string[];
  readonly rides: number;
  readonly takenBack: number;
  readonly deleted: number;
}

/** Lets people use tabs at once. `fresh` is a tab that is opened when all have done. */
export async function play(tabs: readonly Tab[], fresh: Tab, random: Random, steps: number): Promise<Played> {
  const told = { rides: new Set<string>(), maybeGone: new Set<string>(), gone: new Set<string>() };
  const added = new Set<string>();
  const names = offerNicknames([], 300, 1).values();
  let [rides, takenBack, deleted] = [0, 0, 0];
  await tabs[0]?.open();
  await tabs[0]?.create();
  let removing: boolean | null = null;
  const one = async (tab: Tab, nickname: string, dice: number): Promise<void> => {
    if (dice < 0.1) return tab.open();
    if (dice < 0.35) await tab.open();
    if (dice < 0.45) return void (await tab.begin());
    if (dice < 0.75) {
      const ride = await tab.end();
      if (ride === null) return;
      rides += 1;
      told.rides.add(ride);
      // Ridden the same way again after it was taken back: then it is there again.
      if (told.gone.delete(ride)) told.maybeGone.add(ride);
      return;
    }
    if (dice < 0.85) {
      const back = await tab.takeBack();
      if (back === null) return;
      told.maybeGone.add(back.ride);
      if (!back.done) return;
      takenBack += 1;
      told.gone.add(back.ride);
      return;
    }
    if (await tab.add(nickname)) added.add(nickname);
  };
  for (let step = 0; step < steps; step += 1) {
    // Two or three things at once, each in a tab of its own.
    const busy = tabs.filter(() => random() < 0.7);
    await Promise.all(busy.map((tab) => one(tab, names.next().value ?? '', random())));
  }
  if (random() < 0.2) {
    await tabs[0]?.open();
    // Somebody deletes the session while others go on with it.
    const others = tabs.slice(1).map((tab) => one(tab, names.next().value ?? '', 0.45 + random() / 2));
    removing = (await tabs[0]?.remove()) ?? null;
    await Promise.all(others);
    if (removing === true) deleted = 1;
  }
  const seen = await fresh.see();
  const faults: string[] = [];
  // Without an answer the session may be gone or not.
  const mayBeGone = removing === false && !seen.session;
  if (removing === true) {
    if (seen.session || seen.rides.length > 0) faults.push('a deleted session is there again');
  } else if (!mayBeGone) {
    for (const ride of told.rides)
      if (!seen.rides.includes(ride) && !told.maybeGone.has(ride)) faults.push(`ride ${ride} is lost`);
    for (const nickname of added)
      if (!seen.riders.includes(nickname)) faults.push(`${nickname} is no longer there`);
    for (const ride of told.gone) if (seen.rides.includes(ride)) faults.push(`${ride} came back`);
  }
  if (seen.missing > 0) faults.push(`${seen.missing} rides of the round are not there`);
  if (seen.unmarked > 0) faults.push('a ride could not be marked');
  if (seen.doubled > 0) faults.push(`${seen.doubled} numbers were given twice`);
  if (new Set(seen.rides).size < seen.rides.length) faults.push('a ride is there twice');
  return { faults, rides, takenBack, deleted };
}
