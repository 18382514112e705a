/**
 * What the verbs answer: the promised keys, numbers that agree with the model worked out once more, and
 * rides that ride the same again.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { BIKES, RIDERS } from '../../src/core/model/presets.ts';
import { json, levelFile, repository, run, start, workshop, WHO } from './workshop.ts';

const shop = workshop();
const level = levelFile('one-pitch-announced');
const ride = (...more: string[]): string[] => ['ride', '--level', level, ...WHO, ...more];

type Gear = Record<string, number | boolean>;

describe('levels', () => {
  it('walks every bundled level and finds nothing wrong', () => {
    const answer = json('levels') as {
      ok: boolean;
      levels: { file: string; ok: boolean }[];
      problems: unknown[];
    };
    const files = readdirSync(join(repository, 'levels')).filter(
      (name) => name.endsWith('.json') && name !== 'level.schema.json',
    );
    expect([answer.ok, answer.problems]).toEqual([true, []]);
    expect(answer.levels).toHaveLength(files.length);
    expect(answer.levels.every((line) => line.ok)).toBe(true);
  });

  it('two files with one id cannot be told apart, which is a problem of the second', () => {
    const { exitCode, out } = run('levels', level, level, '--json');
    const { problems } = JSON.parse(out) as { problems: { path: string; code: string }[] };
    expect([exitCode, problems.map((p) => [p.path, p.code])]).toEqual([2, [['id', 'taken']]]);
  });

  it('a sound level beside a broken one is still listed', () => {
    const { out } = run('levels', level, shop.write('bad.json', '{'), '--json');
    const { levels } = JSON.parse(out) as { levels: { ok: boolean; id: string | null }[] };
    expect(levels.map((line) => [line.ok, line.id])).toEqual([
      [true, 'one-pitch-announced'],
      [false, null],
    ]);
  });
});

describe('gears', () => {
  it.each(BIKES.map((bike) => bike.id))('lists every gear of %s with the promised keys', (id) => {
    const bike = BIKES.find((candidate) => candidate.id === id);
    const answer = json('gears', '--bike', id) as { gears: Gear[]; capacityTeeth: number };
    const rear = Number(/-hub-(?<gears>\d+)/.exec(id)?.groups?.['gears'] ?? bike?.sprocketsTeeth.length);
    expect(answer.gears).toHaveLength((bike?.chainringsTeeth.length ?? 0) * rear);
    for (const gear of answer.gears)
      expect(Object.keys(gear).sort()).toEqual([
        'chainAngleDeg',
        'crossed',
        'developmentM',
        'efficiency',
        'hub',
        'ratio',
        'ringIndex',
        'ringTeeth',
        'sprocketIndex',
        'sprocketTeeth',
      ]);
    const teeth = [...(bike?.chainringsTeeth ?? []), 0, ...(bike?.sprocketsTeeth ?? [])];
    // A chain with one ring and one sprocket has nothing to take up.
    expect(answer.capacityTeeth > 0).toBe(teeth.length > 3);
    expect(answer.capacityTeeth).toBeLessThan(Math.max(...teeth) * 2);
  });

  it('50 × 17 of the road bike rolls π × 672 mm × 50 / 17', () => {
    const { gears } = json('gears', '--bike', 'road-2x11') as { gears: Gear[] };
    const gear = gears.find((g) => g['ringTeeth'] === 50 && g['sprocketTeeth'] === 17);
    expect(gear?.['developmentM']).toBeCloseTo((Math.PI * 0.672 * 50) / 17, 9);
  });
});

describe('steady', () => {
  it.each([
    ['0', '0', '200'],
    ['0.08', '0', '100'],
    ['0.02', '3', '180'],
    ['-0.02', '-2', '60'],
  ])(
    'on slope %s with wind %s and %s W, forces and power balance by its own constants',
    (slope, wind, power) => {
      const a = json('steady', ...WHO, '--slope', slope, '--wind', wind, '--power', power) as Record<
        string,
        number
      >;
      const v = a['speedMps'] ?? 0;
      const angle = Math.atan(Number(slope));
      const through = v + Number(wind);
      const air = 0.5 * (a['airDensityKgM3'] ?? 0) * (a['cdaM2'] ?? 0) * through * Math.abs(through);
      const weight = (a['totalMassKg'] ?? 0) * 9.80665;
      const force = air + weight * (Math.sin(angle) + (a['crr'] ?? 0) * Math.cos(angle)) + 0.091 + 0.0087 * v;
      expect(a['resistingForceN']).toBeCloseTo(force, 6);
      expect((force * v) / (a['efficiency'] ?? 1)).toBeCloseTo(Number(power), 5);
      const gear = a['gear'] as unknown as Record<string, number>;
      expect(a['cadenceRpm']).toBeCloseTo((60 * v) / (gear['developmentM'] ?? 1), 9);
      expect(gear['efficiency']).toBe(a['efficiency']);
    },
  );

  it('takes the rider’s own power if none is given, and names what it used', () => {
    const a = json('steady', ...WHO, '--slope=-0.01');
    expect([a['powerW'], a['slopeRatio'], a['windMps']]).toEqual([180, -0.01, 0]);
    expect(a['totalMassKg']).toBe(83.5);
  });

  it.each(RIDERS.map((rider) => rider.id))('%s finds a gear inside or near the band on the flat', (id) => {
    const rider = RIDERS.find((candidate) => candidate.id === id);
    const a = json(
      'steady',
      '--bike',
      id === 'child-9' ? 'kids-24-1x8' : 'road-2x11',
      '--rider',
      id,
      '--slope',
      '0',
    );
    expect(a['cadenceRpm']).toBeGreaterThan((rider?.cadenceLowRpm ?? 0) - 3);
    expect(a['cadenceRpm']).toBeLessThan((rider?.cadenceHighRpm ?? 0) + 3);
  });
});

describe('ride', () => {
  it.each(['never', 'late', 'late-easing', 'early'])(
    '%s rides to the end and leaves the promised keys',
    (player) => {
      const a = json(...ride('--player', player)) as Record<string, unknown> & {
        shifts: Record<string, unknown>[];
        pitches: Record<string, number>[];
      };
      expect(a['finishedS']).toBeGreaterThan(60);
      expect([a['footDowns'], a['chainDrops']]).toEqual([expect.any(Number), expect.any(Number)]);
      expect(a.pitches.map((pitch) => Object.keys(pitch).sort())).toEqual([
        ['endM', 'footM', 'steepestRatio'],
      ]);
      if (player === 'never') expect(a.shifts).toEqual([]);
      else expect(a.shifts.length).toBeGreaterThan(0);
      for (const shift of a.shifts)
        expect(Object.keys(shift).sort()).toEqual([
          'derailleur',
          'direction',
          'distanceM',
          'durationS',
          'fromIndex',
          'load',
          'speedMps',
          'startedAtM',
          'toIndex',
        ]);
    },
  );

  it('gives the same answer every time, and another road for another seed', () => {
    const rolling = ['ride', '--level', levelFile('rolling-road'), ...WHO, '--player', 'early'];
    expect(run(...rolling, '--json').out).toBe(run(...rolling, '--json').out);
    const other = json(...rolling, '--seed', '7');
    expect(other['seed']).toBe(7);
    expect(other['finishedS']).not.toBe(json(...rolling)['finishedS']);
  });

  it('traces one line a tick with the promised keys', () => {
    const out = shop.path('trace.ndjson');
    const a = json(...ride('--player', 'late', '--trace', out)) as { recording: { ticks: number } };
    const lines = shop
      .read('trace.ndjson')
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines).toHaveLength(a.recording.ticks);
    expect(Object.keys(lines[0] ?? {})).toEqual([
      'tick',
      'distanceM',
      'speedMps',
      'slopeRatio',
      'cadenceRpm',
      'crankTorqueNm',
      'pressure',
      'ringIndex',
      'sprocketIndex',
      'loadRatio',
      'torqueRatio',
      'chainAngleDeg',
      'crossed',
    ]);
    expect(lines.map((line) => line['tick'])).toEqual(lines.map((_, i) => i + 1));
    // An earlier trace may be overwritten.
    expect(run(...ride('--player', 'never', '--trace', out)).exitCode).toBe(0);
    expect(shop.read('trace.ndjson').trim().split('\n')).not.toHaveLength(lines.length);
  });

  it('rides a recording or a bare list of commands as a player', () => {
    const first = json(...ride('--player', 'late')) as {
      recording: { commands: unknown[]; checkpoints: string[] };
    };
    const whole = shop.write('whole.json', JSON.stringify(first));
    const recording = shop.write('recording.json', JSON.stringify(first.recording));
    const bare = shop.write('bare.json', JSON.stringify(first.recording.commands));
    for (const file of [whole, recording, bare]) {
      const again = json(...ride('--player', file)) as typeof first;
      expect(again.recording.checkpoints).toEqual(first.recording.checkpoints);
    }
  });
});

describe('replay', () => {
  const ridden = json(...ride('--player', 'early')) as {
    recording: Record<string, unknown>;
    finishedS: number;
    shifts: unknown;
  };
  const write = (change: Record<string, unknown>): string =>
    shop.write('replay.json', JSON.stringify({ ...ridden.recording, ...change }));

  it('comes to the same end with the same fingerprints', () => {
    const again = json('replay', '--recording', write({}));
    expect([again['same'], again['firstDifferentTick']]).toEqual([true, null]);
    expect([again['finishedS'], again['shifts']]).toEqual([ridden.finishedS, ridden.shifts]);
  });

  it('a recording that was touched differs, with exit code 2 and the tick', () => {
    const checkpoints = ridden.recording['checkpoints'] as string[];
    const file = write({
      checkpoints: [...checkpoints.slice(0, 3), '0'.repeat(16), ...checkpoints.slice(4)],
    });
    const { exitCode, out, err } = run('replay', '--recording', file, '--json');
    expect([exitCode, err]).toEqual([2, expect.stringMatching(/differ.*tick 2400/)]);
    expect(JSON.parse(out)).toMatchObject({ same: false, firstDifferentTick: 2400 });
  });

  it('a ride on a level that is not bundled wants the file, and only the right one', () => {
    const bundled = JSON.parse(readFileSync(level, 'utf8')) as Record<string, unknown>;
    shop.write('own.json', JSON.stringify({ ...bundled, id: 'own', joinM: 17 }));
    const file = json('ride', '--level', shop.path('own.json'), ...WHO, '--player', 'never') as {
      recording: unknown;
    };
    const path = shop.write('own-ride.json', JSON.stringify(file.recording));
    expect(run('replay', '--recording', path).err).toMatch(/--level/);
    expect(json('replay', '--recording', path, '--level', shop.path('own.json'))['same']).toBe(true);
    expect(run('replay', '--recording', path, '--level', level).err).toMatch(/not the road/);
  });
});

describe('as a process', () => {
  it('prints JSON and nothing else, with exit code 0', () => {
    const { status, stdout, stderr } = start(repository, ...ride('--player', 'early', '--json'));
    expect([status, stderr]).toEqual([0, '']);
    expect(JSON.parse(stdout)).toMatchObject({ levelId: 'one-pitch-announced', player: 'early' });
  });

  it('prints sentences and tables for people', () => {
    expect(start(repository, 'help').status).toBe(0);
    expect(run('gears', '--bike', 'kids-20-1x7').out).toMatch(/32\s×\s14[\s\S]*must take up \d+ teeth/);
    expect(run('steady', ...WHO, '--slope', '0').out).toMatch(/180 W on 0\.0 %[\s\S]*km\/h, best in/);
    expect(run(...ride('--player', 'late')).out).toMatch(/rear easier[\s\S]*Finished after/);
  });
});
