/** What the pages that carry things say while their owner is on its way, when it cannot be fetched, and when it comes later. */
import { render } from 'preact';
import { describe, expect, it } from 'vitest';
import { KEY_ACTIONS, type Keys } from '../../src/core/settings/settings.ts';
import type { Services } from '../../src/app/services.ts';
import { initialState } from '../../src/state/reduce.ts';
import { collectPage, joinPage } from '../../src/app/carryPages.tsx';
import { ClubStorePage } from '../../src/app/storePages.tsx';
import { words } from '../../src/words/words.ts';
import { noServices } from './noServices.ts';
import { rootForTests } from '../ui/rootForTests.ts';

const say = words('clinic');

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;
const state = initialState([], keys, '');
const nobody = (): Promise<never> => Promise.reject(new Error('the network is gone'));
const without: Services = { ...noServices, clinic: nobody };
const root = rootForTests();

const said = (): string => root.querySelector('output')?.textContent ?? '';

describe('a page whose owner cannot be fetched', () => {
  it.each([
    ['a plan is joined', () => joinPage(state, () => undefined, without)],
    ['rides came by link', () => collectPage(state, () => undefined, without)],
    ["a club's own store", () => <ClubStorePage services={without} place="store" />],
  ])('says so, and what to do: %s', async (_, page) => {
    render(page(), root);
    expect(said()).toBe(say('opening'));
    await expect.poll(said).toBe(say('openFailed'));
  });

  it('asks again when a person wants it, and says meanwhile that it is on its way', async () => {
    let times = 0;
    const clinic = (): Promise<never> => {
      times += 1;
      return times === 1 ? nobody() : new Promise(() => undefined);
    };
    render(
      joinPage(state, () => undefined, { ...noServices, clinic }),
      root,
    );
    await expect.poll(said).toBe(say('openFailed'));
    root.querySelector<HTMLElement>('[data-fetch-again]')?.click();
    await expect.poll(() => [times, said()]).toEqual([2, say('opening')]);
  });
});
