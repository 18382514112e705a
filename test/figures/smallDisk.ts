/**
 * A disk of its own for a browser's profile, small enough to be filled to the last byte. Needs the right to mount
 * (root on Linux). What is done while it is full is written by those who use it.
 */
import { execFileSync } from 'node:child_process';
import {
  closeSync,
  fstatSync,
  ftruncateSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** How the disk is made: a file with ext4 in it, or memory. */
export type DiskKind = 'ext4' | 'tmpfs';

/** A small disk that is mounted. */
export interface SmallDisk {
  readonly folder: string;
  /** Fills it to the last byte but `spareBytes`. Called again it takes what has become free since. */
  fill(spareBytes?: number): void;
  /** Takes the filling away. */
  free(): void;
  remove(): void;
}

/** Mounts a disk of so many megabytes. @throws where this computer does not allow it */
export function mountSmallDisk(kind: DiskKind, megabytes: number): SmallDisk {
  const place = mkdtempSync(join(tmpdir(), 'small-disk-'));
  const folder = join(place, 'disk');
  mkdirSync(folder);
  if (kind === 'tmpfs') run('mount', '-t', 'tmpfs', '-o', `size=${megabytes}m`, 'tmpfs', folder);
  else {
    const image = join(place, 'image');
    const file = openSync(image, 'w');
    ftruncateSync(file, megabytes * 1024 * 1024);
    closeSync(file);
    run('mkfs.ext4', '-q', '-F', '-m', '0', image);
    run('mount', '-o', 'loop', image, folder);
  }
  const filling = join(folder, 'filling');
  return {
    folder,
    fill(spareBytes = 0) {
      const file = openSync(filling, 'a');
      for (let bytes = 1 << 20; bytes >= 1; bytes >>= 1) while (takes(file, bytes));
      if (spareBytes > 0) ftruncateSync(file, Math.max(0, fstatSync(file).size - spareBytes));
      closeSync(file);
    },
    free: () => rmSync(filling, { force: true }),
    remove() {
      run('umount', '-l', folder);
      rmSync(place, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** Whether the disk took all of so many bytes more. */
function takes(file: number, bytes: number): boolean {
  try {
    return writeSync(file, Buffer.alloc(bytes)) === bytes;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOSPC') return false;
    throw error;
  }
}

function run(command: string, ...args: readonly string[]): void {
  execFileSync(command, [...args], { stdio: ['ignore', 'ignore', 'pipe'] });
}
