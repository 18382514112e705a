/**
 * The browser engines the game must run in, each behind the same three calls: open an address, evaluate an
 * expression of the page, close. What is looked at in them is written in the tests.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import puppeteer from 'puppeteer-core';
import { findChromium, thisComputer } from '../browser/chromium.ts';
import { browserArguments } from '../browser/site.ts';

/** A page in a running engine. */
export interface EnginePage {
  open(url: string): Promise<void>;
  /** Value of an expression, which may be a promise; it must survive JSON. */
  evaluate(expression: string): Promise<unknown>;
  close(): Promise<void>;
}

/** An engine that may or may not be on this computer. */
export interface Engine {
  readonly name: string;
  /** What is missing here, as a sentence, or null. */
  readonly missing: string | null;
  readonly start: () => Promise<EnginePage>;
}

const SCREEN = { width: 800, height: 500 };
/** Longest wait for one answer of a driver (ms). */
const PATIENCE_MS = 100_000;

/** Path of an installed command, or null. */
export function commandPath(...names: readonly string[]): string | null {
  const folders = (process.env['PATH'] ?? '').split(':');
  const places = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return places.find((place) => thisComputer().isProgram(place)) ?? null;
}

async function startChromium(): Promise<EnginePage> {
  const browser = await chromium.launch({ executablePath: findChromium(), args: browserArguments });
  const page = await browser.newPage({ viewport: SCREEN });
  return {
    open: async (url) => void (await page.goto(url)),
    evaluate: (expression) => page.evaluate(expression),
    close: () => browser.close(),
  };
}

async function startFirefox(executablePath: string): Promise<EnginePage> {
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath,
    headless: true,
    defaultViewport: SCREEN,
    protocolTimeout: PATIENCE_MS,
  });
  const page = await browser.newPage();
  return {
    open: async (url) => void (await page.goto(url)),
    evaluate: (expression) => page.evaluate(expression),
    close: () => browser.close(),
  };
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** Where Debian puts the small browser that the WebKit driver starts. */
function miniBrowser(): string | null {
  for (const machine of existsSync('/usr/lib') ? readdirSync('/usr/lib') : []) {
    for (const version of ['webkit2gtk-4.1', 'webkit2gtk-4.0']) {
      const file = join('/usr/lib', machine, version, 'MiniBrowser');
      if (existsSync(file)) return file;
    }
  }
  return null;
}

/** A screen in memory; its number is chosen by itself and told on a pipe. */
export async function startScreen(): Promise<{ readonly display: string; readonly stop: () => void }> {
  const server = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1280x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    server.once('error', reject);
    server.once('exit', (code) => reject(new Error(`Xvfb ended with ${code}`)));
    server.stdio[3]?.once('data', (data: Buffer) => resolve(data.toString().trim()));
  });
  return { display: `:${number}`, stop: () => server.kill() };
}

/** One question of the WebDriver protocol. */
async function ask(address: string, method: string, body?: unknown): Promise<unknown> {
  const answer = await fetch(address, {
    method,
    signal: AbortSignal.timeout(PATIENCE_MS),
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const { value } = (await answer.json()) as { value: unknown };
  if (!answer.ok) throw new Error(JSON.stringify(value));
  return value;
}

async function untilAnswering(address: string): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    const up = await ask(`${address}/status`, 'GET').then(
      () => true,
      () => false,
    );
    if (up) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('the WebKit driver does not answer');
}

async function startWebKit(driverPath: string, binary: string): Promise<EnginePage> {
  const screen = await startScreen();
  const home = mkdtempSync(join(tmpdir(), 'webkit-home-'));
  const port = await freePort();
  const address = `http://127.0.0.1:${port}`;
  const driver = spawn(driverPath, [`--port=${port}`], {
    stdio: 'ignore',
    env: { ...process.env, DISPLAY: screen.display, HOME: home, XDG_RUNTIME_DIR: home },
  });
  const stop = (): void => {
    driver.kill();
    screen.stop();
    rmSync(home, { recursive: true, force: true });
  };
  try {
    await untilAnswering(address);
    const browserOptions = { binary, args: ['--automation'] };
    const capabilities = { alwaysMatch: { 'webkitgtk:browserOptions': browserOptions } };
    const made = (await ask(`${address}/session`, 'POST', { capabilities })) as { sessionId: string };
    const session = `${address}/session/${made.sessionId}`;
    await ask(`${session}/timeouts`, 'POST', { script: PATIENCE_MS, pageLoad: PATIENCE_MS });
    await ask(`${session}/window/rect`, 'POST', SCREEN);
    return {
      open: async (url) => void (await ask(`${session}/url`, 'POST', { url })),
      evaluate: (expression) =>
        ask(`${session}/execute/async`, 'POST', {
          script: `const done = arguments[arguments.length - 1]; Promise.resolve(${expression}).then(done);`,
          args: [],
        }),
      close: async () => {
        await ask(session, 'DELETE').catch(() => undefined);
        stop();
      },
    };
  } catch (error) {
    stop();
    throw error;
  }
}

/** All engines, whether they are here or not. */
export function engines(): readonly Engine[] {
  const firefox = commandPath('firefox-esr', 'firefox');
  const webKitDriver = commandPath('WebKitWebDriver');
  const binary = miniBrowser();
  const hasScreen = commandPath('Xvfb') !== null;
  const hasWebKit = webKitDriver !== null && binary !== null && hasScreen;
  return [
    { name: 'Chromium', missing: null, start: startChromium },
    {
      name: 'Firefox',
      missing: firefox === null ? 'Firefox is not installed (Debian: firefox-esr); it is left out.' : null,
      start: () => startFirefox(firefox ?? ''),
    },
    {
      name: 'WebKitGTK',
      missing: hasWebKit
        ? null
        : 'WebKitGTK is not installed (Debian: webkit2gtk-driver and xvfb); it is left out.',
      start: () => startWebKit(webKitDriver ?? '', binary ?? ''),
    },
  ];
}
