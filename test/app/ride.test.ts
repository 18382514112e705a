/** The time of a ride without a screen: counting down, riding, pausing, what is said when, and that it ends. */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { setupOfJob } from '../../src/core/ride/job.ts';
import { replayRecording, startRide } from '../../src/core/ride/run.ts';
import type { RideEvent } from '../../src/core/ride/types.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { cueAt, cuesBesideGuide } from '../../src/app/ride/cues.ts';
import { RideLoop } from '../../src/app/ride/loop.ts';
import { afterEvents, EMPTY_BOARD } from '../../src/app/ride/remarks.ts';
import { cueText } from '../../src/words/cues.ts';
import { levelById } from '../core/ride/worlds.ts';

const level = levelById('one-pitch-announced');
const bike = bikeById('trekking-3x8')!;
const rider = riderById('adult-weekly')!;
const FRAME_MS = 1000 / 60;

function loopWith(stopLinesM: readonly number[] = [], autoEase = false, waitS = 0) {
  const ridden = { ...level, stopLinesM: [...stopLinesM] };
  const world = buildRideWorld(courseOfLevel(ridden), bike, rider, { autoEase });
  const ride = startRide(world);
  const log: string[] = [];
  const events: RideEvent[] = [];
  const loop = new RideLoop({
    ride,
    level: ridden,
    aids: () => ridden.aids,
    guided: () => false,
    pace: () => 1,
    countPace: 1,
    waitS,
    brakesAtLines: () => autoEase,
    script: null,
    firstSteps: { stands: () => false },
    listeners: {
      frame: () => undefined,
      events: (list) => events.push(...list),
      say: (cue) => cue !== null && log.at(-1) !== cue && log.push(cue),
      beat: () => undefined,
      count: (left) => log.push(`count ${String(left)}`),
      over: () => log.push('over'),
    },
  });
  let timeMs = 0;
  const runS = (seconds: number): void => {
    const end = timeMs + seconds * 1000;
    for (; timeMs < end; timeMs += FRAME_MS) loop.nextFrame(timeMs);
  };
  return { loop, ride, world, log, events, runS };
}

describe('the loop', () => {
  it('counts three seconds before the first tick', () => {
    const { log, ride, runS } = loopWith();
    runS(2.9);
    expect([log, ride.state().tick]).toEqual([['count 3', 'count 2', 'count 1'], 0]);
    runS(1.2);
    expect(log).toContain('count null');
    expect(ride.state().tick).toBeGreaterThan(100);
  });

  it('waits for somebody else’s start, once: a pause meanwhile takes nothing off and adds nothing', () => {
    const { loop, log, ride, runS } = loopWith([], false, 4);
    runS(2.5);
    expect(log).toEqual(['count 7', 'count 6', 'count 5']);
    loop.pause();
    runS(10);
    loop.resume();
    log.length = 0;
    runS(4.5);
    expect([log, ride.state().tick]).toEqual([['count 5', 'count 4', 'count 3', 'count 2', 'count 1'], 0]);
    runS(1.5);
    expect(ride.state().tick).toBeGreaterThan(50);
    loop.pause();
    loop.resume();
    log.length = 0;
    runS(0.5);
    expect(log).toEqual(['count 3']);
  });

  it('stands still while paused, loses lever pushes made then, and counts again before it goes on', () => {
    const { loop, ride, runS, log, events } = loopWith();
    runS(6);
    loop.pause();
    const { tick } = ride.state();
    loop.command({ kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 });
    runS(5);
    expect(ride.state().tick).toBe(tick);
    loop.resume();
    runS(2.5);
    expect([ride.state().tick, log.filter((line) => line === 'count 3')]).toEqual([
      tick,
      ['count 3', 'count 3'],
    ]);
    runS(3);
    expect(ride.state().tick).toBeGreaterThan(tick);
    expect(events.filter((event) => event.kind === 'shift-done')).toEqual([]);
  });

  it('a push while riding shifts', () => {
    const { loop, runS, events } = loopWith();
    runS(4);
    loop.command({ kind: 'shift', derailleur: 'rear', direction: 'easier', steps: 1 });
    runS(3);
    expect(events.filter((event) => event.kind === 'shift-done')).toHaveLength(1);
  });

  it('says the cues in order, ends once, and leaves a recording that rides the same again', () => {
    const { log, ride, world, runS, loop } = loopWith();
    runS(240);
    expect([ride.state().phase, loop.mode(), log.filter((line) => line === 'over')]).toEqual([
      'finished',
      'over',
      ['over'],
    ]);
    const said = log.filter((line) => !line.startsWith('count') && line !== 'over');
    const expected = level.cues.map((cue) => ('text' in cue ? cue.text : cueText(cue.cue)));
    expect(said).toEqual(expected);
    const setup = setupOfJob({ level, seed: level.seed, bike, rider, autoEase: false });
    expect(replayRecording(world, ride.recording(setup)).same).toBe(true);
  });

  it('brakes at lines where two buttons must be enough', () => {
    const alone = loopWith([200], true);
    alone.runS(60);
    expect(alone.events.some((event) => event.kind === 'stopped-at-line')).toBe(true);
    const byHand = loopWith([200]);
    byHand.runS(60);
    expect(byHand.events.some((event) => event.kind === 'line-missed')).toBe(true);
  });
});

describe('cues', () => {
  const cues = [
    { atM: 100, cue: 'look-far' },
    { atM: 120, cue: 'hill-ahead' },
  ] as const;

  it.each([
    [99, undefined],
    [100, 'look-far'],
    [119.9, 'look-far'],
    [120, 'hill-ahead'],
    [165, undefined],
  ] as const)('at %d m it is %s', (distanceM, cue) => {
    expect(cueAt([...cues], distanceM)).toEqual(cue === undefined ? null : expect.objectContaining({ cue }));
  });
});

describe('cues beside the hints of a guide', () => {
  const cues = [
    { atM: 1, cue: 'hill-ahead' },
    { atM: 2, cue: 'two-easier-now' },
    { atM: 3, cue: 'harder-again' },
    { atM: 4, cue: 'ease-then-shift' },
    { atM: 5, text: 'Smile.' },
  ] as const;

  it('say of the road what there is to say and leave the gears to the guide', () => {
    expect(cuesBesideGuide(cues).map(({ atM }) => atM)).toEqual([1, 4, 5]);
  });
});

describe('remarks', () => {
  const rings = (direction: string): boolean => direction === 'harder';
  const at = { tick: 1, distanceM: 1 };
  const crossed: RideEvent = { kind: 'chain-crossed', ...at };
  const empty: RideEvent = { kind: 'reserve-empty', ...at };
  const foot: RideEvent = { kind: 'foot-down', ...at };
  const remarkOf = (event: RideEvent, ringsThere = rings) =>
    afterEvents(EMPTY_BOARD, [event], 10, ringsThere).code;

  it('a clean shift deserves none, a heavy one does', () => {
    const done = {
      kind: 'shift-done',
      derailleur: 'rear',
      direction: 'easier',
      fromIndex: 0,
      toIndex: 1,
    } as const;
    expect(remarkOf({ ...done, load: 0.6, durationS: 1, startedAtM: 0, ...at })).toBeNull();
    expect(remarkOf({ ...done, load: 1.2, durationS: 1, startedAtM: 0, ...at })).toBe('heavy-shift');
  });

  it.each([
    ['easier', true, 'ring-easier'],
    ['easier', false, 'no-easier'],
    ['harder', true, 'ring-harder'],
    ['harder', false, 'no-harder'],
  ] as const)(
    'with no sprocket left towards %s and another ring there (%s) it is %s',
    (direction, ring, code) => {
      const refused: RideEvent = {
        kind: 'shift-refused',
        derailleur: 'rear',
        direction,
        reason: 'no-more',
        ...at,
      };
      expect(remarkOf(refused, () => ring)).toBe(code);
    },
  );

  it('one stands at a time and goes by itself', () => {
    const first = afterEvents(EMPTY_BOARD, [crossed], 10, rings);
    expect(afterEvents(first, [empty], 11, rings).code).toBe('crossed');
    expect(afterEvents(first, [], 12.6, rings).code).toBeNull();
  });

  it('what needs a hand at once pushes the other aside', () => {
    expect(afterEvents(afterEvents(EMPTY_BOARD, [crossed], 10, rings), [foot], 11, rings).code).toBe(
      'foot-down',
    );
  });

  it('a dropped chain is told about until it is back on', () => {
    const off: RideEvent = { kind: 'chain-dropped', tick: 1, distanceM: 1 };
    const on: RideEvent = { kind: 'chain-restored', tick: 9, distanceM: 9 };
    const board = afterEvents(EMPTY_BOARD, [off], 10, rings);
    expect(afterEvents(board, [], 60, rings).code).toBe('chain-dropped');
    expect(afterEvents(board, [on], 61, rings).code).toBeNull();
  });

  it('the same is not said again for a while', () => {
    const once = afterEvents(afterEvents(EMPTY_BOARD, [crossed], 10, rings), [], 14, rings);
    expect(afterEvents(once, [crossed], 15, rings).code).toBeNull();
    expect(afterEvents(once, [crossed], 18, rings).code).toBe('crossed');
  });
});
