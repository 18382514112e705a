/** What `road` answers of a recorded ride: the figures of the page as JSON, a sentence for files that tell nothing. */
import { describe, expect, it } from 'vitest';
import { NAMED_HABITS } from '../../src/core/virtual/riders.ts';
import { gpxText, plainClimb } from '../core/gpx/files.ts';
import { madeRide, roadOfPitches } from '../core/recorded/made.ts';
import { json, run, workshop } from './workshop.ts';

const shop = workshop();
const made = madeRide(roadOfPitches(2, 3), 'trekking-3x8', 'adult-weekly', NAMED_HABITS.late, 3);
const file = shop.write('sunday.gpx', made.text);
const who = ['--bike', 'trekking-3x8', '--rider', 'adult-weekly'];

describe('road', () => {
  it('says pitch by pitch where the easier gears came, beside the best ride', () => {
    const answer = json('road', '--file', file, ...who);
    expect(answer['month']).toBe('2026-05');
    const pitches = answer['pitches'] as Record<string, unknown>[];
    expect(pitches).toHaveLength(2);
    for (const pitch of pitches) {
      expect(pitch['firstEasierM']).toBeGreaterThan(0);
      expect((pitch['best'] as { firstEasierM: number }).firstEasierM).toBeLessThan(0);
    }
    expect(answer['means']).toMatchObject({ rides: 1, pitches: 2 });
    expect(run('road', '--file', file, ...who, '--quick').out).toMatch(
      /2 pitches\.\nNo power tells whether heights came late[^\n]*\nfoot m/,
    );
  });

  it('takes the teeth it was ridden with, or none', () => {
    const own = ['--rings', '26/36/48', '--sprockets', '11-32', '--tyre', '40-622', '--quick'];
    const same = json('road', '--file', file, ...who, '--quick');
    expect(json('road', '--file', file, ...who, ...own)).toEqual(same);
    const unknown = json('road', '--file', file, ...who, '--quick', '--teeth-unknown');
    expect(unknown['readableShare']).toBeLessThan(same['readableShare'] as number);
  });

  it.each([
    ['a file without cadence', plainClimb, /times|cadence/],
    ['no GPX file', 'lat,lon', /not a GPX file/],
    ['a file without a road', gpxText(''), /no points|track/],
  ])('says why of %s', (_, text, reason) => {
    const { exitCode, err } = run('road', '--file', shop.write('other.gpx', text), ...who);
    expect([exitCode, err]).toEqual([2, expect.stringMatching(reason)]);
  });

  it.each([
    ['--rings', 'many', /no set of rings/],
    ['--sprockets', '3-400', /no cassette/],
    ['--tyre', 'fat', /no mark of a tyre/],
  ])('says what is wrong with %s %s', (flag, value, reason) => {
    expect(run('road', '--file', file, ...who, flag, value).err).toMatch(reason);
  });
});
