/**
 * Finds the browser the tests drive, and fetches it where that can be done without asking anybody.
 * Starting it and opening pages is the work of `site.ts`.
 */
import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The one without windows of its own first: it is the same engine, and starts and opens pages with less work. */
const commandNames = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome-stable',
  'google-chrome',
  'chrome',
];
const PACKAGE = 'chromium-headless-shell';
const applicationFiles = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** What the search looks at; handed in so that a test can describe another computer. */
export interface Computer {
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly isProgram: (file: string) => boolean;
  /** Text of the file that names the operating system, or '' if there is none. */
  readonly osRelease: string;
  readonly isRoot: boolean;
  /** Runs a command and waits; throws if it fails. */
  readonly run: (command: string, args: readonly string[]) => void;
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

/** The computer this runs on. */
export function thisComputer(): Computer {
  return {
    env: process.env,
    isProgram,
    osRelease: existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '',
    isRoot: process.getuid?.() === 0,
    run: (command, args) => {
      execFileSync(command, [...args], {
        stdio: ['ignore', 'inherit', 'inherit'],
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      });
    },
  };
}

function installedChromium(computer: Computer): string | undefined {
  const folders = (computer.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const candidates = commandNames.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...candidates, ...applicationFiles].find(computer.isProgram);
}

/**
 * The path of a Chromium or Chrome. `CHROMIUM_PATH` wins, then what is installed; on Debian as root
 * the package is installed, with a font so that text has a width.
 * @throws Error with one sentence saying what to install, if there is none and none can be fetched.
 */
export function findChromium(computer: Computer = thisComputer()): string {
  const named = computer.env['CHROMIUM_PATH'];
  if (named !== undefined && named !== '') {
    if (computer.isProgram(named)) return named;
    throw new Error(`CHROMIUM_PATH names ${named}, which is not a program that can be started.`);
  }
  const found = installedChromium(computer);
  if (found !== undefined) return found;
  if (computer.isRoot && /^ID="?debian"?$/m.test(computer.osRelease)) {
    computer.run('apt-get', ['update']);
    computer.run('apt-get', ['install', '-y', '--no-install-recommends', PACKAGE, 'fonts-liberation']);
    const fetched = installedChromium(computer);
    if (fetched !== undefined) return fetched;
  }
  throw new Error('Install Chromium or Chrome, or set CHROMIUM_PATH to one, to run the browser tests.');
}
