/** What `gpx` answers: the promised keys for a road, a sentence and exit code 2 for everything else. */
import { describe, expect, it } from 'vitest';
import { gpxText, plainClimb } from '../core/gpx/files.ts';
import { json, run, workshop } from './workshop.ts';

const shop = workshop();

describe('gpx', () => {
  it('says length, ascent, steepest and quality of a road', () => {
    const file = shop.write('climb.gpx', plainClimb);
    const answer = json('gpx', '--file', file);
    expect(answer).toMatchObject({ quality: 'good', problems: [], questions: [], points: 101 });
    expect(answer['lengthM']).toBeCloseTo(1_000, -1);
    expect(answer['ascentM']).toBeCloseTo(50, 0);
    expect(answer['steepestPercent']).toBeCloseTo(5, 1);
    expect(run('gpx', '--file', file).out).toMatch(/^1\.00 km with 50 m of ascent, up to 5\.0 %/);
  });

  it.each([
    ['a file without a road', gpxText('<wpt lat="1" lon="1"/>'), /waypoint/],
    ['something else', 'lat,lon', /not a GPX file/],
    ['nothing', '', /empty/],
  ])('of %s says why, with exit code 2', (_, text, reason) => {
    const file = shop.write('other.gpx', text);
    const { exitCode, out, err } = run('gpx', '--file', file, '--json');
    expect(exitCode).toBe(2);
    expect(err).toMatch(reason);
    const answer = JSON.parse(out) as { lengthM: unknown; problems: unknown[]; questions: unknown[] };
    expect([answer.lengthM, answer.problems.length, answer.questions]).toEqual([null, 1, []]);
  });

  it('wants a file that is there', () => {
    expect(run('gpx').exitCode).toBe(2);
    expect(run('gpx', '--file', shop.path('none.gpx')).err).toMatch(/no file/);
    expect(run('gpx', '--file', shop.folder).err).toMatch(/folder/);
  });

  it('writes a level that can be ridden, of the hardest stretch or of the one asked for', () => {
    const file = shop.write('climb.gpx', plainClimb);
    const out = shop.path('climb.json');
    const said = run(
      'gpx',
      '--file',
      file,
      '--out',
      out,
      '--from',
      '200',
      '--to',
      '900',
      '--title',
      'Our hill',
    );
    expect([said.exitCode, said.out]).toEqual([0, expect.stringContaining('as the level "our-hill"')]);
    expect(json('levels', out)).toMatchObject({ ok: true });
    const level = JSON.parse(shop.read('climb.json')) as { title: string; pieces: { heightsM: number[] }[] };
    expect([level.title, level.pieces[0]?.heightsM.length]).toEqual(['Our hill', 71]);
    expect(shop.read('climb.json')).not.toMatch(/lat|lon|2021/);
    expect(run('gpx', '--file', file, '--from', '5').err).toMatch(/--out/);
    expect(run('gpx', '--file', file, '--out', out, '--from', '900', '--to', '200').exitCode).toBe(2);
    expect(run('gpx', '--file', file, '--out', file).err).toMatch(/left alone/);
  });
});

describe('heights that may be in feet', () => {
  const inFeet = plainClimb.replace(/<ele>([\d.]+)/g, (_, m: string) => `<ele>${(Number(m) * 4) / 0.3048}`);

  it('are asked about, and taken as what is said', () => {
    const file = shop.write('feet.gpx', inFeet);
    const asked = json('gpx', '--file', file);
    expect(asked['questions']).toMatchObject([{ code: 'perhaps-feet' }]);
    const feet = json('gpx', '--file', file, '--heights', 'feet');
    expect(feet['questions']).toEqual([]);
    expect(feet['ascentM']).toBeCloseTo(200, 0);
    const metres = json('gpx', '--file', file, '--heights', 'metres');
    expect(metres['questions']).toEqual([]);
    expect(metres['ascentM']).toBe(asked['ascentM']);
  });

  it('in another unit are not known', () => {
    const file = shop.write('feet.gpx', inFeet);
    const { exitCode, err } = run('gpx', '--file', file, '--heights', 'cubits');
    expect([exitCode, err]).toEqual([2, expect.stringContaining('metres or feet')]);
  });
});
