/**
 * Handing a device round: nobody is forgotten, nobody rides too often, taking back restores exactly, and
 * the state survives being written down at any moment. Random sequences of actions find what examples miss.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  takeTurn,
  isDone,
  nextUp,
  refusalOf,
  type QueueAction,
  startQueue,
  turnOf,
  turnsLeft,
} from '../../../src/core/group/turnQueue.ts';
import { parseRound, type TurnQueue } from '../../../src/core/group/roundFile.ts';
import { planWith } from './rides.ts';

const NAMES = ['red-fox', 'blue-owl', 'grey-hare', 'white-wolf', '~Ö'] as const;
const play = (round: TurnQueue, ...actions: readonly QueueAction[]): TurnQueue =>
  actions.reduce(takeTurn, round);
const add = (...nicknames: readonly string[]): QueueAction[] =>
  nicknames.map((nickname) => ({ kind: 'add', nickname }));
const ride = (nickname: string, recordId: string): QueueAction[] => [
  { kind: 'start', nickname },
  { kind: 'finish', recordId },
  { kind: 'next' },
];
const fresh = (attempts = 2, order: 'rotate' | 'free' = 'rotate', rides = 1): TurnQueue =>
  startQueue(
    planWith({
      attempts,
      order,
      rides: Array.from({ length: rides }, () => ({ kind: 'check', audience: 'children' })),
    }),
  );

const nickname = fc.constantFrom(...NAMES);
const action: fc.Arbitrary<QueueAction> = fc.oneof(
  fc.record({
    kind: fc.constantFrom('add', 'skip', 'pick', 'later', 'back', 'remove'),
    nickname,
  }) as fc.Arbitrary<QueueAction>,
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('start' as const), nickname }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('finish' as const), recordId: fc.uuid() }) },
  fc.record({ kind: fc.constant('give' as const), nickname, recordId: fc.uuid() }),
  {
    weight: 3,
    arbitrary: fc.constantFrom<QueueAction>({ kind: 'next' }, { kind: 'undo' }, { kind: 'stop' }),
  },
);
const setting = fc.record({
  attempts: fc.integer({ min: 1, max: 3 }),
  rides: fc.integer({ min: 1, max: 2 }),
  order: fc.constantFrom('rotate' as const, 'free' as const),
  actions: fc.array(action, { maxLength: 60 }),
});

/** Every state of a sequence of actions, the first one included. */
function states({
  attempts,
  rides,
  order,
  actions,
}: typeof setting extends fc.Arbitrary<infer T> ? T : never) {
  let round = play(fresh(attempts, order, rides), ...add('red-fox', 'blue-owl', 'grey-hare'));
  return [round, ...actions.map((next) => (round = takeTurn(round, next)))];
}

/** Starts and finishes whoever is next until nobody is; late ones are called back. */
function rideOut(start: TurnQueue): TurnQueue {
  let round = start.phase.kind === 'ready' ? start : play(start, { kind: 'stop' }, { kind: 'next' });
  for (let i = 0; i < 500; i += 1) {
    const next = nextUp(round);
    if (next.kind === 'waiting-for')
      round = play(round, { kind: 'back', nickname: next.nicknames[0] as string });
    else if (next.kind === 'rider') round = play(round, ...ride(next.nickname, `out-${i}`));
    else return round;
  }
  throw new Error('it never ends');
}

describe('handing round', () => {
  it('rotates: everybody once, then everybody again', () => {
    let round = play(fresh(2), ...add('red-fox', 'blue-owl'));
    const order: string[] = [];
    for (let i = 0; i < 4; i += 1) {
      const next = nextUp(round);
      if (next.kind !== 'rider') throw new Error(next.kind);
      order.push(`${next.nickname} ${next.attempt}`);
      round = play(round, ...ride(next.nickname, `r${i}`));
    }
    expect(order).toEqual(['red-fox 1', 'blue-owl 1', 'red-fox 2', 'blue-owl 2']);
    expect([isDone(round), nextUp(round)]).toEqual([true, { kind: 'done' }]);
  });

  it('the next rider is two taps away: next, start', () => {
    const ridden = play(
      fresh(),
      ...add('red-fox', 'blue-owl'),
      { kind: 'start', nickname: 'red-fox' },
      { kind: 'finish', recordId: 'a' },
    );
    const next = play(ridden, { kind: 'next' }, { kind: 'start', nickname: 'blue-owl' });
    expect(next.phase).toEqual({ kind: 'riding', nickname: 'blue-owl', rideIndex: 0, attempt: 1 });
  });

  it('under "rotate" only the next may start, under "free" anybody who waits', () => {
    const start: QueueAction = { kind: 'start', nickname: 'blue-owl' };
    expect(refusalOf(play(fresh(2, 'rotate'), ...add('red-fox', 'blue-owl')), start)).toBe('not-their-turn');
    expect(refusalOf(play(fresh(2, 'free'), ...add('red-fox', 'blue-owl')), start)).toBeNull();
  });

  it('all attempts on the first ride come before the second ride', () => {
    let round = play(fresh(2, 'rotate', 2), ...add('red-fox'));
    const turns: unknown[] = [];
    for (let i = 0; i < 4; i += 1) {
      turns.push(turnOf(round, 'red-fox'));
      round = play(round, ...ride('red-fox', `r${i}`));
    }
    expect(turns).toEqual([
      { rideIndex: 0, attempt: 1 },
      { rideIndex: 0, attempt: 2 },
      { rideIndex: 1, attempt: 1 },
      { rideIndex: 1, attempt: 2 },
    ]);
  });

  it('whoever is picked is next, and nobody loses a turn by it', () => {
    const round = play(fresh(1), ...add('red-fox', 'blue-owl', 'grey-hare'), {
      kind: 'pick',
      nickname: 'grey-hare',
    });
    expect(round.line).toEqual(['grey-hare', 'red-fox', 'blue-owl']);
    const riding = play(round, { kind: 'start', nickname: 'grey-hare' });
    expect(refusalOf(riding, { kind: 'pick', nickname: 'red-fox' })).toBe('ride-going-on');
  });

  it('a ride that was somebody else’s counts for them, and whoever stood there keeps their turn', () => {
    const ridden = play(
      fresh(2),
      ...add('red-fox', 'blue-owl', 'grey-hare'),
      { kind: 'start', nickname: 'red-fox' },
      { kind: 'finish', recordId: 'one' },
    );
    const given = play(ridden, { kind: 'give', nickname: 'grey-hare', recordId: 'two' });
    expect(given.rides).toMatchObject([{ nickname: 'grey-hare', attempt: 1, recordId: 'two' }]);
    expect(given.phase).toEqual({ kind: 'ridden', nickname: 'grey-hare', recordId: 'two' });
    expect([given.line, turnsLeft(given, 'red-fox')]).toEqual([['red-fox', 'blue-owl', 'grey-hare'], 2]);
    expect(refusalOf(ridden, { kind: 'give', nickname: 'red-fox', recordId: 'two' })).toBe('already-so');
    expect(refusalOf(ridden, { kind: 'give', nickname: 'white-wolf', recordId: 'two' })).toBe('not-in-line');
    const gone = play(given, { kind: 'next' });
    expect(refusalOf(gone, { kind: 'give', nickname: 'red-fox', recordId: 'x' })).toBe('nothing-to-give');
  });

  it('a ride over the first road cannot be given to somebody who is at the second', () => {
    const round = play(
      fresh(1, 'free', 2),
      ...add('red-fox', 'blue-owl'),
      ...ride('blue-owl', 'zero'),
      { kind: 'start', nickname: 'red-fox' },
      { kind: 'finish', recordId: 'one' },
    );
    expect(refusalOf(round, { kind: 'give', nickname: 'blue-owl', recordId: 'two' })).toBe('other-ride');
  });

  it('who skips goes to the end and keeps the attempts', () => {
    const round = play(fresh(), ...add('red-fox', 'blue-owl'), { kind: 'skip', nickname: 'red-fox' });
    expect([round.line, turnsLeft(round, 'red-fox')]).toEqual([['blue-owl', 'red-fox'], 2]);
  });

  it('who comes back later is waited for at the end', () => {
    const away = play(fresh(1), ...add('red-fox', 'blue-owl'), { kind: 'later', nickname: 'red-fox' });
    const others = play(away, ...ride('blue-owl', 'a'));
    expect([nextUp(others), isDone(others)]).toEqual([
      { kind: 'waiting-for', nicknames: ['red-fox'] },
      false,
    ]);
    expect(isDone(play(others, { kind: 'back', nickname: 'red-fox' }, ...ride('red-fox', 'b')))).toBe(true);
  });

  it('a late-comer gets all attempts, also while somebody rides', () => {
    const riding = play(fresh(), ...add('red-fox'), { kind: 'start', nickname: 'red-fox' });
    const round = play(riding, ...add('grey-hare'), { kind: 'finish', recordId: 'a' }, { kind: 'next' });
    expect([round.line, turnsLeft(round, 'grey-hare')]).toEqual([['grey-hare', 'red-fox'], 2]);
  });

  it('leaving and coming again gives no further attempts', () => {
    const once = play(fresh(2), ...add('red-fox'), ...ride('red-fox', 'a'));
    const again = play(once, { kind: 'remove', nickname: 'red-fox' }, ...add('red-fox'));
    expect(turnsLeft(again, 'red-fox')).toBe(1);
  });

  it('removing the one who rides ends the ride without counting it', () => {
    const round = play(
      fresh(),
      ...add('red-fox'),
      { kind: 'start', nickname: 'red-fox' },
      { kind: 'remove', nickname: 'red-fox' },
    );
    expect([round.phase, round.rides, round.line]).toEqual([{ kind: 'ready' }, [], []]);
  });

  it('a second tap on anything changes nothing', () => {
    const riding = play(fresh(), ...add('red-fox'), { kind: 'start', nickname: 'red-fox' });
    expect(takeTurn(riding, { kind: 'start', nickname: 'red-fox' })).toBe(riding);
    const ridden = takeTurn(riding, { kind: 'finish', recordId: 'a' });
    expect(takeTurn(ridden, { kind: 'finish', recordId: 'a' })).toBe(ridden);
  });

  it('nobody is forgotten: whatever was done, everybody who did not leave can ride everything', () => {
    fc.assert(
      fc.property(setting, (given) => {
        const out = rideOut(states(given).at(-1) as TurnQueue);
        for (const { nickname: name, presence } of out.riders)
          if (presence !== 'gone') expect(turnsLeft(out, name)).toBe(0);
        for (const entry of given.actions)
          if (entry.kind === 'add')
            expect(out.riders.map((rider) => rider.nickname)).toContain(entry.nickname);
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('nobody rides an attempt twice, or more attempts than there are', () => {
    fc.assert(
      fc.property(setting, (given) => {
        for (const round of states(given)) {
          const turns = round.rides.map((r) => `${r.nickname} ${r.rideIndex} ${r.attempt}`);
          expect(new Set(turns).size).toBe(turns.length);
          for (const r of round.rides) {
            expect(r.attempt).toBeLessThanOrEqual(given.attempts);
            expect(r.rideIndex).toBeLessThan(given.rides);
          }
          if (round.phase.kind === 'riding')
            expect(turnsLeft(round, round.phase.nickname)).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('taking a ride back restores exactly what was before its start', () => {
    fc.assert(
      fc.property(setting, (given) => {
        for (const round of states(given)) {
          if (round.phase.kind !== 'ready') continue;
          for (const name of round.line) {
            const ridden = play(
              round,
              { kind: 'start', nickname: name },
              { kind: 'finish', recordId: 'new' },
            );
            if (ridden === round) continue;
            expect(takeTurn(ridden, { kind: 'undo' })).toEqual(round);
            expect(play(ridden, { kind: 'next' }, { kind: 'undo' })).toEqual(round);
          }
        }
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  it('taking a ride back does not forget who came meanwhile', () => {
    const round = play(
      fresh(1),
      ...add('red-fox', 'blue-owl'),
      ...ride('red-fox', 'a'),
      ...add('grey-hare'),
      { kind: 'undo' },
    );
    expect(round.line).toEqual(['red-fox', 'blue-owl', 'grey-hare']);
  });

  it('every state, also during a ride, is the same after JSON and goes on the same', () => {
    fc.assert(
      fc.property(setting, (given) => {
        for (const round of states(given)) {
          const read = parseRound(JSON.parse(JSON.stringify(round)));
          expect(read).toEqual(round);
          expect(rideOut(read as TurnQueue)).toEqual(rideOut(round));
        }
      }),
      { numRuns: 100, seed: 4 },
    );
  });

  it('a kept round whose parts contradict each other is not taken', () => {
    const round = play(fresh(1), ...add('red-fox', 'blue-owl'), ...ride('red-fox', 'a'));
    expect(parseRound(round)).toEqual(round);
    const bad: unknown[] = [
      null,
      { ...round, line: [] },
      { ...round, line: ['blue-owl', 'red-fox'] },
      { ...round, rides: [...round.rides, { ...round.rides[0], recordId: 'b' }] },
      { ...round, riders: [...round.riders, round.riders[0]] },
      { ...round, phase: { kind: 'riding', nickname: 'red-fox', rideIndex: 0, attempt: 1 } },
      { ...round, attempts: 1e9 },
    ];
    for (const value of bad) expect(parseRound(value)).toBeNull();
  });
});
