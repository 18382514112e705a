/**
 * Finds the verb, hands it its words and turns its answer into text and an exit code. The table of verbs
 * is here; printing and the process itself are left to `main.ts`.
 */
import { PHYSICS_VERSION } from '../core/ride/recording.ts';
import { readArgs } from './common/args.ts';
import { BadInput, noSuch } from './common/badInput.ts';
import { ownVersion } from './common/files.ts';
import type { Verb, VerbAnswer } from './common/verb.ts';
import { batch } from './verbs/batch.ts';
import { clinic } from './verbs/clinic.ts';
import { gearsVerb } from './verbs/gears.ts';
import { gpx } from './verbs/gpx.ts';
import { levels } from './verbs/levels.ts';
import { plan } from './verbs/plan.ts';
import { replay } from './verbs/replay.ts';
import { ride } from './verbs/ride.ts';
import { road } from './verbs/road.ts';
import { steady } from './verbs/steady.ts';

/** Every verb there is; a new one is one more line here. */
const VERBS: Readonly<Record<string, Verb>> = {
  levels,
  gears: gearsVerb,
  steady,
  plan,
  ride,
  replay,
  batch,
  gpx,
  road,
  clinic,
};

/** What goes to the two streams, and how the process ends. */
export interface RunOutcome {
  /** 0 well, 2 bad input, 1 a fault of our own. */
  readonly exitCode: 0 | 1 | 2;
  readonly out: string;
  readonly err: string;
}

/** Does what the words say. Never throws: bad input and even a fault of our own end in a sentence. */
export function runCommandLine(words: readonly string[]): RunOutcome {
  const json = words.includes('--json');
  try {
    return work(words, json);
  } catch (error) {
    return faulty(error, json);
  }
}

/** What a verb answered, on its streams. */
export function answered({ json, text, complaint }: VerbAnswer, asJson: boolean): RunOutcome {
  const out = asJson ? JSON.stringify(json, null, 2) : text;
  return complaint === undefined ? { exitCode: 0, out, err: '' } : { exitCode: 2, out, err: complaint };
}

/** A fault as a sentence; with `--json` as an object too, so that a program need not read two streams. */
export function faulty(error: unknown, asJson: boolean): RunOutcome {
  const bad = error instanceof BadInput;
  const message = error instanceof Error ? error.message : 'unknown fault';
  const sentence = bad ? message : `This should not have happened: ${message}.`;
  const exitCode = bad ? 2 : 1;
  const out = asJson ? JSON.stringify({ fault: { sentence, exitCode } }, null, 2) : '';
  return { exitCode, out, err: sentence };
}

function work(words: readonly string[], json: boolean): RunOutcome {
  const [name, ...rest] = words;
  if (name === 'help' || name === '--help' || name === '-h') {
    const [asked] = rest;
    return { exitCode: 0, out: asked === undefined ? usage() : usageOf(asked), err: '' };
  }
  if (name === '--version' || name === 'version') {
    const version = ownVersion();
    return answered(
      { json: { version, physicsVersion: PHYSICS_VERSION }, text: `${version}, physics ${PHYSICS_VERSION}` },
      json,
    );
  }
  if (name === undefined) throw new BadInput(usage());
  const verb = verbOf(name);
  if (rest.includes('--help') || rest.includes('-h')) return { exitCode: 0, out: usageOf(name), err: '' };
  return answered(verb.run(readArgs(rest, { json: 'switch', ...verb.flags }, verb.takesFiles)), json);
}

function verbOf(name: string): Verb {
  const verb = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (verb === undefined) throw noSuch('verb', name, Object.keys(VERBS));
  return verb;
}

function usageOf(name: string): string {
  const { usage: rest, summary } = verbOf(name);
  return `${name} ${rest}\n  ${summary}\n  With --json the answer is JSON, a fault too.`;
}

function usage(): string {
  const lines = Object.entries(VERBS).map(([name, verb]) => `  ${name} ${verb.usage}\n      ${verb.summary}`);
  return [
    'Say what to do, one of:',
    ...lines,
    'With --json the answer is JSON, a fault too. "help VERB" says more of one; "--version" says which this is.',
  ].join('\n');
}
