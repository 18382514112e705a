/**
 * `batch` on all cores: as many processes of this very program as there are cores, each with its share of the rides. What a
 * row says does not depend on how many there are.
 */
import { spawn } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { readArgs } from './common/args.ts';
import { BadInput } from './common/badInput.ts';
import { answered, faulty, type RunOutcome } from './run.ts';
import { batch, batchAnswer, type BatchRow, groupsOf, joinedRows } from './verbs/batch.ts';

/** So few rides are done before another process has started. */
const WORTH_A_PROCESS = 40;

/** Rides what the words after `batch` ask for. Never rejects. */
export async function runBatch(words: readonly string[]): Promise<RunOutcome> {
  const json = words.includes('--json');
  try {
    const args = readArgs(words, { json: 'switch', ...batch.flags }, batch.takesFiles);
    const groups = groupsOf(args);
    const rides = groups.reduce((sum, group) => sum + group.rides.length, 0);
    const count = Math.min(availableParallelism(), Math.ceil(rides / WORTH_A_PROCESS));
    if (count < 2 || args.values.has('part')) return answered(batch.run(args), json);
    const parts = await Promise.all(
      Array.from({ length: count }, (_, i) => partInProcess(words, `${i}/${count}`)),
    );
    return answered(batchAnswer(args, joinedRows(groups, parts)), json);
  } catch (error) {
    return faulty(error, json);
  }
}

function partInProcess(words: readonly string[], part: string): Promise<BatchRow[]> {
  const bare = words.filter((word) => word !== '--json');
  const script = process.argv[1] ?? '';
  return new Promise((resolve, reject) => {
    const child = spawn(
      process.execPath,
      [...process.execArgv, script, 'batch', ...bare, '--part', part, '--json'],
      { stdio: ['ignore', 'pipe', 'pipe'] },
    );
    const [out, err]: [Buffer[], Buffer[]] = [[], []];
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk));
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) resolve(JSON.parse(Buffer.concat(out).toString('utf8')) as BatchRow[]);
      else reject(new BadInput(Buffer.concat(err).toString('utf8').trim()));
    });
  });
}
