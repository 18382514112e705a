/**
 * The verb `clinic`: files of tablets and plain recordings become one table and one picture, and whatever
 * cannot be used is named.
 */
import { describe, expect, it } from 'vitest';
import { sealRecord } from '../../src/core/group/records/record.ts';
import { writeRideFile } from '../../src/core/transfer/rideFile.ts';
import { planWith, realRecord } from '../core/group/rides.ts';
import { json, levelFile, run, workshop } from './workshop.ts';

const shop = workshop();
const plan = shop.write('plan.json', JSON.stringify(planWith()));
const records = [1, 2, 3].map((seq) =>
  realRecord({ deviceId: 't1', seq, nickname: 'red-fox', attempt: seq }, 0.2 * seq),
);
const head = { planId: 'tuesday', deviceId: 't1', lastSeq: 4, withdrawn: [] };
const file = shop.write('t1.ndjson', writeRideFile({ ...head, records }));

interface Answer {
  readonly rides: readonly Record<string, unknown>[];
  readonly picture: { readonly rides: number; readonly riders: number; readonly roads: readonly object[] };
  readonly apart: readonly unknown[];
  readonly damaged: readonly unknown[];
  readonly conflicts: readonly unknown[];
  readonly otherPlan: readonly string[];
  readonly devices: readonly unknown[];
}

const report = (...files: string[]): Answer => {
  const [first = '', ...more] = files;
  return json('clinic', '--plan', plan, '--rides', first, ...more) as unknown as Answer;
};

describe('clinic', () => {
  it('a file twice is the same as once, and the missing ride is named by its number', () => {
    const once = report(file);
    expect(report(file, file)).toEqual(once);
    expect(once.rides.map((ride) => ride['total'])).toEqual(records.map((record) => record.total));
    expect([once.picture.rides, once.picture.riders]).toEqual([3, 1]);
    expect(once.devices).toEqual([{ deviceId: 't1', have: 3, lastSeq: 4, missing: [[4, 4]] }]);
    expect(run('clinic', '--plan', plan, '--rides', file).out).toContain('Missing from t1: 4.');
  });

  it('claims that no ride bears out, damage, conflicts and other plans are named', () => {
    const [one, two, three] = records;
    if (one === undefined || two === undefined || three === undefined) throw new Error('no records');
    const boast = sealRecord({ ...one, total: 99.9 });
    const twin = sealRecord({ ...two, attempt: 1 });
    const other = sealRecord({ ...three, planId: 'friday' });
    const spoilt = shop.write(
      'bad.ndjson',
      `${JSON.stringify(boast)}\n{"id":"t9.1","seq":1,\n${JSON.stringify(other)}\n`,
    );
    const twins = shop.write('twins.json', JSON.stringify([two, twin]));
    const answer = report(spoilt, twins);
    expect(answer.rides).toEqual([]);
    expect(answer.apart).toEqual([{ recordId: 't1.1', code: 'other-marks', tick: null }]);
    expect(answer.damaged).toMatchObject([{ code: 'not-json', recordId: 't9.1', seq: 1 }]);
    expect(answer.conflicts).toEqual([{ code: 'same-id', recordIds: ['t1.2', 't1.2'] }]);
    expect(answer.otherPlan).toEqual(['t1.3']);
  });

  it('marks from a road that is not here count as they came, as on the page, and it is said', () => {
    const [one] = records;
    if (one === undefined) throw new Error('no records');
    const far = shop.write('far.json', JSON.stringify([sealRecord({ ...one, rideIndex: 7 })]));
    const answer = report(far);
    expect(answer.rides.map((ride) => [ride['ride'], ride['total']])).toEqual([[8, one.total]]);
    expect(answer.picture.rides).toBe(1);
    expect(answer.apart).toEqual([{ recordId: 't1.1', code: 'unknown-level', tick: null }]);
    const { out } = run('clinic', '--plan', plan, '--rides', far);
    expect(out).toContain('1 ride on a level that is not here: the marks are shown as they came');
    expect(out).not.toContain('Set apart');
  });

  it('plain recordings are marked and take their place in the plan', () => {
    const rider = ['--bike', 'kids-24-1x8', '--rider', 'child-9', '--player', 'early'];
    const ride = json('ride', '--level', levelFile('one-pitch-announced'), ...rider);
    const paths = ['owl-1.json', 'owl-2.json'].map((name) => shop.write(name, JSON.stringify(ride)));
    const { rides } = report(...paths);
    expect(rides.map((row) => [row['nickname'], row['attempt'], row['ride']])).toEqual([
      ['owl', 1, 1],
      ['owl', 2, 1],
    ]);
  });

  it('as CSV it is one row per ride under a head', () => {
    const { out } = run('clinic', '--plan', plan, '--rides', file, '--csv');
    const rows = out.split('\r\n');
    expect(rows).toHaveLength(1 + records.length);
    expect(rows[0]).toMatch(/^planId,deviceId,seq,/);
  });

  it.each([
    ['no plan', ['--rides', file], /--plan is missing/],
    ['no rides', ['--plan', plan], /--rides is missing/],
    [
      'a level instead of a plan',
      ['--plan', levelFile('rolling-road'), '--rides', file],
      /no plan that can be used/,
    ],
    ['a file that is missing', ['--plan', plan, '--rides', shop.path('none')], /There is no file/],
    ['an empty file', ['--plan', plan, '--rides', shop.write('empty', '')], /There are no rides/],
    [
      'a recording of another level',
      [
        '--plan',
        plan,
        '--rides',
        shop.write('r.json', JSON.stringify({ ...records[0]?.recording, levelHash: '0'.repeat(16) })),
      ],
      /not in this plan/,
    ],
  ])('%s ends in a sentence and exit code 2', (_what, words, says) => {
    const { exitCode, out, err } = run('clinic', ...words);
    expect([exitCode, out, err]).toEqual([2, '', expect.stringMatching(says)]);
  });
});
