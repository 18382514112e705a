/**
 * Riding by ear: a rider who hears only what is said and the tone, and sees nothing, passes the level with the
 * announced pitch; and what is said comes before its place, in order.
 */
import { describe, expect, test } from 'vitest';
import { earCues, hintsByEar, toneBesideHint } from '../../../src/core/coach/byEar.ts';
import { createGuide } from '../../../src/core/coach/guide.ts';
import type { Push } from '../../../src/core/model/transmission.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { type Controller, startRide } from '../../../src/core/ride/run.ts';
import type { RideCommand } from '../../../src/core/ride/types.ts';
import { type Ground, groundOf, LEVELS } from './riding.ts';

/** Does what the hint says once, lever by lever, then goes by the tone. Knows neither gear, cadence nor road. */
function listens({ world, reference }: Ground): Controller {
  const guide = createGuide(world, () => reference);
  const ear = hintsByEar((frame) => guide.hint(frame));
  let pushes: RideCommand[] = [];
  let pushTick = -1;
  let restUntil = 400;
  let toneSince = 0;
  let told: Parameters<typeof toneBesideHint>[0] = null;
  return (state) => {
    const frame = frameOf(world, state);
    const hint = state.tick % 30 === 0 ? ear(frame) : null;
    if (hint !== null) told = { makes: hint.makes, atS: frame.timeS };
    if (hint !== null) pushes = [hint, hint.second].flatMap((move) => (move === null ? [] : pushesOf(move)));
    const tone = toneBesideHint(told, frame);
    if (tone === 0) toneSince = state.tick;
    const lasting = state.tick - toneSince > 120;
    if (pushes.length === 0 && state.tick > restUntil && lasting)
      pushes = pushesOf({ derailleur: 'rear', direction: tone < 330 ? 'easier' : 'harder', steps: 1 });
    const commands: RideCommand[] = [];
    if (pushTick < 0 && pushes.length > 0) {
      pushTick = state.tick + 50;
      commands.push({ kind: 'pressure', pressure: 'ease' });
    } else if (state.tick === pushTick) {
      const push = pushes.shift();
      if (push !== undefined) commands.push(push);
    } else if (pushTick > 0 && state.tick > pushTick + 60) {
      pushTick = pushes.length === 0 ? -1 : state.tick + 12;
      if (pushes.length === 0) {
        restUntil = state.tick + 300;
        commands.push({ kind: 'pressure', pressure: 'steady' });
      }
    }
    return commands;
  };
}

function pushesOf({ derailleur, direction, steps }: Push): RideCommand[] {
  return Array.from({ length: steps }, () => ({ kind: 'shift', derailleur, direction, steps: 1 }) as const);
}

describe('a rider who only listens', () => {
  test.each([
    ['kids-20-1x7', 'child-9'],
    ['town-1x9', 'adult-new'],
    ['road-2x11', 'adult-weekly'],
    ['gravel-1x12', 'adult-strong'],
  ])('passes the announced pitch on %s with %s', (bikeId, riderId) => {
    const ground = groundOf(LEVELS.find(({ id }) => id === 'one-pitch-announced')!, bikeId, riderId);
    const report = ground.follow(listens(ground));
    expect(report.total).toBeGreaterThanOrEqual(ground.level.passMark);
    expect(report.footDowns).toBe(0);
  });
});

describe('what is said', () => {
  test.each(LEVELS.map((level) => [level.id, level] as const))(
    'comes in order and before its place on %s',
    (_, level) => {
      const { course } = groundOf(level, 'town-1x9', 'adult-new').world;
      const cues = earCues(course);
      expect(cues.map(({ atM }) => atM)).toEqual(cues.map(({ atM }) => atM).toSorted((a, b) => a - b));
      const near = cues.filter(({ code }) => code === 'pitch-ahead').map(({ atM, inM }) => atM + inM);
      expect(near.length).toBe(course.pitches.length);
      near.forEach((placeM, i) => expect(placeM).toBeCloseTo(course.pitches[i]!.footM, 6));
      expect(cues.filter(({ code }) => code === 'stop-soon').length).toBe(course.stopLinesM.length);
    },
  );

  const { world } = groundOf(LEVELS.find(({ id }) => id === 'one-pitch-announced')!, 'town-1x9', 'adult-new');
  const frame = frameOf(world, startRide(world).now);

  test('the tone asks for no other way than the hint before it', () => {
    const spinning = { ...frame, cadenceRpm: frame.bandHighRpm + 20 };
    const slow = { ...frame, cadenceRpm: frame.bandLowRpm - 20 };
    const easier = { makes: 'easier', atS: 10 } as const;
    const [low, high] = [toneBesideHint(null, slow), toneBesideHint(null, spinning)];
    expect([Math.sign(low), Math.sign(high)]).toEqual([1, 1]);
    expect(toneBesideHint(easier, { ...spinning, timeS: 12 })).toBe(0);
    expect(toneBesideHint(easier, { ...slow, timeS: 12 })).toBe(low);
    expect(toneBesideHint({ ...easier, makes: 'harder' }, { ...slow, timeS: 12 })).toBe(0);
    // The hill has come, or not: from then on the legs are heard as they are.
    expect(toneBesideHint(easier, { ...spinning, timeS: 16 })).toBe(high);
  });

  test('the tone is silent in the band, low and lower below it, high and higher above it', () => {
    const at = (cadenceRpm: number): number =>
      toneBesideHint(null, { ...frame, cadenceRpm, bandLowRpm: 70, bandHighRpm: 90 });
    expect([at(70), at(80), at(90)]).toEqual([0, 0, 0]);
    expect(at(60)).toBeLessThan(330);
    expect(at(50)).toBeLessThan(at(60));
    expect(at(95)).toBeGreaterThan(660);
    expect(at(110)).toBeGreaterThan(at(95));
  });
});
