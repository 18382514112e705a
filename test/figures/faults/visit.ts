/**
 * A person in front of the game: waits for what should come next, and looks at what the page says while it does not
 * come. Throws `Ended` where the journey cannot go on.
 */
import type { Page } from 'playwright-core';
import { isTold, nothingCame, troubleIn, waitingIn } from './said.ts';
import type { Moment, Verdict } from './types.ts';

/** The journey ended before its end, or something is wrong with it. */
export class Ended extends Error {
  readonly verdict: Verdict;

  constructor(verdict: Verdict, detail: string) {
    super(detail);
    this.verdict = verdict;
  }
}

/** What a person could see at one moment. */
interface Look {
  readonly text: string;
  readonly found: number;
  readonly view: string;
  /** Changes as long as the ride goes on. */
  readonly ride: string;
  readonly asksToRideOn: boolean;
  readonly ticks: number;
  readonly ways: number;
}

/** Longest time something may take: two silences of a worker and a little (ticks of 50 ms). */
const PATIENCE_TICKS = 900;
/** A ride shows another distance several times a second; this is a long time without one. */
const FROZEN_TICKS = 110;
/** A sentence may be told first and things go well all the same (ticks). */
const AFTER_TOLD_TICKS = 40;
const LOOK_EVERY_MS = 60;
/** A page with fewer letters shows nothing (the sentence that nothing could be loaded is longer). */
const WHITE_BELOW_LETTERS = 25;

export interface Visit {
  readonly page: Page;
  /** Everything that was told as trouble, in order, once each. */
  readonly told: string[];
  /** Waits until one of these is there; answers with its number. */
  reach(what: string, ...selectors: readonly string[]): Promise<number>;
  click(selector: string): Promise<void>;
  /** Tells whoever breaks things how far the journey has come. */
  at(moment: Moment): Promise<void>;
  /** Follows an address within the page. */
  goTo(hash: string): Promise<void>;
}

const LOST = '\u0000';

function lookAt(page: Page, selectors: readonly string[]): Promise<Look> {
  return page.evaluate((wanted) => {
    const { body } = document;
    const hud = [...document.querySelectorAll('[data-hud="distance"], [data-countdown]')];
    const visible = (one: Element): boolean => one.getClientRects().length > 0;
    return {
      text: body.innerText,
      found: wanted.findIndex((one) => document.querySelector(one) !== null),
      view: body.dataset['view'] ?? '',
      ride: `${body.dataset['rideState'] ?? ''} ${hud.map((one) => one.textContent).join(' ')}`,
      asksToRideOn: document.querySelector('[data-ride-on]') !== null,
      ticks: window.pageTicks,
      ways: [...document.querySelectorAll('a[href], button')].filter(visible).length,
    };
  }, selectors);
}

/** Looks, also while the page is being loaded anew. */
async function look(page: Page, selectors: readonly string[]): Promise<Look | null> {
  try {
    return await lookAt(page, selectors);
  } catch (error) {
    if (page.isClosed() || /crashed|closed/i.test(String(error))) throw new Ended('told', LOST);
    return null;
  }
}

/** @param onMoment does what is done from outside, before the journey goes on */
export function createVisit(page: Page, onMoment: (moment: Moment) => Promise<void>): Visit {
  const told: string[] = [];
  const note = (sentence: string): void => {
    if (!told.includes(sentence)) told.push(sentence);
  };
  const judge = (now: Look, since: number, what: string): void => {
    const trouble = troubleIn(now.text);
    if (trouble !== null) note(trouble);
    const passed = now.ticks - since;
    if (trouble !== null && passed > AFTER_TOLD_TICKS) throw new Ended('told', trouble);
    if (passed <= PATIENCE_TICKS) return;
    if (now.text.trim().length < WHITE_BELOW_LETTERS) throw new Ended('white page', `${what}: ${now.text}`);
    const nothing = nothingCame(now.text);
    if (nothing !== null) {
      note(nothing);
      throw new Ended('told', nothing);
    }
    const waiting = waitingIn(now.text);
    if (waiting !== null && now.ways > 0) throw new Ended('waits', waiting);
    throw new Ended('stuck', `${what}: ${now.text.replaceAll(/\s+/g, ' ').slice(0, 160)}`);
  };
  const reach = async (what: string, ...selectors: readonly string[]): Promise<number> => {
    let since: number | null = null;
    let ride = '';
    let rideSince = 0;
    let asked = 0;
    let blind = 0;
    for (;;) {
      const now = await look(page, selectors);
      if (now === null) {
        blind += 1;
        if (blind > 200) throw new Ended('stuck', `${what}: the page does not answer`);
      } else {
        if (now.found >= 0) return now.found;
        // A page that was loaded anew counts from nothing.
        if (since === null || now.ticks < since) since = now.ticks;
        if (now.asksToRideOn && now.ticks - asked > 20) {
          asked = now.ticks;
          await page
            .locator('[data-ride-on]')
            .first()
            .click({ timeout: 1000 })
            .catch(() => undefined);
        }
        if (now.view === 'ride' && now.ride !== ride) {
          ride = now.ride;
          rideSince = now.ticks;
          since = now.ticks;
        }
        if (now.view === 'ride' && ride.startsWith('riding') && now.ticks - rideSince > FROZEN_TICKS)
          if (!isTold(now.text) && !now.asksToRideOn) throw new Ended('frozen ride', `${what}: ${ride}`);
        judge(now, since, what);
      }
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
    }
  };
  return {
    page,
    told,
    reach,
    async click(selector) {
      await reach(selector, selector);
      await page
        .locator(selector)
        .first()
        .click({ timeout: 40_000 })
        .catch(async (error: unknown) => {
          // What lies over the button may say why.
          const now = await look(page, []);
          const trouble = now === null ? null : troubleIn(now.text);
          if (trouble !== null) throw new Ended('told', trouble);
          throw new Ended('stuck', `${selector} cannot be clicked: ${String(error).slice(0, 120)}`);
        });
    },
    async at(moment) {
      if (page.isClosed()) throw new Ended('told', LOST);
      await page
        .evaluate((now) => {
          window.faultMoment = now;
        }, moment)
        .catch(() => undefined);
      await onMoment(moment);
    },
    async goTo(hash) {
      await page.evaluate((to) => {
        location.hash = to;
      }, hash);
    },
  };
}

/** The journey ends here because its page was taken away, which the person knows: they did it, or saw it. */
export const takenAway = (): Ended => new Ended('told', LOST);
export const wasTakenAway = (ended: Ended): boolean => ended.message === LOST;
