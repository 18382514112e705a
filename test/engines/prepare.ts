/**
 * Runs once before the engines are tested: sees to it that there is a built site, and fetches the engines where
 * that can be done without asking anybody. One that cannot be fetched is left out, and the tests say so.
 */
import { findChromium, thisComputer } from '../browser/chromium.ts';
import prepareBrowser from '../browser/prepare.ts';
import { engines } from './engines.ts';

const PACKAGES = ['firefox-esr', 'webkit2gtk-driver', 'xvfb'];

/** Called by vitest before the first test. */
export default function prepare(): void {
  prepareBrowser();
  findChromium();
  const missing = engines().filter((engine) => engine.missing !== null);
  const computer = thisComputer();
  if (missing.length === 0 || !computer.isRoot || !/^ID="?debian"?$/m.test(computer.osRelease)) return;
  try {
    computer.run('apt-get', ['update']);
    computer.run('apt-get', ['install', '-y', '--no-install-recommends', ...PACKAGES]);
  } catch {
    // No network, no rights: the engines are left out, which the tests say in words.
  }
}
