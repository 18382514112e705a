/** Several riders on one device: what is asked of whoever rides, and that no leg that is ridden is lost on any way out. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { RideResult } from '../../../src/core/coach/results.ts';
import { bikeById } from '../../../src/core/model/presets.ts';
import type { Bike } from '../../../src/core/model/types.ts';
import { KEY_ACTIONS, type Keys } from '../../../src/core/settings/settings.ts';
import { lookOfSeat } from '../../../src/app/ride/ridesTogether.ts';
import { lookOf } from '../../../src/app/theme.ts';
import { suitsBike } from '../../../src/core/coach/ladder.ts';
import { twoPage } from '../../../src/features/two/page.tsx';
import { forgetRounds } from '../../../src/features/two/rounds.ts';
import type { TogetherWish } from '../../../src/features/two/services.ts';
import { initialState, reduce } from '../../../src/state/reduce.ts';
import type { State } from '../../../src/state/store.ts';
import { BUNDLED } from '../../core/ride/worlds.ts';
import { words } from '../../../src/words/words.ts';

const say = words('two');

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;
const levels = BUNDLED.map(({ level }) => level);
/** The page only hands it on. */
const result = {} as RideResult;

let root: HTMLElement;
let state: State;
let wishes: TogetherWish[];

const all = (selector: string): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(selector)];
const tap = (selector: string) => act(() => all(selector)[0]?.click());
const wish = (): TogetherWish => wishes.at(-1) as TogetherWish;
const title = (): string | null | undefined => root.querySelector('h1')?.textContent;

async function open(rest = ''): Promise<void> {
  root = document.createElement('div');
  document.body.replaceChildren(root);
  state = reduce(state, { kind: 'address', address: { view: 'two', rest } });
  const page = twoPage(state, () => undefined, {
    async rideTogether(asked) {
      wishes.push(asked);
      return { resume: () => undefined, stop: () => undefined };
    },
    judgeRide: () => Promise.reject(new Error('nobody marks in this test')),
  });
  await act(() => render(page, root));
}

const leave = () => act(() => render(null, root));

async function rideNext(): Promise<void> {
  await tap('[data-gate-ride]');
  await act(() => wish().onFinished(0, result));
}

/** A relay of three whose first leg is ridden: at the gate of the second. */
async function toSecondGate(): Promise<void> {
  await open('relay');
  const road = root.querySelector<HTMLSelectElement>('.two-road select');
  if (road === null) throw new Error('there is no choice of a road');
  road.value = 'three-little-hills';
  await act(() => {
    road.dispatchEvent(new Event('change', { bubbles: true }));
  });
  await tap('[name="two-count"][value="3"]');
  await tap('[data-ride-two]');
  await act(() => wish().onFinished(0, result));
  expect(title()).toBe('Second rider');
}

beforeEach(() => {
  forgetRounds();
  state = initialState(levels, keys, '');
  wishes = [];
});

afterEach(() => {
  render(null, root);
  vi.restoreAllMocks();
});

describe('a relay', () => {
  it('is asked for by its address, on a road that has hills for two', async () => {
    await open('relay');
    expect(all('[name="two-way"]:checked').map((one) => one.getAttribute('value'))).toEqual(['relay']);
    // It is the children's way in, so it is laid out for them, also on a grown-up's device.
    await tap('[data-ride-two]');
    await tap('[data-gate-ride]');
    const { seats, autoEase } = wish();
    expect(seats.map(({ level, bike }) => [level.audience, level.carries, bike.id, autoEase])).toEqual([
      ['children', 'apples', 'kids-20-1x7', true],
    ]);
    await leave();
    await open('relay');
    expect(all('.two-note')).toEqual([]);
  });

  it('goes back to the gate of a leg that failed', async () => {
    await toSecondGate();
    await tap('[data-gate-ride]');
    await act(() => wish().onFailed());
    await tap('[data-to-gate]');
    expect(title()).toBe('Second rider');
  });

  it('shows the legs that are ridden to whoever leaves, at the gate and on the road, and goes on from there', async () => {
    await toSecondGate();
    await tap('[data-leave-two]');
    expect(all('[data-after]')).toHaveLength(1);
    await tap('[data-go-on]');
    await tap('[data-gate-ride]');
    await act(() => wish().onPhase(0, 'paused', null));
    await tap('[data-leave-two]');
    expect(all('[data-after]')).toHaveLength(1);
  });

  it('is found again by whoever comes back to the page, a leg that was broken off at its gate', async () => {
    await toSecondGate();
    await tap('[data-gate-ride]');
    await leave();
    await open();
    expect(title()).toBe('Second rider');
    await rideNext();
    expect(title()).toBe('Third rider');
    await rideNext();
    expect(all('[data-after]')).toHaveLength(3);
    await leave();
    await open();
    expect(all('[data-after]')).toHaveLength(3);
  });

  it('says nobody is still riding when a leg is over', async () => {
    await toSecondGate();
    await tap('[data-gate-ride]');
    await act(() => wish().onPhase(0, 'finished', null));
    expect(root.textContent).not.toContain(say('waiting'));
  });
});

describe('two at once', () => {
  beforeEach(async () => {
    state = reduce(state, { kind: 'set', settings: { bike: bikeById('kids-24-1x8') as Bike } });
    await open();
    await tap('[data-ride-two]');
  });

  it('are told of the other one only while the other one rides', async () => {
    await act(() => wish().onPhase(1, 'riding', null));
    await act(() => wish().onPhase(0, 'finished', null));
    expect(root.textContent).toContain(say('waiting'));
    await act(() => wish().onPhase(1, 'finished', null));
    expect(root.textContent).not.toContain(say('waiting'));
  });

  it('are told that a shorter road waits less where one of them waits long', async () => {
    await act(() => wish().onPhase(0, 'ready', 20));
    expect(root.textContent).not.toContain(say('longWait'));
    await act(() => wish().onPhase(0, 'ready', 62));
    expect(root.textContent).toContain(say('longWait'));
  });

  it('begin on a road for the bike of the device', () => {
    const { level, bike } = wish().seats[0] ?? {};
    expect(level !== undefined && bike !== undefined && suitsBike(level, bike)).toBe(true);
  });
});

describe('two face to face', () => {
  it('have pads whatever is set, and a pause that both can read', async () => {
    vi.spyOn(window, 'matchMedia').mockImplementation(
      (query) => ({ matches: query.includes('any-pointer') }) as MediaQueryList,
    );
    await open();
    await tap('[name="two-way"][value="facing"]');
    await tap('[data-ride-two]');
    expect(wish().needsPads).toBe(true);
    const seat = wish().seats[0];
    const never = { ...lookOf(state), showPads: false };
    expect(seat && lookOfSeat(never, seat, wish()).showPads).toBe(true);
    await act(() => wish().onPhase(0, 'paused', null));
    expect(all('[data-ride-on]')).toHaveLength(2);
    expect(all('[data-across] [data-ride-on]')).toHaveLength(1);
  });
});
