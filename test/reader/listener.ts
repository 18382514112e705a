/** Somebody who rides by what is spoken and by nothing else: no tone, no picture, no knowledge of the game's sources. */
import { setTimeout as wait } from 'node:timers/promises';
import type { Heard, ReadAloud } from './screenReader.ts';

/** A hand follows the ear after so long (ms). */
const REACTION_MS = 250;
/** Feet are soft so long before the first click, and so long lies between two clicks (ms). */
const SOFT_MS = 350;
const CLICK_MS = 450;
const LOOK_MS = 60;
/** After so long without a new line all has been given that was to be said of a thing (ms). */
const QUIET_MS = 500;
/** So long a thing may take to be named; some have no name (ms). */
const NAMED_MS = 3000;
/** A key is spoken before what it led to. */
const KEY_SPOKEN = /^(?:tab|(?:left |right )?shift)\.?$/i;

/** Names of keys as they are spoken, and as the keyboard calls them. */
const KEYS: Readonly<Record<string, string>> = {
  'arrow down': 'Down',
  'arrow up': 'Up',
  'arrow left': 'Left',
  'arrow right': 'Right',
  Space: 'space',
};

const keyOf = (spoken: string): string => KEYS[spoken] ?? spoken.toLowerCase();

/** Waits for a line that comes after a moment and is what was waited for, and answers with it when it has been heard. */
export async function hear(
  { heard }: Pick<ReadAloud, 'heard'>,
  sinceMs: number,
  wanted: RegExp,
  patienceMs = 20_000,
): Promise<Heard> {
  const until = Date.now() + patienceMs;
  while (Date.now() < until) {
    const line = heard().find(
      ({ text, givenMs, toMs }) => givenMs >= sinceMs && toMs <= Date.now() && wanted.test(text),
    );
    if (line !== undefined) return line;
    await wait(LOOK_MS);
  }
  const said = heard().filter(({ givenMs }) => givenMs >= sinceMs);
  throw new Error(`${String(wanted)} was not heard, but: ${said.map(({ text }) => text).join(' | ')}`);
}

/** Goes from thing to thing until one is called so, and presses it; answers with when (ms since 1970). */
export async function press(site: ReadAloud, name: RegExp, key = 'Tab'): Promise<number> {
  for (let tries = 0; tries < 80; tries += 1) {
    const sinceMs = Date.now();
    site.press(key);
    const said = (): readonly Heard[] =>
      site.heard().filter(({ text, givenMs }) => givenMs >= sinceMs && !KEY_SPOKEN.test(text));
    const isCalledSo = (): boolean => said().some(({ text }) => name.test(text));
    while (Date.now() - sinceMs < NAMED_MS && said().length === 0) await wait(LOOK_MS);
    // What is left and entered is spoken before the thing itself, and the rest must not be taken for the next thing.
    while (!isCalledSo() && Date.now() - (site.heard().at(-1)?.givenMs ?? 0) < QUIET_MS) await wait(LOOK_MS);
    if (!isCalledSo()) continue;
    const pressedMs = Date.now();
    site.press('Return');
    return pressedMs;
  }
  throw new Error(`nothing called ${String(name)} was heard`);
}

/** The keys somebody has been told of, empty until then. */
export interface KnownKeys {
  easier: string;
  harder: string;
  soft: string;
}

/** Rides by what is spoken until the ride is over, and learns keys on the way; `isRiding` only ends the listening. */
export async function rideByEar(
  site: ReadAloud,
  sinceMs: number,
  known: KnownKeys,
  isRiding: () => Promise<boolean>,
): Promise<void> {
  let doneMs = sinceMs;
  while (await isRiding()) {
    const now = Date.now();
    const line = site.heard().findLast(({ givenMs, toMs }) => givenMs > doneMs && toMs <= now);
    if (line === undefined) {
      await wait(LOOK_MS);
      continue;
    }
    doneMs = line.givenMs;
    const lesson = /For (?<what>easier|harder|soft feet) (?<how>press|hold) (?<key>[\w ]+)\./.exec(
      line.text,
    )?.groups;
    const steps = /^(?<steps>\d) (?<way>easier|harder)/.exec(line.text)?.groups;
    await wait(REACTION_MS);
    if (lesson !== undefined) {
      const key = keyOf(lesson['key'] ?? '');
      if (lesson['what'] === 'soft feet') known.soft = key;
      else known[lesson['what'] === 'easier' ? 'easier' : 'harder'] = key;
      site.hold(key, true);
      await wait(lesson['how'] === 'hold' ? 1500 : 80);
      site.hold(key, false);
    } else if (steps !== undefined) {
      if (known.soft !== '') site.hold(known.soft, true);
      await wait(SOFT_MS);
      for (let i = 0; i < Number(steps['steps']); i += 1) {
        site.press(steps['way'] === 'easier' ? known.easier : known.harder);
        await wait(CLICK_MS);
      }
      if (known.soft !== '') site.hold(known.soft, false);
      // What was said while the hands were busy is about a gear that is no longer there.
      doneMs = Date.now();
    }
  }
}
