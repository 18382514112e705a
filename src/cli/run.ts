/**
 * Finds the verb, hands it its words and turns its answer into text and an exit code. The table of verbs
 * is here; printing and the process itself are left to `main.ts`.
 */
import { readArgs } from './common/args.ts';
import { BadInput } from './common/badInput.ts';
import type { Verb } from './common/verb.ts';
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
  try {
    return work(words);
  } catch (error) {
    if (error instanceof BadInput) return { exitCode: 2, out: '', err: error.message };
    const message = error instanceof Error ? error.message : 'unknown fault';
    return { exitCode: 1, out: '', err: `This should not have happened: ${message}.` };
  }
}

function work(words: readonly string[]): RunOutcome {
  const [name, ...rest] = words;
  if (name === 'help' || name === '--help' || name === '-h') return { exitCode: 0, out: usage(), err: '' };
  if (name === undefined) throw new BadInput(usage());
  const verb = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (verb === undefined)
    throw new BadInput(`There is no verb "${name}". Choose one of ${Object.keys(VERBS).join(', ')}.`);
  const args = readArgs(rest, { json: 'switch', ...verb.flags }, verb.takesFiles);
  const { json, text, complaint } = verb.run(args);
  const out = args.switches.has('json') ? JSON.stringify(json, null, 2) : text;
  return complaint === undefined ? { exitCode: 0, out, err: '' } : { exitCode: 2, out, err: complaint };
}

function usage(): string {
  const lines = Object.entries(VERBS).map(([name, verb]) => `  ${name} ${verb.usage}\n      ${verb.summary}`);
  return ['Say what to do, one of:', ...lines, 'With --json the answer is JSON.'].join('\n');
}
