/**
 * Help on the road: a rider who only does what the hint says rides well, and the marks shown on the way are those
 * of the debrief wherever that needs no reference ride.
 */
import { describe, expect, test } from 'vitest';
import { countLive, liveMarks, NOTHING_COUNTED } from '../../../src/core/coach/live.ts';
import { createGuide } from '../../../src/core/coach/guide.ts';
import { shiftsOf } from '../../../src/core/coach/shifts.ts';
import { isSameRoad } from '../../../src/core/planner/costs.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { rideThrough, startRide } from '../../../src/core/ride/run.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import type { RideFrame, RideState } from '../../../src/core/ride/types.ts';
import { obeys, type Told } from './obeys.ts';
import { type Ground, groundOf, LEVELS } from './riding.ts';

const ground = (id: string, bikeId: string, riderId: string): Ground =>
  groundOf(LEVELS.find((level) => level.id === id)!, bikeId, riderId);

describe('the hints of the guide', () => {
  // All levels and bikes are ridden by test/figures/hints.ts.
  test.each([
    ['click-before-the-hill', 'kids-20-1x7', 'child-9'],
    ['one-pitch-announced', 'road-2x11', 'adult-new'],
    ['two-levers', 'trekking-3x8', 'adult-weekly'],
  ])('obeyed, give a good ride of %s on %s with %s, and turn round nowhere', (id, bikeId, riderId) => {
    const { world, reference, judge } = ground(id, bikeId, riderId);
    const told: Told[] = [];
    const { trace } = rideThrough(world, obeys(world, reference, { told }));
    expect(judge(trace).total).toBeGreaterThanOrEqual(90);
    expect(shiftsOf(trace).length).toBeLessThanOrEqual(1.2 * shiftsOf(reference).length);
    const bad = ['chain-crossed', 'shift-hung', 'shift-refused', 'chain-dropped', 'foot-down'];
    expect(trace.events.filter(({ kind }) => bad.includes(kind))).toEqual([]);
    expect(told.length).toBeGreaterThan(3);
    for (const [i, { atM, timeS, step }] of told.entries()) {
      const before = told[i - 1];
      if (before === undefined || before.step.makes === step.makes) continue;
      const [fromM, toM] = [before.atM + before.step.inM, atM + step.inM];
      if (!isSameRoad(world.course, fromM, toM)) continue;
      expect(toM - fromM, `at ${atM} m`).toBeGreaterThanOrEqual(25);
      if (step.inM === 0) expect(timeS - before.timeS, `at ${atM} m`).toBeGreaterThanOrEqual(3);
    }
  });

  const { world, reference } = ground('one-pitch-announced', 'road-2x11', 'adult-new');
  const top = world.machine.sprocketCount - 1;
  const rideTo = (distanceM: number): RideState => {
    const ride = startRide(world);
    while (ride.now.distanceM < distanceM) ride.step([]);
    return ride.state();
  };
  const frameAt = (distanceM: number, change: Partial<RideState> = {}): RideFrame =>
    frameOf(world, { ...rideTo(distanceM), ...change });

  test('name the smaller ring where the back has no easier sprocket, and what belongs to it', () => {
    const stuck = frameAt(300, { ringIndex: 1, sprocketIndex: top, cadenceRpm: 30 });
    const hint = createGuide(world, () => reference).hint(stuck);
    expect(hint).toMatchObject({ derailleur: 'front', direction: 'easier', makes: 'easier', inM: 0 });
  });

  test('help legs that have nearly stopped, but not across a crossed chain', () => {
    const gears = world.machine.gears.filter(({ ringIndex }) => ringIndex === 1);
    const last = gears.findLast(({ crossed }) => !crossed)!;
    const slow = frameAt(150, { ringIndex: 1, sprocketIndex: last.sprocketIndex, cadenceRpm: 30 });
    expect(createGuide(world, () => reference).hint(slow)).toMatchObject({
      derailleur: 'front',
      makes: 'easier',
    });
  });

  test('say nothing while the best ride is unknown, a chain is off or moves, or the brakes are on', () => {
    const frame = frameAt(260);
    expect(createGuide(world, () => null).hint(frame)).toBeNull();
    const guide = createGuide(world, () => reference);
    expect(guide.hint(frame)).toMatchObject({ makes: 'easier' });
    for (const quiet of [{ chainOn: false }, { braking: true }, { waitingShifts: 1 }])
      expect(guide.hint({ ...frame, ...quiet })).toBeNull();
  });

  test('are not turned round by a lever pushed the wrong way on the same road', () => {
    const guide = createGuide(world, () => reference);
    const frame = frameAt(240);
    const first = guide.hint(frame);
    expect(first?.makes).toBe('easier');
    // Far too easy a moment later: harder would be the way back to the best ride's gear.
    const sudden = { ...frame, timeS: frame.timeS + 1, ringIndex: 0, sprocketIndex: top };
    expect(guide.hint(sudden)).toBeNull();
    const later = createGuide(world, () => reference).hint(sudden);
    expect(later?.makes).toBe('harder');
  });

  test('ask for nothing easier behind the last pitch in a gear that will do to the finish, and for nothing just before it', () => {
    const { lengthM, pitches } = world.course;
    const behindM = Math.max(...pitches.map(({ endM }) => endM));
    const inGear = (atM: number, sprocketIndex: number): RideFrame =>
      frameOf(world, { ...rideTo(atM), ringIndex: 1, sprocketIndex, cadenceRpm: 65 });
    const makes = (frame: RideFrame): string | undefined =>
      createGuide(world, () => reference).hint(frame)?.makes;
    const best = reference.samples.findLast(({ distanceM }) => distanceM <= lengthM - 40)!;
    // One gear harder than the best ride's, in which its speed is still one for these legs; and one that is far too hard.
    expect(makes(inGear(lengthM - 60, best.sprocketIndex - 1))).toBeUndefined();
    expect(makes(inGear(behindM + 20, 0))).toBe('easier');
    for (const sprocketIndex of [0, best.sprocketIndex, top])
      expect(makes(inGear(lengthM - 20, sprocketIndex))).toBeUndefined();
  });
});

describe('marks on the way', () => {
  test.each(['never', 'late', 'late-easing', 'early'] as const)(
    'after a ride of the %s rider they are those of the debrief',
    (name) => {
      const ground = groundOf(LEVELS.find(({ id }) => id === 'straight-chain')!, 'road-2x11', 'adult-new');
      const { world } = ground;
      const ride = rideThrough(world, virtualRider(world, NAMED_HABITS[name], 1));
      // In pieces, as on the road.
      let count = NOTHING_COUNTED;
      for (const share of [0.2, 0.21, 0.7, 1]) {
        const { samples, events, beforePitch } = ride.trace;
        const part = {
          samples: samples.slice(0, Math.floor(samples.length * share)),
          events: events.slice(0, Math.floor(events.length * share)),
          beforePitch,
        };
        count = countLive(world, part, count);
      }
      const shown = liveMarks(world, count);
      const { marks } = ground.judge(ride.trace);
      // Whether the road asked for shifts at all is known only beside the best ride.
      const shifted = shiftsOf(ride.trace).length > 0;
      expect(shown.easing === null).toBe(!shifted);
      if (shifted && marks.easing.value !== null) expect(shown.easing).toBeCloseTo(marks.easing.value, 9);
      if (shifted && marks.chainLine.value !== null)
        expect(shown.chainLine).toBeCloseTo(marks.chainLine.value, 9);
      // The debrief forgives what the reference could not do better either, and counts metres instead of seconds.
      expect(shown.cadence).toBeLessThanOrEqual((marks.cadence.value ?? 0) + 3);
      expect(shown.cadence).toBeGreaterThan(0);
    },
  );
});
