/**
 * Walks every level that comes with the game: it parses, its road is continuous and can be ridden by every
 * bundled bike, and what it tells the rider lies where it helps.
 */
import { describe, expect, it } from 'vitest';
import { isSeeded } from '../../src/core/course/pieces.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { STEEPEST_RATIO } from '../../src/core/level/schema.ts';
import { BIKES, MATCHING_RIDER } from '../../src/core/model/presets.ts';
import { brakeForLine } from '../../src/core/ride/pilot.ts';
import { NAMED_HABITS, virtualRider } from '../../src/core/virtual/riders.ts';
import { words } from '../../src/words/words.ts';
import { startState } from '../../src/core/ride/world.ts';
import { BUNDLED, eventsOf, rideBare, worldOn } from '../core/ride/worlds.ts';

const say = words('ladder');

describe('the bundled levels together', () => {
  it('have ids and titles of their own', () => {
    expect(new Set(BUNDLED.map(({ level }) => level.id)).size).toBe(BUNDLED.length);
    expect(new Set(BUNDLED.map(({ level }) => level.title)).size).toBe(BUNDLED.length);
  });
});

describe.each(BUNDLED.map(({ file, level }) => [file, level] as const))('%s', (file, level) => {
  const course = courseOfLevel(level);

  it('is named after its id and speaks in sentences', () => {
    expect(file).toBe(`${level.id}.json`);
    expect(level.title).toMatch(/^[A-Z0-9][^.]*$/);
    expect(level.sentence).toMatch(/^[A-Z0-9].*[.!?]$/);
  });

  it('says in its file what the message files say in English', () => {
    const said = [
      level.title,
      level.sentence,
      ...level.cues.flatMap((cue) => ('text' in cue ? [cue.text] : [])),
    ];
    const names = said.map(
      (_, i) => `${['title', 'sentence'][i] ?? 'cue'}-${level.id}${i < 2 ? '' : `-${i - 1}`}`,
    );
    const speed = '25 km/h';
    expect(names.map((name) => (say.has(name) ? say.coded(name, { speed }) : name))).toEqual(said);
  });

  it('has a road without steps or gaps', () => {
    const tables = [course.heightM, course.slopeRatio, course.windMps, course.rollingFactor, course.sightM];
    for (const table of tables) {
      expect(table.length).toBe(course.lengthM + 1);
      expect(table.every(Number.isFinite)).toBe(true);
    }
    // The sharpest join, 20 % to −20 % over 6 m, would change by 6.7 points a metre.
    for (let i = 1; i <= course.lengthM; i += 1) {
      const change = (course.slopeRatio[i] ?? 0) - (course.slopeRatio[i - 1] ?? 0);
      expect(Math.abs(change)).toBeLessThan((2 * STEEPEST_RATIO) / 6 + 1e-9);
      const rise = (course.heightM[i] ?? 0) - (course.heightM[i - 1] ?? 0);
      expect(Math.abs(rise)).toBeLessThanOrEqual(STEEPEST_RATIO);
    }
  });

  it('has pitches in order, with feet before their ends', () => {
    course.pitches.forEach((pitch, i) => {
      expect(pitch.footM).toBeGreaterThanOrEqual(course.pitches[i - 1]?.endM ?? 0);
      expect(pitch.endM).toBeGreaterThan(pitch.footM);
      expect(pitch.steepestRatio).toBeGreaterThanOrEqual(0.035);
    });
  });

  it('has cues on the road, in order, and never two within 10 m', () => {
    const places = level.cues.map((cue) => cue.atM);
    places.forEach((atM, i) => {
      expect(atM).toBeLessThan(course.lengthM);
      if (i > 0) expect(atM - (places[i - 1] ?? 0)).toBeGreaterThanOrEqual(10);
    });
  });

  it('names a gentle or moderate wind where it names one (Beaufort: up to 7.9 m/s)', () => {
    for (const wind of level.winds) expect(Math.abs(wind.windMps)).toBeLessThanOrEqual(7.9);
  });

  it.each(BIKES.map((bike) => bike.id))(
    'can be ridden to the end on %s, stopping where it says',
    (bikeId) => {
      const world = worldOn(course, bikeId, MATCHING_RIDER[bikeId] ?? 'adult-new');
      const { last, events } = rideBare(world, virtualRider(world, NAMED_HABITS.early, level.seed));
      expect(last.phase).toBe('finished');
      expect(eventsOf(events, 'stopped-at-line')).toHaveLength(level.stopLinesM.length);
      expect(eventsOf(events, 'line-missed')).toHaveLength(0);
      // After a stop in too hard a gear a foot may go down: that is what some levels teach.
      if (level.stopLinesM.length === 0) expect(eventsOf(events, 'foot-down')).toHaveLength(0);
    },
  );

  it.each(BIKES.map((bike) => bike.id))('asks nothing of %s that its lowest gear cannot do', (bikeId) => {
    const world = worldOn(course, bikeId, MATCHING_RIDER[bikeId] ?? 'adult-new');
    const sprocketIndex = world.machine.sprocketCount - 1;
    const from = startState(world, { speedMps: 2, ringIndex: 0, sprocketIndex });
    const { last, events } = rideBare(world, brakeForLine(world), from);
    expect([last.phase, last.sprocketIndex]).toEqual(['finished', sprocketIndex]);
    expect(eventsOf(events, 'foot-down')).toHaveLength(0);
  });

  it('is the same road every time, and another one only where a seed shapes it', () => {
    const again = courseOfLevel(level);
    const other = courseOfLevel(level, level.seed + 1);
    expect(again).toEqual(course);
    expect(other.heightM.every((height, i) => height === course.heightM[i])).toBe(!isSeeded(level.pieces));
  });
});
