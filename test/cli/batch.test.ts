/** `batch`: every combination once, in order, the same however many processes share the work. */
import { describe, expect, it } from 'vitest';
import { joinedRows, groupsOf, partOf, rowsOfGroup } from '../../src/cli/verbs/batch.ts';
import { readArgs } from '../../src/cli/common/args.ts';
import { batch } from '../../src/cli/verbs/batch.ts';
import { json, levelFile, run, start, workshop, WHO } from './workshop.ts';

const shop = workshop();
const level = levelFile('one-pitch-announced');
const words = (players: string, seeds: string): string[] => [
  '--levels',
  level,
  '--bikes',
  'road-2x11,trekking-3x8',
  '--riders',
  'adult-weekly',
  '--players',
  players,
  '--seeds',
  seeds,
];

describe('batch', () => {
  it('has a row for every ride, which is the ride that "ride" rides', () => {
    const { exitCode, out } = run('batch', ...words('late,skill:0.5', '1-3'));
    expect(exitCode).toBe(0);
    const [head = '', ...rows] = out.split('\n');
    expect(head).toBe(
      'levelId,bikeId,riderId,player,seed,finishedS,footDowns,shifts,total,passed,cadence,foresight,easing,chainLine,economy',
    );
    expect(rows.map((row) => row.split(',').slice(1, 5).join(' '))).toEqual(
      ['road-2x11', 'trekking-3x8'].flatMap((bike) =>
        ['late', 'skill:0.5'].flatMap((player) =>
          [1, 2, 3].map((seed) => `${bike} adult-weekly ${player} ${seed}`),
        ),
      ),
    );
    const one = json('ride', '--level', level, ...WHO, '--player', 'late', '--seed', '2');
    const same = rows[1]?.split(',') ?? [];
    expect(Number(same[5])).toBeCloseTo(one['finishedS'] as number, 6);
    expect(Number(same[8])).toBeCloseTo(one['total'] as number, 1);
  });

  it('gives the same rows in parts, by groups and by rides', () => {
    const args = readArgs(words('late,early', '1-3'), batch.flags, false);
    const groups = groupsOf(args);
    const whole = groups.flatMap(rowsOfGroup);
    for (const count of [2, 3]) {
      const parts = Array.from({ length: count }, (_, i) => partOf(groups, i, count).flatMap(rowsOfGroup));
      expect(joinedRows(groups, parts)).toEqual(whole);
    }
  });

  it('as a process uses all cores and writes a file', () => {
    const file = shop.path('rides.ndjson');
    const asked = [...words('skill:0.3,skill:0.8', '1-30'), '--shape', 'ndjson', '--out', file];
    const { status, stdout, stderr } = start(process.cwd(), 'batch', ...asked);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toContain('120 rides');
    const rows = shop
      .read('rides.ndjson')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as { seed: number });
    expect(rows.map(({ seed }) => seed)).toEqual(
      [1, 2, 3, 4].flatMap(() => Array.from({ length: 30 }, (_, i) => i + 1)),
    );
  });

  it.each([
    ['--players', 'nobody', /no player "nobody"/],
    ['--players', 'skill:2', /skill:0 to skill:1/],
    ['--seeds', '9-1', /no list of seeds/],
    ['--bikes', 'tandem', /no bike "tandem"/],
    ['--shape', 'xml', /csv or ndjson/],
  ])('says what is wrong with %s %s', (flag, value, reason) => {
    const asked = words('late', '1');
    const at = asked.indexOf(flag);
    const changed = at < 0 ? [...asked, flag, value] : asked.with(at + 1, value);
    const { exitCode, err } = run('batch', ...changed);
    expect([exitCode, err]).toEqual([2, expect.stringMatching(reason)]);
  });
});

describe('help and version', () => {
  it('say more of one verb, and which game this is', () => {
    expect(run('help', 'batch').out).toMatch(/^batch --levels/);
    expect(run('gpx', '--help').out).toMatch(/^gpx --file/);
    expect(run('--version').out).toMatch(/^\d+\.\d+\.\d+, physics \d+$/);
    expect(json('--version')).toEqual({
      version: expect.any(String) as string,
      physicsVersion: expect.any(String) as string,
    });
    expect(run('help', 'nothing').exitCode).toBe(2);
  });
});
