/**
 * A folder of its own for each test file, and two ways to run the command line: inside this process, where
 * hundreds of runs are cheap, and as the process a person starts.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';
import { type RunOutcome, runCommandLine } from '../../src/cli/run.ts';

export const repository = fileURLToPath(new URL('../../', import.meta.url));

/** A level file by its id. */
export const levelFile = (id: string): string => join(repository, 'levels', `${id}.json`);

/** Whom most runs are about. */
export const WHO: readonly string[] = ['--bike', 'road-2x11', '--rider', 'adult-weekly'];

/** A folder that is gone when the tests of the file are over. */
export function workshop() {
  const folder = mkdtempSync(join(tmpdir(), 'command-line-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    folder,
    path: (name: string): string => join(folder, name),
    write(name: string, text: string): string {
      writeFileSync(join(folder, name), text);
      return join(folder, name);
    },
    read: (name: string): string => readFileSync(join(folder, name), 'utf8'),
  };
}

/** Runs the command line in this process. */
export const run = (...words: string[]): RunOutcome => runCommandLine(words);

/** Runs it and reads the JSON it prints; it must have gone well. */
export function json(...words: string[]): Record<string, unknown> {
  const outcome = runCommandLine([...words, '--json']);
  if (outcome.exitCode !== 0) throw new Error(outcome.err);
  return JSON.parse(outcome.out) as Record<string, unknown>;
}

/** Starts it in a folder as a process of its own, straight from the sources. */
export function start(
  folder: string,
  ...words: string[]
): { status: number | null; stdout: string; stderr: string } {
  const tsx = join(repository, 'node_modules', 'tsx', 'dist', 'cli.mjs');
  const main = join(repository, 'src', 'cli', 'main.ts');
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsx, main, ...words], {
    cwd: folder,
    encoding: 'utf8',
    input: '',
  });
  return { status, stdout, stderr };
}
