/**
 * Opens the built site in a real browser for a test: one server, one browser with an empty profile,
 * and pages that remember everything that went wrong in them. What a page should look like is the
 * business of the tests.
 */
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { chromium } from 'playwright-core';
import { siteHeaders } from '../../.ci/policy.mjs';
import { findChromium } from './chromium.ts';
import type { Bend, ServedRequest } from './server.ts';
import { serveFolder } from './server.ts';

/** Where `npm run build` leaves the site. */
export const builtSiteFolder = fileURLToPath(new URL('../../dist', import.meta.url));

/**
 * What the browser is started without. A list replaces the one playwright gives, so its names come first. The last two
 * are pages of Chromium's own behind its address line: it would load them again with every window, for more than the
 * page itself takes.
 */
const withoutFeatures = [
  'AvoidUnnecessaryBeforeUnloadCheckSync',
  'DestroyProfileOnBrowserClose',
  'HttpsUpgrades',
  'HttpsFirstBalancedModeAutoEnable',
  'LensOverlay',
  'MediaRouter',
  'PaintHolding',
  'ThirdPartyStoragePartitioning',
  'AvoidCorsURLLoaderRestartOnRedirect',
  'TcpPortRandomizationWin',
  'OptimizationHints',
  'NetworkTimeServiceQuerying',
  'AimEnabled',
  'PreconnectToSearch',
  'WebUIOmniboxPopup',
  'WebUIOmniboxAimPopup',
];

/** How every test starts Chromium: without a graphics processor and without errands of its own. */
export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  `--disable-features=${withoutFeatures.join(',')}`,
];

/** For a browser with these rules there is only this computer, so a test can neither reach another host nor depend on one. */
export const onlyThisComputer = (known = ''): string =>
  `--host-resolver-rules=${known}MAP * ~NOTFOUND, EXCLUDE 127.0.0.1`;

/**
 * Starts a browser for which there is only this computer.
 * @param names under which it knows this computer besides its number
 */
export function launchBrowser(names: readonly string[] = []): Promise<Browser> {
  const known = names.map((name) => `MAP ${name} 127.0.0.1, `).join('');
  return chromium.launch({
    executablePath: findChromium(),
    headless: true,
    args: [...browserArguments, onlyThisComputer(known)],
  });
}

/** What kind of screen to open. */
export interface Screen {
  /** Width and height of the page (CSS pixels). */
  readonly width: number;
  readonly height: number;
  /** A finger instead of a mouse. */
  readonly touch?: boolean;
  /**
   * Whether the worker for journeys without a network is there. It fetches the whole site in the background of every
   * visit, which only those wait for who test it.
   */
  readonly offline?: boolean;
  /**
   * How often the page is painted: `seldom`, twenty times a second, with still drawings and without sound, unless
   * something else is said; `even`, each picture the browser offers, told apart by exactly a sixtieth of a second however long it took;
   * `real`, as it comes.
   */
  readonly painting?: 'seldom' | 'even' | 'real';
  /** Where to go, relative to the site: `''`, `'?seed=3'`, `'#about'`. */
  readonly address?: string;
  /** Anything else playwright can pretend, such as `reducedMotion` or `colorScheme`. */
  readonly context?: BrowserContextOptions;
}

/** A page that is open. */
export interface OpenPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors, errors nobody caught and requests to other hosts, in order; grows while the page lives. */
  readonly problems: readonly string[];
  /** Every address the page asked for, on any host. */
  readonly addresses: readonly string[];
  readonly close: () => Promise<void>;
}

/** The site, served and ready to be looked at. */
export interface Site {
  readonly url: string;
  readonly browser: Browser;
  /** What the server was asked, by all pages together. */
  readonly requests: readonly ServedRequest[];
  readonly openPage: (screen: Screen) => Promise<OpenPage>;
  /** Stops only the server, as a lost network would. */
  readonly stopServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}

function watch(context: BrowserContext, siteUrl: string, problems: string[], addresses: string[]): void {
  const siteHost = new URL(siteUrl).host;
  const note = (address: string): void => {
    addresses.push(address);
    const { protocol, host } = new URL(address);
    if (!['data:', 'blob:', 'about:'].includes(protocol) && host !== siteHost) {
      problems.push(`request to another host: ${address}`);
    }
  };
  context.on('request', (request) => note(request.url()));
  context.on('console', (message) => {
    if (message.type() === 'error') problems.push(`console: ${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => {
    problems.push(`uncaught: ${error.error().message}`);
  });
  context.on('page', (page) => {
    page.on('websocket', (socket) => note(socket.url()));
    page.on('crash', () => problems.push('the page crashed'));
  });
}

/** What compiles functions for the browser lets them tell their names to this, which is not there. */
export const NAMES = 'globalThis.__name = (one) => one';

/**
 * Twenty pictures a second, as on a slow tablet, nothing that moves by itself within a drawing, and a loudspeaker that
 * stays asleep, as before anybody has touched the page: painting without a graphics processor and mixing what nobody
 * hears would take all of a small machine, and tests beside each other would ride late.
 */
export function paintSeldom(): void {
  const Loudspeaker = window.AudioContext;
  window.AudioContext = class extends Loudspeaker {
    constructor(options?: AudioContextOptions) {
      super(options);
      void this.suspend();
    }
    override resume(): Promise<void> {
      return Promise.resolve();
    }
  };
  const still = new CSSStyleSheet();
  still.replaceSync('svg * { animation: none !important }');
  document.adoptedStyleSheets = [still];
  const PAUSE_MS = 40;
  const ask = window.requestAnimationFrame.bind(window);
  // Taken now: tests break what the page uses later.
  const later = window.setTimeout.bind(window);
  const waiting = new Map<number, FrameRequestCallback>();
  let newest = 0;
  const draw = (timeMs: number): void => {
    const now = [...waiting.values()];
    waiting.clear();
    for (const one of now) {
      try {
        one(timeMs);
      } catch (error) {
        window.reportError(error);
      }
    }
  };
  window.requestAnimationFrame = (one) => {
    if (waiting.size === 0) later(() => ask(draw), PAUSE_MS);
    newest += 1;
    waiting.set(newest, one);
    return newest;
  };
  window.cancelAnimationFrame = (id) => {
    waiting.delete(id);
  };
}

/** Pictures a sixtieth of a second apart by their own clock: what one costs can be told on a machine with other work. */
function paintEvenly(): void {
  const ask = window.requestAnimationFrame.bind(window);
  let shown = 0;
  let seenMs = -1;
  window.requestAnimationFrame = (one) =>
    ask((timeMs) => {
      if (timeMs !== seenMs) shown += 1;
      seenMs = timeMs;
      one((shown * 1000) / 60);
    });
}

/** Opens a page of a site with an empty profile of its own. */
export async function openPage(browser: Browser, siteUrl: string, screen: Screen): Promise<OpenPage> {
  const touch = screen.touch ?? false;
  const context = await browser.newContext({
    viewport: { width: screen.width, height: screen.height },
    hasTouch: touch,
    serviceWorkers: screen.offline === true ? 'allow' : 'block',
    isMobile: touch,
    // English, in kilometres.
    locale: 'en-IE',
    ...screen.context,
  });
  const problems: string[] = [];
  const addresses: string[] = [];
  watch(context, siteUrl, problems, addresses);
  // On a busy machine what is waited for comes late, and no test is about how late.
  context.setDefaultTimeout(120_000);
  await context.addInitScript(NAMES);
  const { painting = 'seldom' } = screen;
  if (painting !== 'real') await context.addInitScript(painting === 'even' ? paintEvenly : paintSeldom);
  const page = await context.newPage();
  await page.goto(new URL(screen.address ?? '', siteUrl).href, { waitUntil: 'load' });
  return { page, context, problems, addresses, close: () => context.close() };
}

/**
 * Serves the site and starts a browser; close it in `afterAll`.
 * @param folder built files, `dist` unless a test brings its own
 * @param under path of the site on its server, beginning and ending with a slash
 * @param headers sent with every answer; those of the built site belong to no other
 * @param bend how a broken host answers instead
 */
export async function openSite(
  folder = builtSiteFolder,
  under = '/',
  headers: Readonly<Record<string, string>> = folder === builtSiteFolder ? siteHeaders : {},
  bend?: Bend,
): Promise<Site> {
  const server = await serveFolder(folder, under, headers, bend);
  const browser = await launchBrowser().catch(async (cause: unknown) => {
    await server.close();
    throw cause;
  });
  return {
    url: server.url,
    browser,
    requests: server.requests,
    openPage: (screen) => openPage(browser, server.url, screen),
    stopServer: server.close,
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
