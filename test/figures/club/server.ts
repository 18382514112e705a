/** A store of a club in a process of its own: started, killed without a warning, started again at the same address. */
import type { StoreAddress } from '../../../src/core/transfer/clubStore.ts';
import { type ChildProcessByStdio, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath } from 'node:url';

const PROGRAM = fileURLToPath(new URL('child.mjs', import.meta.url));

/** A running store. */
export interface ClubServer {
  readonly address: StoreAddress;
  /** Pieces it found when it started. */
  readonly pieces: number;
  readonly damaged: number;
  /** Memory (bytes) and time of the processor so far (microseconds). */
  uses(): Promise<{ readonly rssBytes: number; readonly cpuUs: number }>;
  kill(): Promise<void>;
}

/** Starts a store on a folder; comes back once it listens. */
export async function startClub(folder: string, port = 0): Promise<ClubServer> {
  const child: ChildProcessByStdio<Writable, Readable, null> = spawn(
    'node',
    [PROGRAM, folder, String(port)],
    {
      stdio: ['pipe', 'pipe', 'inherit'],
    },
  );
  const [, at = '', pieces = '', damaged = ''] = (await lineOf(child.stdout, 'ready')).split(' ');
  const settings = JSON.parse(readFileSync(join(folder, 'club.json'), 'utf8')) as Omit<StoreAddress, 'url'>;
  const { database, name, password } = settings;
  return {
    address: { url: `http://127.0.0.1:${at}`, database, name, password },
    pieces: Number(pieces),
    damaged: Number(damaged),
    async uses() {
      const line = lineOf(child.stdout, 'uses');
      child.stdin.write('\n');
      const [, rss, cpu] = (await line).split(' ');
      return { rssBytes: Number(rss), cpuUs: Number(cpu) };
    },
    kill: () =>
      new Promise((resolve) => {
        child.once('exit', () => resolve());
        child.kill('SIGKILL');
      }),
  };
}

function lineOf(stream: Readable, word: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = '';
    const read = (chunk: Buffer): void => {
      text += chunk.toString('utf8');
      const line = text.split('\n').find((one) => one.startsWith(`${word} `));
      if (line === undefined || !text.includes('\n')) return;
      stream.off('data', read);
      resolve(line);
    };
    stream.on('data', read);
    stream.once('end', () => reject(new Error(`The store ended before it said “${word}”.`)));
  });
}
