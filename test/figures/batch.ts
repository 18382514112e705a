/**
 * How many rides a second `batch` makes where the best ride is known: the time of many rides less that of few, so that
 * starting up does not count. By hand, on a machine that does nothing else: `npx tsx test/figures/batch.ts`.
 */
import { spawnSync } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../../', import.meta.url));
const FEW = 200;
const MANY = 1_400;

function secondsFor(rides: number): number {
  const startedMs = performance.now();
  const { status, stderr } = spawnSync(
    process.execPath,
    [
      join(repository, 'node_modules', 'tsx', 'dist', 'cli.mjs'),
      join(repository, 'src', 'cli', 'main.ts'),
      'batch',
      `--levels=${join(repository, 'levels', 'one-pitch-announced.json')}`,
      '--bikes=road-2x11',
      '--riders=adult-weekly',
      '--players=skill:0.5',
      `--seeds=1-${rides}`,
    ],
    { encoding: 'utf8', maxBuffer: 1 << 28 },
  );
  if (status !== 0) throw new Error(stderr);
  return (performance.now() - startedMs) / 1000;
}

const few = secondsFor(FEW);
const many = secondsFor(MANY);
console.log(
  `${((MANY - FEW) / (many - few)).toFixed(0)} rides a second on ${availableParallelism()} cores (720 m of road, marks included); starting up and ${FEW} rides take ${few.toFixed(1)} s`,
);
