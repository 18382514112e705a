/** The reducer of the pages: addresses, the way to a first ride, rides that end, settings that hang together. */
import type { KeptResult, RideResult } from '../../src/core/coach/results.ts';
import { describe, expect, it } from 'vitest';
import { parseLevel } from '../../src/core/level/parse.ts';
import type { Level } from '../../src/core/level/schema.ts';
import { BIKES, riderById } from '../../src/core/model/presets.ts';
import { hashOf, parseAddress } from '../../src/state/address.ts';
import { nextLevel, rowsOf } from '../../src/core/coach/ladder.ts';
import { checkAddress, difficultyStepAfter, rideRoad } from '../../src/state/rideLevel.ts';
import { KEY_ACTIONS, type Keys, withKey } from '../../src/core/settings/settings.ts';
import { createStore } from '../../src/state/createStore.ts';
import { initialState, reduce } from '../../src/state/reduce.ts';
import type { Action, State } from '../../src/state/store.ts';
import file from '../../levels/one-pitch-announced.json' with { type: 'json' };
import { sentenceOf } from '../../src/words/problems.ts';

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;

function level(change: Partial<Level>): Level {
  const parsed = parseLevel({ ...file, ...change });
  if (!parsed.ok) throw new Error(parsed.problems.map(sentenceOf).join());
  return parsed.level;
}

const levels = [
  level({ id: 'third', rung: 3, teaches: 'rolling' }),
  level({ id: 'first', rung: 1, teaches: 'cadence' }),
  level({ id: 'second', rung: 2, teaches: 'ring-change' }),
  level({ id: 'small', rung: 1, audience: 'children' }),
  level({ id: 'unplaced', rung: 0 }),
];

const after = (state: State, ...actions: Action[]): State => actions.reduce(reduce, state);
const start = initialState(levels, keys, '');
const riding = after(start, { kind: 'ask-ride', rest: 'first' }, { kind: 'accept-cautions' });
const recording = { checkpoints: ['0'] } as unknown as RideResult['recording'];
const result: RideResult = {
  level: levels[1]!,
  rest: 'first',
  recording,
  trace: { samples: [], events: [], beforePitch: [] },
};

const kept = (levelId: string, total: number, atMs: number): KeptResult => ({
  id: `${levelId} ${atMs}`,
  atMs,
  levelId,
  levelTitle: levelId,
  kind: 'ride',
  bikeId: 'town-1x9',
  total,
  marks: { cadence: total, foresight: total, easing: total, chainLine: null, economy: total },
  passed: total > 60,
});

describe('addresses', () => {
  it.each([
    ['', 'start', ''],
    ['#levels', 'levels', ''],
    ['#ride/two-pitches', 'ride', 'two-pitches'],
    ['#bench/a%2Fb', 'bench', 'a/b'],
    ['#nonsense', 'start', ''],
    ['#ride/%E0%A4%A', 'ride', '%E0%A4%A'],
  ] as const)('%j is %s', (hash, view, rest) => {
    expect(parseAddress(hash)).toEqual({ view, rest });
  });

  it('written and read again they are the same', () => {
    const address = { view: 'bench', rest: 'a b/ü' } as const;
    expect(parseAddress(hashOf(address))).toEqual(address);
  });
});

describe('the first ride', () => {
  it('asks for the cautions first and rides with the tap that confirms them', () => {
    const asked = reduce(start, { kind: 'ask-ride', rest: 'first' });
    expect([asked.view, asked.dialog, asked.waitingRest]).toEqual(['start', 'cautions', 'first']);
    expect([riding.view, riding.dialog, riding.ride?.level.id, riding.ride?.phase]).toEqual([
      'ride',
      null,
      'first',
      'ready',
    ]);
  });

  it('an address of a ride cannot pass them by', () => {
    const opened = initialState(levels, keys, '#ride/first');
    expect([opened.view, opened.dialog]).toEqual(['start', 'cautions']);
  });

  it('closing them begins nothing, and they come again', () => {
    const closed = after(start, { kind: 'ask-ride', rest: 'first' }, { kind: 'close-dialog' });
    expect([closed.view, closed.dialog, closed.cautionsSeen, closed.waitingRest]).toEqual([
      'start',
      null,
      false,
      null,
    ]);
    expect(reduce(closed, { kind: 'ask-ride', rest: 'first' }).dialog).toBe('cautions');
  });

  it('an unknown level leads to the list', () => {
    expect(reduce(start, { kind: 'ask-ride', rest: 'nowhere' }).view).toBe('levels');
  });
});

describe('a ride', () => {
  it('its own address does not begin it anew', () => {
    expect(reduce(riding, { kind: 'address', address: { view: 'ride', rest: 'first' } })).toBe(riding);
  });

  it('asking again is another attempt', () => {
    expect(reduce(riding, { kind: 'ask-ride', rest: 'first' }).ride?.attempt).toBe(
      (riding.ride?.attempt ?? 0) + 1,
    );
  });

  it('finished, it leads to the debrief and is kept', () => {
    const done = after(riding, { kind: 'ride-finished', result }, { kind: 'ride-finished', result });
    expect([done.view, done.last?.level.id, done.doneIds, done.ride?.phase]).toEqual([
      'debrief',
      'first',
      ['first'],
      'finished',
    ]);
    expect(done.last).toMatchObject({ report: null, guess: null, kept: { state: 'saving' } });
  });

  it('what becomes of it reaches its own debrief and no other', () => {
    const done = reduce(riding, { kind: 'ride-finished', result });
    const guessed = reduce(done, { kind: 'after-ride', recording, change: { guess: 'too-late' } });
    expect(guessed.last?.guess).toBe('too-late');
    const other = { ...recording };
    expect(reduce(guessed, { kind: 'after-ride', recording: other, change: { guess: 'too-early' } })).toBe(
      guessed,
    );
  });

  it('watched again it leads back to the same debrief, and counts once', () => {
    const done = reduce(riding, { kind: 'ride-finished', result });
    const watching = reduce(done, { kind: 'watch', fromM: 120 });
    expect([watching.view, watching.ride?.watchFromM, watching.ride?.level.id]).toEqual([
      'ride',
      120,
      'first',
    ]);
    const back = reduce(watching, { kind: 'ride-finished', result: { ...result, rest: 'other' } });
    expect([back.view, back.last]).toEqual(['debrief', done.last]);
  });

  it('there is nothing to watch before the first ride', () => {
    expect(reduce(start, { kind: 'watch', fromM: 0 })).toBe(start);
  });

  it('leaving ends it, and words about it change nothing any more', () => {
    const left = reduce(riding, { kind: 'address', address: { view: 'levels', rest: '' } });
    expect(left.ride).toBeNull();
    expect(reduce(left, { kind: 'ride', shows: { phase: 'paused', countdownS: null } })).toBe(left);
  });

  it('a debrief without a ride is the start page', () => {
    expect(reduce(start, { kind: 'address', address: { view: 'debrief', rest: '' } }).view).toBe('start');
  });
});

describe('the road of a ride', () => {
  it('a check ride is a fresh road without aids, the same for the same seed', () => {
    const address = checkAddress('everyone', 77);
    const road = rideRoad(start, address);
    expect(road?.level.teaches).toBe('check');
    expect(road).toEqual(rideRoad(start, address));
    expect(rideRoad(start, checkAddress('children', 77, 'hub'))?.level.needs).toBe('hub');
    expect(rideRoad(start, 'check-everyone-x')).toBeNull();
    expect(rideRoad(start, 'check-everyone-seat-motor-7')).toBeNull();
  });

  it('two good rides make it steeper, two poor ones gentler, others leave it', () => {
    const level = levels[1]!;
    expect(difficultyStepAfter(level, [kept('first', 99, 1), kept('first', 99, 2)])).toBe(1);
    expect(difficultyStepAfter(level, [kept('first', 5, 1), kept('first', 5, 2)])).toBe(-1);
    expect(difficultyStepAfter(level, [kept('second', 99, 1), kept('second', 99, 2)])).toBe(0);
    const results = [kept('first', 99, 2), kept('first', 99, 1)];
    expect(rideRoad({ levels, results }, 'first')).toMatchObject({ difficultyStep: 1 });
  });
});

describe('the ladder', () => {
  it('stands in order of rungs, with unplaced levels last and the children apart', () => {
    const rows = rowsOf(levels);
    expect(rows.everyone.map(({ id }) => id)).toEqual(['first', 'second', 'third', 'unplaced']);
    expect(rows.children.map(({ id }) => id)).toEqual(['small']);
  });

  it('offers what is not done yet, and the last one for ever', () => {
    expect(nextLevel(levels, [], false, true)?.id).toBe('first');
    expect(nextLevel(levels, ['first'], false, true)?.id).toBe('second');
    expect(nextLevel(levels, ['first', 'second', 'third', 'unplaced'], false, true)?.id).toBe('unplaced');
  });

  it('passes over chainring lessons on a bike with one ring', () => {
    expect(nextLevel(levels, ['first'], false, false)?.id).toBe('third');
  });

  it('offers children their own row', () => {
    expect(nextLevel(levels, [], true, false)?.id).toBe('small');
  });

  it('has nothing to offer without levels', () => {
    expect(nextLevel([], [], false, false)).toBeNull();
  });
});

describe('settings', () => {
  const kids = BIKES.find((bike) => bike.id === 'kids-20-1x7')!;
  const strong = riderById('adult-strong')!;

  it('the rider follows the bike until somebody chooses one', () => {
    const onKids = reduce(start, { kind: 'choose-bike', bike: kids });
    expect(onKids.settings.rider.id).toBe('child-9');
    const chosen = after(start, { kind: 'choose-rider', rider: strong }, { kind: 'choose-bike', bike: kids });
    expect(chosen.settings.rider.id).toBe('adult-strong');
  });

  it('a key that is taken changes hands, and nobody is left without', () => {
    const next = withKey(keys, 'ease', keys.brake[0] as string);
    expect([next.ease, next.brake]).toEqual([keys.brake, keys.ease]);
    const codes = KEY_ACTIONS.flatMap((action) => next[action]);
    expect(new Set(codes).size).toBe(KEY_ACTIONS.length);
  });

  it('a free key replaces the old ones', () => {
    expect(withKey({ ...keys, pause: ['Escape', 'KeyP'] }, 'pause', 'F2').pause).toEqual(['F2']);
  });

  it('setting a key ends the asking', () => {
    const set = after(
      start,
      { kind: 'ask-key', action: 'ease' },
      { kind: 'set-key', action: 'ease', code: 'KeyE' },
    );
    expect([set.keyAsked, set.settings.keys.ease]).toEqual([null, ['KeyE']]);
  });
});

describe('the store', () => {
  it('tells only of changes, and handles what a listener sends afterwards', () => {
    const store = createStore(start);
    const seen: string[] = [];
    const stop = store.subscribe((state) => {
      seen.push(`${state.view} ${String(state.dialog)}`);
      if (state.dialog === 'cautions') store.send({ kind: 'accept-cautions' });
    });
    store.send({ kind: 'ask-ride', rest: 'first' });
    store.send({ kind: 'address', address: { view: 'ride', rest: 'first' } });
    stop();
    store.send({ kind: 'open-dialog', dialog: 'settings' });
    expect(seen).toEqual(['start cautions', 'ride null']);
    expect(store.state().dialog).toBe('settings');
  });
});
