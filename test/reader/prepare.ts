/**
 * Runs once before the game is listened to: sees to it that there is a built site, and fetches the screen reader where
 * that can be done without asking anybody. Where it cannot be had the tests are left out, and say so.
 */
import { thisComputer } from '../browser/chromium.ts';
import prepareBrowser from '../browser/prepare.ts';
import { missingReader, READER_PACKAGES } from './screenReader.ts';

/** Called by vitest before the first test. */
export default function prepare(): void {
  prepareBrowser();
  const computer = thisComputer();
  if (missingReader() === null || !computer.isRoot || !/^ID="?debian"?$/m.test(computer.osRelease)) return;
  try {
    computer.run('apt-get', ['update']);
    computer.run('apt-get', ['install', '-y', '--no-install-recommends', ...READER_PACKAGES]);
  } catch {
    // No network, no rights: the tests are left out, which they say in words.
  }
}
