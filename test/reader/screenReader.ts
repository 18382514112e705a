/**
 * A desktop without a screen on which Orca reads Firefox aloud, with its settings as they come. Keys are pressed as on
 * a keyboard; what is spoken is read from the reader's own log, each line lasting as long as the voice needs for it.
 */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import puppeteer, { type Page } from 'puppeteer-core';
import { commandPath, startScreen } from '../engines/engines.ts';

/** Commands of Debian's packages; the reader hangs without something to play its voice on. */
const COMMANDS = ['orca', 'openbox', 'pulseaudio', 'espeak-ng', 'dbus-daemon', 'xdotool', 'Xvfb', 'script'];
/** What brings them there. */
export const READER_PACKAGES = [
  'orca',
  'speech-dispatcher',
  'espeak-ng',
  'at-spi2-core',
  'dbus-x11',
  'xvfb',
  'xdotool',
  'openbox',
  'pulseaudio',
];
/** Somewhere to play to that nobody hears. */
const SILENT_SOUND =
  '-n -L module-null-sink -L module-native-protocol-unix --exit-idle-time=-1 --daemonize=no'.split(' ');
const AT_SPI = '/usr/libexec/at-spi-bus-launcher';

/** What is missing here, as a sentence, or null. */
export function missingReader(): string | null {
  const missing = COMMANDS.filter((command) => commandPath(command) === null);
  if (commandPath('firefox-esr', 'firefox') === null) missing.push('firefox-esr');
  return missing.length === 0 ? null : `A screen reader is left out: ${missing.join(', ')} not installed.`;
}

/** One line of the voice (ms since 1970). */
export interface Heard {
  readonly text: string;
  /** When the reader was given it. */
  readonly givenMs: number;
  readonly fromMs: number;
  /** When it was over, or was cut off by a key. */
  readonly toMs: number;
}

/** A page that is read aloud, and its keyboard. */
export interface ReadAloud {
  /** Only to be looked at, never to be steered by. */
  readonly page: Page;
  /** Presses and lets go; names of X: `Down`, `space`, `Tab`. */
  press(key: string): void;
  hold(key: string, isDown: boolean): void;
  /** Everything spoken so far, in order. */
  heard(): readonly Heard[];
  close(): Promise<void>;
}

/** The reader's usual speed (words a minute), as the speech dispatcher hands it on. */
const WORDS_A_MINUTE = '170';
const SAMPLE_BYTES_A_MS = (22_050 * 2) / 1000;

const voices = new Map<string, number>();

/** How long the voice needs for a line (ms). */
function lastsMs(text: string): number {
  const known = voices.get(text);
  if (known !== undefined) return known;
  const { stdout } = spawnSync('espeak-ng', ['-s', WORDS_A_MINUTE, '--stdout', text], { maxBuffer: 1 << 26 });
  const ms = stdout.length / SAMPLE_BYTES_A_MS;
  voices.set(text, ms);
  return ms;
}

/** `22:13:39.495749 - SPEECH OUTPUT: 'Bike panel.'` */
const SPOKEN = /^(?<h>\d\d):(?<m>\d\d):(?<s>\d\d\.\d+) - SPEECH OUTPUT: ['"](?<text>.*)['"] *\{/;

/** What a log says was spoken, and when it was given to the voice. */
function spokenIn(log: string): { readonly text: string; readonly givenMs: number }[] {
  const today = new Date();
  return log.split('\n').flatMap((line) => {
    const { h, m, s, text } = SPOKEN.exec(line)?.groups ?? {};
    if (text === undefined || text.trim() === '') return [];
    const seconds = Number(s);
    const at = new Date(today);
    at.setHours(Number(h), Number(m), Math.floor(seconds), Math.round((seconds % 1) * 1000));
    return [{ text: text.trim(), givenMs: at.getTime() }];
  });
}

/** Names of keys, which the reader says when they are pressed and, while one is held, over and over. */
const KEY_NAME = /^(?:(?:shift )?tab|space|return|up|down|left|right|shift|left shift|[a-z])$/;

/** Lines one after the other; a pressed key, also one that repeats, cuts off what is being said and what waits. */
function heardOf(log: string, pressedMs: readonly number[]): readonly Heard[] {
  const heard: { text: string; givenMs: number; fromMs: number; toMs: number }[] = [];
  const lines = spokenIn(log);
  const repeatedMs = lines.filter(({ text }) => KEY_NAME.test(text)).map(({ givenMs }) => givenMs);
  const cuts = [...pressedMs, ...repeatedMs, Number.POSITIVE_INFINITY].toSorted((a, b) => a - b);
  for (const { text, givenMs } of lines) {
    const before = heard.at(-1)?.toMs ?? 0;
    const fromMs = Math.max(givenMs, before);
    heard.push({ text, givenMs, fromMs, toMs: fromMs + lastsMs(text) });
    const cutMs = cuts.find((ms) => ms > givenMs) as number;
    const last = heard.at(-1);
    if (last === undefined) continue;
    last.toMs = Math.min(last.toMs, cutMs);
    last.fromMs = Math.min(last.fromMs, last.toMs);
  }
  return heard;
}

/** Pulls in everything and opens a site in a new profile. */
export async function readAloud(url: string): Promise<ReadAloud> {
  const home = mkdtempSync(join(tmpdir(), 'reader-home-'));
  const runtime = join(home, 'run');
  mkdirSync(runtime);
  chmodSync(runtime, 0o700);
  const log = join(home, 'reader.log');
  const screen = await startScreen();
  const children: ChildProcess[] = [];
  const env: NodeJS.ProcessEnv = {
    ...process.env,
    DISPLAY: screen.display,
    HOME: home,
    XDG_RUNTIME_DIR: runtime,
    GNOME_ACCESSIBILITY: '1',
  };
  const startWith = (command: string, args: readonly string[], out: 'ignore' | 'pipe'): ChildProcess => {
    const child = spawn(command, args, { env, stdio: ['ignore', out, 'ignore'], detached: true });
    children.push(child);
    return child;
  };
  const start = (command: string, ...args: readonly string[]): void =>
    void startWith(command, args, 'ignore');
  const close = async (): Promise<void> => {
    for (const { pid } of children.toReversed()) {
      try {
        if (pid !== undefined) process.kill(-pid, 'SIGKILL');
      } catch {
        // It has gone already.
      }
    }
    spawnSync('pkill', ['-f', runtime]);
    screen.stop();
    await setTimeout(200);
    rmSync(home, { recursive: true, force: true, maxRetries: 5 });
  };
  try {
    const bus = startWith('dbus-daemon', ['--session', '--nofork', '--print-address=1'], 'pipe');
    env['DBUS_SESSION_BUS_ADDRESS'] = await firstLine(bus);
    spawnSync('gsettings', ['set', 'org.gnome.desktop.interface', 'toolkit-accessibility', 'true'], { env });
    start(AT_SPI, '--launch-immediately');
    start('openbox');
    start('pulseaudio', ...SILENT_SOUND);
    await setTimeout(1000);
    // A terminal, or the log comes in blocks of some kilobytes.
    start('script', '-qfc', 'orca --debug-file=/dev/tty --replace', log);
    await setTimeout(3000);
    const browser = await puppeteer.launch({
      browser: 'firefox',
      executablePath: commandPath('firefox-esr', 'firefox') ?? '',
      headless: false,
      defaultViewport: null,
      env,
      // Somebody who opens an address is in the page, not in the line where addresses are written.
      args: [url],
      extraPrefsFirefox: { 'accessibility.force_disabled': -1 },
    });
    const page = (await browser.pages()).find((one) => one.url() === url);
    if (page === undefined) throw new Error('the browser has not opened the page');
    const keysMs: number[] = [];
    const key = (verb: string, name: string): void => {
      if (verb !== 'keyup') keysMs.push(Date.now());
      spawnSync('xdotool', [verb, name], { env });
    };
    return {
      page,
      press: (name) => key('key', name),
      hold: (name, isDown) => key(isDown ? 'keydown' : 'keyup', name),
      heard: () => heardOf(readFileSync(log, 'utf8'), keysMs),
      close: async () => {
        await browser.close().catch(() => undefined);
        await close();
      },
    };
  } catch (error) {
    await close();
    throw error;
  }
}

function firstLine(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('exit', () => reject(new Error('the message bus ended')));
    child.stdout?.once('data', (data: Buffer) => resolve(data.toString().trim()));
  });
}
