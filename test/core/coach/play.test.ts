/** Children's roads for play: short, kind to whoever looks only at the face, and full of apples that hop. Lengths and counts are ours. */
import { describe, expect, it } from 'vitest';
import { ALL_APPLES, APPLES, applesOf, countApples } from '../../../src/core/coach/apples.ts';
import { playRoads } from '../../../src/core/coach/ladder.ts';
import { playing } from '../../../src/core/settings/settings.ts';
import { DEFAULT_KEYS, defaultSettings } from '../../../src/core/settings/settings.ts';
import { rideThrough } from '../../../src/core/ride/run.ts';
import { rideRoad } from '../../../src/state/rideLevel.ts';
import { ALL_LEVELS, groundOf } from './riding.ts';

const roads = playRoads(ALL_LEVELS);
const BIKE = 'kids-20-1x7';
const RIDER = 'child-9';

describe('a road for play', () => {
  it('is one of several, each in a land of its own', () => {
    expect(roads.length).toBeGreaterThanOrEqual(5);
    expect(new Set(roads.map(({ place }) => place)).size).toBe(roads.length);
  });

  it.each(roads.map((level) => [level.id, level] as const))(
    '%s has three to five little hills, a friend behind each but the last, and ends within ninety seconds',
    (_id, level) => {
      const { world, reference } = groundOf(level, BIKE, RIDER);
      const { pitches } = world.course;
      expect(pitches.length).toBeGreaterThanOrEqual(3);
      expect(pitches.length).toBeLessThanOrEqual(5);
      const friends = (level.company ?? []).filter(({ who }) => who === 'friend');
      expect(friends).toHaveLength(pitches.length - 1);
      const seconds = reference.samples.at(-1)!.timeS;
      expect(seconds).toBeGreaterThanOrEqual(55);
      expect(seconds).toBeLessThanOrEqual(90);
    },
  );

  it.each(roads.map((level) => [level.id, level] as const))(
    '%s: whoever pushes nothing loses most apples and never the last; the best ride keeps nearly all',
    (_id, level) => {
      const { world, reference } = groundOf(level, BIKE, RIDER);
      const idle = applesOf(rideThrough({ ...world, autoEase: true }, () => []).trace);
      expect(idle.spilled).toBeGreaterThanOrEqual(APPLES / 2);
      expect(idle.carried).toBeGreaterThanOrEqual(1);
      expect(idle.most).toBe('grinding');
      expect(applesOf(reference).spilled).toBeLessThanOrEqual(1);
    },
  );

  it.each(roads.map((level) => [level.id, level] as const))(
    '%s says nothing longer than twelve words, and no number',
    (_id, { title, sentence, cues }) => {
      const texts = [title, sentence, ...cues.map((cue) => ('text' in cue ? cue.text : ''))];
      for (const text of texts) {
        expect(text).not.toMatch(/\d/);
        for (const part of text.split(/(?<=[.!?])\s/))
          expect(part.split(' ').length, part).toBeLessThanOrEqual(12);
      }
    },
  );

  it('stays as it was drawn, however it was ridden', () => {
    const [road] = roads;
    const results = [1, 2, 3].map((atMs) => ({
      levelId: road!.id,
      kind: 'ride' as const,
      total: 99,
      passed: true,
      atMs,
    }));
    expect(rideRoad({ levels: roads, results: results as never }, road!.id)).toEqual({
      level: road,
      difficultyStep: 0,
    });
  });
});

describe('apples', () => {
  it('are the same counted bit by bit and at once', () => {
    const { world } = groundOf(roads[0]!, BIKE, RIDER);
    const { trace } = rideThrough(world, () => []);
    let count = ALL_APPLES;
    for (let end = 0; end <= trace.samples.length + 40; end += 37) {
      const part = {
        ...trace,
        samples: trace.samples.slice(0, end),
        events: end < trace.samples.length ? [] : trace.events,
      };
      count = countApples(part, count);
    }
    expect(count).toEqual(countApples(trace, ALL_APPLES));
  });

  it('hop at jerks of the chain and not at clicks without load', () => {
    const at = { tick: 1, distanceM: 1 };
    const click = (load: number) =>
      ({
        ...at,
        kind: 'shift-done',
        derailleur: 'rear',
        direction: 'easier',
        fromIndex: 1,
        toIndex: 2,
        load,
        durationS: 0.2,
        startedAtM: 1,
      }) as const;
    const of = (...events: Parameters<typeof countApples>[0]['events']) =>
      countApples({ samples: [], events, beforePitch: [] }, ALL_APPLES).spilled;
    expect(of(click(0.3), click(0.5))).toBe(0);
    expect(of(click(0.7), click(0.7))).toBe(1);
    expect(of(click(1.2))).toBe(1);
    expect(of({ ...at, kind: 'shift-hung', derailleur: 'rear' })).toBe(1);
    expect(of({ ...at, kind: 'chain-dropped' })).toBe(2);
  });
});

describe('the bike for play', () => {
  const settings = defaultSettings(DEFAULT_KEYS);

  it('is the smallest one, unless a child has one of their own', () => {
    expect(playing(settings)).toMatchObject({
      bike: { id: 'kids-20-1x7' },
      rider: { id: 'child-9' },
      autoEase: true,
    });
    const own = playing({ ...playing(settings), bike: { ...playing(settings).bike, id: 'kids-24-1x8' } });
    expect(own.bike.id).toBe('kids-24-1x8');
  });
});
