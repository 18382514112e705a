/** Rides from before the legs of the game changed: they keep their marks, and it is said why they go no further. */
import { render } from 'preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createStore } from '../../../src/state/createStore.ts';
import { bundledLevels } from '../../../src/app/levels.ts';
import { joinKeeping } from '../../../src/app/device/persistence.ts';
import { joinJudging } from '../../../src/app/device/scoring.ts';
import { initialState } from '../../../src/state/reduce.ts';
import type { UnfinishedRide } from '../../../src/state/unfinished.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { parseRecording, PHYSICS_VERSION, physicsOf } from '../../../src/core/ride/recording.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { ProgressPage } from '../../../src/features/progress/page.tsx';
import { UnfinishedOffer } from '../../../src/features/start/unfinishedRide.tsx';
import { createFormat } from '../../../src/words/format.ts';
import type { SavedRide } from '../../../src/storage/types.ts';
import { rideLike, sample } from '../../storage/given.ts';
import { noServices } from '../noServices.ts';

const kept = sample('rides', 2) as SavedRide;
let root: HTMLElement;

beforeEach(() => {
  localStorage.clear();
  root = document.body.appendChild(document.createElement('div'));
});
afterEach(() => {
  render(null, root);
  root.remove();
});

async function keeping() {
  const store = createStore(initialState(bundledLevels(), DEFAULT_KEYS, ''));
  const joined = joinKeeping(store, DEFAULT_KEYS);
  const storage = await joined.storage;
  await expect.poll(() => store.state().keeping).not.toBeNull();
  return { store, joined, storage };
}

function showProgress(state: ReturnType<typeof initialState>): void {
  render(
    <ProgressPage
      rides={state.results}
      unmarked={state.unmarked}
      kept={null}
      langOf={() => undefined}
      secondsOf={() => 60}
      onCheckRide={() => undefined}
      format={createFormat('metric')}
    />,
    root,
  );
}

describe('a kept ride of the first version', () => {
  it('is a recording of the first physics, which new ones are not', () => {
    const read = parseRecording(kept.recording);
    if (!read.ok) throw new Error(read.code);
    expect(physicsOf(read.recording)).toBe('1');
    expect(PHYSICS_VERSION).not.toBe('1');
  });

  it('keeps the marks it got; the progress page says once that it cannot be ridden again, and compares it with nothing', async () => {
    const { store, joined, storage } = await keeping();
    await storage.saveRide(rideLike('first-check'));
    await storage.saveRide(rideLike('second-check'));
    await joined.refresh();
    expect(store.state().results.map(({ total, passed, older }) => ({ total, passed, older }))).toEqual(
      Array.from({ length: 2 }, () => ({ total: kept.total, passed: false, older: true })),
    );
    showProgress(store.state());
    const [said, ...more] = root.querySelectorAll('[data-older]');
    expect(more).toEqual([]);
    expect(said?.textContent).toContain('2 rides were ridden before the legs of the game changed');
    expect(said?.textContent).toContain('keep the marks they got');
    expect(root.textContent).toContain('No check ride yet');
  });

  it('that never got marks is not ridden again by other legs, and says why', async () => {
    const { store, joined, storage } = await keeping();
    const { marks } = kept;
    const none = Object.fromEntries(Object.keys(marks).map((name) => [name, null])) as typeof marks;
    await storage.saveRide(
      rideLike('waiting', {
        standing: 'to-mark',
        total: null,
        rulesVersion: null,
        marks: none,
        passed: false,
      }),
    );
    await joinJudging(store, joined, (error) => {
      throw error;
    }).markWaiting();
    await joined.refresh();
    expect(store.state().results).toEqual([]);
    expect(store.state().unmarked).toMatchObject([{ id: 'waiting', standing: 'older' }]);
    showProgress(store.state());
    expect(root.querySelector('[data-standing="older"]')?.textContent).toContain(
      'before the legs of the game changed',
    );
  });
});

describe('a ride that broke off under the first version', () => {
  const ride: UnfinishedRide = {
    id: 'broken-off',
    atMs: 0,
    rest: kept.levelId,
    level: kept.level as Level,
    turn: null,
    physicsVersion: '1',
    partCount: 1,
    recording: kept.recording,
  };
  const offer = (rides: readonly UnfinishedRide[], services = noServices): void =>
    render(<UnfinishedOffer {...{ rides, services }} levels={[]} send={() => undefined} />, root);

  it('is not offered to go on, says why, and can be kept', async () => {
    const { joined, storage } = await keeping();
    const services = {
      ...noServices,
      keepUnfinished: async (one: UnfinishedRide) => {
        const answer = await joined.keepUnfinished(one);
        return { ok: answer.state === 'saved', sentence: answer.state };
      },
    };
    offer([ride], services);
    expect(root.querySelector('[data-go-on]')).toBeNull();
    expect(root.querySelector('[data-older-legs]')?.textContent).toContain(
      'before the legs of the game changed',
    );
    root.querySelector<HTMLElement>('[data-keep-unfinished]')?.click();
    await expect.poll(async () => (await storage.listRides()).length).toBe(1);
    expect((await storage.listRides())[0]).toMatchObject({ standing: 'unfinished', physicsVersion: '1' });
  });

  it('while one of the present version goes on and says nothing', () => {
    offer([{ ...ride, physicsVersion: PHYSICS_VERSION }]);
    expect(root.querySelector('[data-go-on]')).not.toBeNull();
    expect(root.querySelector('[data-older-legs]')).toBeNull();
  });
});
