/** One voice by ear: what is said, in which order, and what is left unsaid because something else is being said. */
import { beforeEach, describe, expect, it } from 'vitest';
import type { NextStep } from '../../src/core/coach/guide.ts';
import type { RideFrame } from '../../src/core/ride/types.ts';
import { createGuidance, type SpokenGuidance } from '../../src/app/ride/guidance.ts';
import { createFormat } from '../../src/words/format.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { frameOf } from '../../src/core/ride/frame.ts';
import { startRide } from '../../src/core/ride/run.ts';
import { levelById } from '../core/ride/worlds.ts';

const world = buildRideWorld(
  courseOfLevel(levelById('one-pitch-announced')),
  bikeById('town-1x9')!,
  riderById('adult-new')!,
);
const [pitch] = world.course.pitches;
const still = frameOf(world, startRide(world).now);
const step = (inM: number): NextStep => ({
  derailleur: 'rear',
  direction: 'easier',
  steps: 2,
  second: null,
  makes: 'easier',
  inM,
});

let place: HTMLElement;
let lines: string[];
let hint: NextStep | null;
let ear: SpokenGuidance;

/** The ride at a time and a place, at 7 m/s. */
function at(timeS: number, distanceM: number, more: Partial<RideFrame> = {}): void {
  const before = place.firstChild;
  ear.frame({ ...still, speedMps: 7, timeS, distanceM, ...more });
  if (place.firstChild !== before) lines.push(`${timeS}: ${place.textContent}`);
}

beforeEach(() => {
  place = document.createElement('div');
  lines = [];
  hint = null;
  ear = createGuidance({
    world,
    hint: () => hint,
    format: createFormat('metric'),
    place,
    tone: () => undefined,
  });
});

describe('the voice of a ride by ear', () => {
  it('begins at once, with what comes first', () => {
    at(0, 0);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/^0: Riding\. Pitch in \d+ m\.$/);
  });

  it('tells how steep and long at once where the pitch is near, and not a second time', () => {
    const nearM = (pitch?.footM ?? 0) - 130;
    at(0, Math.max(0, nearM));
    for (let s = 1; s < 6; s += 0.5) at(s, Math.max(0, nearM) + 7 * s);
    expect(lines.filter((line) => line.includes('%'))).toHaveLength(1);
  });

  it('leaves the hint to say that the pitch is near', () => {
    at(0, 0);
    lines = [];
    const footM = pitch?.footM ?? 0;
    hint = step(25);
    at(20, footM - 39);
    expect(lines.filter((line) => line.includes('Pitch in'))).toEqual([]);
    hint = null;
  });

  it('says the number first, in time to be spoken before the hands must act, and once more after five seconds', () => {
    at(0, 0);
    lines = [];
    hint = step(30);
    at(10, 20);
    expect(lines).toEqual([]);
    hint = step(6);
    for (let s = 11; s < 30; s += 0.5) at(s, 20 + s);
    expect(lines).toEqual(['11: 2 easier.', '16: 2 easier.']);
  });

  it('tells of the next hill in the same gear as of the first, also to whoever let that one pass', () => {
    at(0, 0);
    hint = step(6);
    for (let s = 11; s < 20; s += 0.5) at(s, 20 + s);
    hint = null;
    for (let s = 20; s < 26; s += 0.5) at(s, 20 + s);
    lines = [];
    hint = step(6);
    at(26, 60);
    expect(lines).toEqual(['26: 2 easier.']);
  });

  it('leaves unsaid what is only good to know while something is being said', () => {
    at(0, 0);
    lines = [];
    hint = step(0);
    const footM = pitch?.footM ?? 0;
    at(30, footM - 0.1);
    hint = null;
    at(30.2, footM + 0.1);
    ear.mention('The chain is crossed.');
    expect(place.textContent).toBe('2 easier.');
    at(40, footM + 1);
    ear.mention('The chain is crossed.');
    expect(place.textContent).toBe('The chain is crossed.');
  });
});
