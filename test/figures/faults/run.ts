/**
 * Lets one thing break during one journey and says what became of it: what the page told, whether that is true, whether
 * anything kept is lost, and whether the next journey works once nothing is broken any more.
 */
import type { BrowserContext, Page, Route } from 'playwright-core';
import { NAMES, paintSeldom, type Site } from '../../browser/site.ts';
import { type Device, heldIn, layDown, missingFrom, SPEED } from './device.ts';
import { doByHand, type HandResult } from './hands.ts';
import { breakInside } from './inside.ts';
import { JOURNEYS, NOTHING, type Promises } from './journeys.ts';
import { type Observations, type Observed, WATCHED } from './list.ts';
import { isTrueFor } from './said.ts';
import type { Answer, Fault, How, JourneyName, Outcome, Verdict } from './types.ts';
import { createVisit, Ended, takenAway, type Visit, wasTakenAway } from './visit.ts';

/** Small, so that the pictures of a ride cost little. */
const SCREEN = { width: 480, height: 360 };
const PORTAL = '<!doctype html><title>Sign in</title><p>Welcome to the guest network. Please sign in.</p>';

function answerWith(answer: Answer, file: string): (route: Route) => Promise<void> {
  switch (answer) {
    case 'missing':
      return (route) => route.fulfill({ status: 404, contentType: 'text/plain', body: 'Nothing here.' });
    case 'portal':
      return (route) => route.fulfill({ status: 200, contentType: 'text/html', body: PORTAL });
    case 'throws':
      return (route) =>
        route.fulfill({
          status: 200,
          contentType: file.endsWith('.css') ? 'text/css' : 'text/javascript',
          body: 'throw new Error("broken on purpose");',
        });
    case 'refused':
      return (route) => route.abort('connectionrefused');
    case 'hangs':
      return () => Promise.resolve();
  }
}

interface Opened {
  readonly page: Page;
  /** Errors of the page that nobody caught. */
  readonly uncaught: string[];
  readonly strikes: () => number;
}

/** A browser profile that is used again and again, one page at a time. */
export interface Desk {
  readonly context: BrowserContext;
  readonly site: Site;
  readonly device: Device;
  /** How often what is broken was used since it was last set to nothing. */
  strikes: number;
}

/** Opens a profile. */
export async function openDesk(site: Site, device: Device): Promise<Desk> {
  const context = await site.browser.newContext({
    viewport: SCREEN,
    locale: 'en-IE',
    serviceWorkers: 'block',
  });
  const desk: Desk = { context, site, device, strikes: 0 };
  context.setDefaultTimeout(60_000);
  await context.exposeFunction('struck', () => {
    desk.strikes += 1;
  });
  await context.addInitScript(NAMES);
  await context.addInitScript(paintSeldom);
  return desk;
}

/** A used device with one page on it, in which one thing is broken. */
async function open(desk: Desk, how: How, speed: number): Promise<Opened> {
  const { context, site, device } = desk;
  await context.setOffline(false);
  await layDown(context, site.url, device.state);
  desk.strikes = 0;
  const page = await context.newPage();
  const uncaught: string[] = [];
  page.on('pageerror', (error) => uncaught.push(error.message));
  if (how.kind === 'file')
    await page.route(`**/${how.file}`, async (route) => {
      desk.strikes += 1;
      await answerWith(how.answer, how.file)(route);
    });
  await page.addInitScript((ratio) => Object.assign(window, { __rideTestSpeed: ratio }), speed);
  await page.addInitScript(breakInside, how.kind === 'page' ? how.fault : null);
  return { page, uncaught, strikes: () => desk.strikes };
}

/** Plays a journey to its end, or to where it ends. */
async function play(
  visit: Visit,
  fault: Fault,
  device: Device,
  url: string,
  note: (p: Promises) => void,
): Promise<Ended | null> {
  const journey = JOURNEYS[fault.journey];
  let promises = NOTHING;
  const bag = { ...device.bag, mark: fault.name.slice(0, 40).trim() };
  try {
    await visit.page.goto(url + journey.from, { waitUntil: 'commit' }).catch(() => undefined);
    await journey.go(visit, bag, (more) => {
      promises = { ...promises, ...more };
      note(promises);
    });
    return null;
  } catch (error) {
    if (error instanceof Ended) return error;
    if (visit.page.isClosed() || /crashed|has been closed/.test(String(error)))
      return new Ended('told', '\u0000');
    throw error;
  }
}

/** The same again on the same device, with nothing broken: it must go as it always does. */
async function next(
  context: BrowserContext,
  url: string,
  fault: Fault,
  device: Device,
  gone: boolean,
): Promise<string | null> {
  const page = await context.newPage();
  const problems: string[] = [];
  page.on('pageerror', (error) => problems.push(error.message));
  await page.addInitScript((ratio) => Object.assign(window, { __rideTestSpeed: ratio }), SPEED);
  await page.addInitScript(breakInside, null);
  const visit = createVisit(page, () => Promise.resolve());
  const again: Fault = gone || fault.journey === 'delete' ? { ...fault, journey: 'tour' } : fault;
  const ended = await play(visit, { ...again, name: `again ${fault.name}` }, device, url, () => undefined);
  await page.close();
  if (ended !== null) return `${ended.verdict}: ${ended.message}`;
  return problems[0] ?? null;
}

/** Whether what is broken may still come, as on a slow network. */
function canStillCome(how: How): boolean {
  if (how.kind === 'file') return how.answer === 'hangs';
  if (how.kind === 'hand') return how.hand === 'slow-processor';
  return how.fault.what === 'call' && how.fault.misdeed === 'never-settles';
}

/** What one fault comes to. */
export async function suffer(desk: Desk, fault: Fault): Promise<Outcome> {
  const midRide =
    fault.how.kind === 'hand' ? ['riding', 'acting'].includes(fault.how.at) : /riding/.test(fault.name);
  const { context, site, device } = desk;
  const opened = await open(desk, fault.how, midRide ? 8 : SPEED);
  const { page, uncaught } = opened;
  const outcome = (verdict: Verdict, detail: string): Outcome => ({ fault, verdict, detail });
  try {
    let promised = NOTHING;
    let hand: HandResult = { happened: false, taken: false };
    const visit = createVisit(page, async (moment) => {
      if (fault.how.kind !== 'hand' || fault.how.at !== moment || hand.happened) return;
      hand = { ...hand, happened: true };
      hand = await doByHand(fault.how.hand, { page, context, url: site.url, fault });
      if (!hand.taken || page.isClosed()) return;
      // Loaded anew: what was open or half done is closed, and something to go on with is there.
      await visit.reach('the page, loaded anew', 'h1');
      throw takenAway();
    });
    const ended = await play(visit, fault, device, site.url, (now) => {
      promised = now;
    });
    if (opened.strikes() === 0 && !hand.happened)
      return ended === null || (ended.verdict === 'told' && wasTakenAway(ended))
        ? outcome('did not happen', '')
        : outcome('stuck', `without the fault: ${ended.message}`);
    const bad = ended !== null && !['told', 'waits'].includes(ended.verdict) ? ended : null;
    if (bad !== null) return outcome(bad.verdict, bad.message);
    // What will never come must not be waited for.
    if (ended?.verdict === 'waits' && !canStillCome(fault.how)) return outcome('stuck', ended.message);
    const said = [...visit.told];
    if (uncaught.length > 0 && said.length === 0) return outcome('uncaught error', uncaught[0] ?? '');
    const untrue = said.find((one) => !isTrueFor(one, fault.cause));
    if (untrue !== undefined) return outcome('false sentence', untrue);
    if (!page.isClosed()) await page.close();
    await context.setOffline(false);
    const missing = missingFrom(await heldIn(context, site.url), device.held, promised);
    if (missing.length > 0) return outcome(promised.gone ? 'false sentence' : 'lost', missing.join(', '));
    const after = await next(context, site.url, fault, device, promised.gone);
    if (after !== null) return outcome('next journey fails', after);
    if (ended?.verdict === 'waits') return outcome('waits', ended.message);
    return said.length > 0 ? outcome('told', said.join(' · ')) : outcome('unharmed', '');
  } catch (error) {
    // What was to be done to the page could not be done: it did not answer.
    return outcome('stuck', String(error).slice(0, 200));
  } finally {
    for (const one of context.pages()) await one.close();
  }
}

/** Plays each journey once with nothing broken and notes what it asks the browser and the server for. */
export async function observe(
  desk: Desk,
  journeys = Object.keys(JOURNEYS) as readonly JourneyName[],
): Promise<Observations> {
  const all = new Map<JourneyName, Observed>();
  for (const journey of journeys) {
    const how: How = { kind: 'page', fault: { what: 'count', paths: WATCHED } };
    const fault: Fault = { name: 'nothing', group: '', journey, cause: 'looks', how };
    const { page, uncaught } = await open(desk, how, SPEED);
    const files = new Set<string>();
    page.on('request', (request) =>
      files.add(
        request
          .url()
          .replace(desk.site.url, '')
          .replace(/[?#].*/, ''),
      ),
    );
    const visit = createVisit(page, () => Promise.resolve());
    const ended = await play(visit, fault, desk.device, desk.site.url, () => undefined);
    if (ended !== null) throw new Error(`${journey} does not work: ${ended.verdict}: ${ended.message}`);
    if (uncaught.length > 0) throw new Error(`${journey} has errors: ${uncaught.join('; ')}`);
    all.set(journey, { calls: await page.evaluate(() => window.calls), files: [...files] });
    await page.close();
  }
  return all;
}
