/** Warnings of the level bench: each appears where it should, with its numbers, and nowhere else. */
import { describe, expect, it } from 'vitest';
import { buildMachine, powerForSpeedW } from '../../../src/core/model/machine.ts';
import { lintLevel } from '../../../src/core/level/lint.ts';
import { bike, rider } from '../ride/worlds.ts';
import { levelOf, recordedLevel } from './benchLevels.ts';
import { sentenceOf } from '../../../src/words/problems.ts';

const road = buildMachine(bike('road-2x11'), rider('adult-weekly'));
const child = buildMachine(bike('kids-20-1x7'), rider('child-9'));
/** Climbs anything here at 60 rpm, so that only what a test is about is warned of. */
const strong = buildMachine(bike('trekking-3x8'), rider('adult-strong'));
const codes = (parts: Record<string, unknown>, machine = strong): string[] =>
  lintLevel(levelOf(parts), machine).map((warning) => {
    expect(sentenceOf(warning)).not.toMatch(/\{\$|NaN/);
    return warning.code;
  });
const flat = (lengthM: number) => ({ kind: 'flat', lengthM });
const pitch = (lengthM: number, slopeRatio: number) => ({ kind: 'pitch', lengthM, slopeRatio });

describe('slopes', () => {
  it('a 14 % pitch that this rider cannot hold at 60 rpm is named with gear, place and cadence', () => {
    const [warning, ...more] = lintLevel(levelOf({ pieces: [flat(200), pitch(80, 0.14), flat(100)] }), child);
    expect(more).toEqual([]);
    expect(warning).toMatchObject({ code: 'cannot-hold-cadence', path: 'pieces[1]' });
    expect(sentenceOf(warning!)).toMatch(
      /^This rider cannot hold 60 rpm on the 14 % at 2\d\d m in the easiest gear \(\d+\s×\s\d+\); \d+ rpm are left\.$/,
    );
    const { cadenceRpm = 0, slopeRatio = 0, ringTeeth = 0, sprocketTeeth = 1 } = warning?.values ?? {};
    expect(slopeRatio).toBeCloseTo(0.14, 3);
    expect(cadenceRpm).toBeLessThan(60);
    // At that cadence the rider's power is just used up.
    const speedMps = (cadenceRpm / 60) * child.circumferenceM * (ringTeeth / sprocketTeeth);
    const gear = child.gears.find((g) => g.ringTeeth === ringTeeth && g.sprocketTeeth === sprocketTeeth);
    const powerW = powerForSpeedW(speedMps, {
      slopeRatio,
      windMps: 0,
      massKg: child.totalMassKg,
      cdaM2: child.bike.cdaM2,
      rollingCoefficient: child.bike.rollingCoefficient,
      efficiency: gear?.efficiency ?? 1,
    });
    expect(powerW).toBeCloseTo(child.rider.steadyPowerW, 6);
  });

  it('gravel and wind count: what holds on asphalt in still air may not hold there', () => {
    const pieces = [flat(200), pitch(200, 0.07), flat(100)];
    const alone = codes({ pieces }, road);
    const both = codes(
      {
        pieces,
        surfaces: [{ fromM: 150, toM: 450, surface: 'grass' }],
        winds: [{ fromM: 150, toM: 450, windMps: 10 }],
      },
      road,
    );
    expect([alone, both]).toEqual([[], ['cannot-hold-cadence']]);
  });

  it('a wall on which even standing legs stop is another warning', () => {
    const heavy = { ...road, bodyWeightTorqueNm: 20 };
    expect(codes({ pieces: [flat(100), pitch(60, 0.2), flat(100)] }, heavy)).toEqual(['cannot-climb']);
  });

  it('a rise that momentum carries over is none', () => {
    expect(codes({ pieces: [flat(200), pitch(20, 0.2), flat(100)] })).toEqual([]);
  });

  it('recorded roads are looked at as well', () => {
    expect(lintLevel(recordedLevel(), road)).toMatchObject([
      { code: 'cannot-hold-cadence', path: 'pieces[0]' },
    ]);
    expect(lintLevel(recordedLevel(), strong)).toEqual([]);
  });
});

describe('stop lines', () => {
  it('on steep ground are warned of, uphill and downhill', () => {
    const pieces = [
      flat(100),
      pitch(100, 0.08),
      flat(100),
      { kind: 'descent', lengthM: 200, slopeRatio: 0.08 },
      flat(100),
    ];
    const warnings = lintLevel(levelOf({ pieces, stopLinesM: [150, 250, 400] }), strong);
    expect(warnings.map(({ code, path }) => [code, path])).toEqual([
      ['stop-uphill', 'stopLinesM[0]'],
      ['stop-downhill', 'stopLinesM[2]'],
    ]);
    expect(warnings[0]?.values['slopeRatio']).toBeCloseTo(0.08, 2);
  });
});

describe('hidden stretches', () => {
  it('that last much longer than one can see are riding blind', () => {
    const hidden = [{ fromM: 100, toM: 300, sightM: 20 }];
    expect(codes({ pieces: [flat(400)], hidden })).toEqual(['hidden-long']);
    expect(codes({ pieces: [flat(400)], hidden: [{ fromM: 100, toM: 170, sightM: 20 }] })).toEqual([]);
  });

  it('with a pitch that is seen too late to shift are warned of', () => {
    const pieces = [flat(140), pitch(60, 0.1), flat(200)];
    expect(codes({ pieces, hidden: [{ fromM: 110, toM: 160, sightM: 15 }] })).toEqual(['hidden-pitch']);
    expect(codes({ pieces, hidden: [{ fromM: 110, toM: 160, sightM: 30 }] })).toEqual([]);
  });
});

describe('seeds', () => {
  it('a free ride without chance in it is the same road every time', () => {
    expect(codes({ teaches: 'free' })).toEqual(['seed-unused']);
    expect(
      codes({
        teaches: 'free',
        pieces: [{ kind: 'rollers', lengthM: 600, waveM: 200, steepestRatio: 0.04 }],
      }),
    ).toEqual([]);
  });

  it('a stop line that another seed puts on a wall is found', () => {
    const pieces = [{ kind: 'rollers', lengthM: 900, waveM: 200, steepestRatio: 0.1 }, flat(100)];
    const found = Array.from({ length: 20 }, (_, i) => codes({ pieces, stopLinesM: [500], seed: i }));
    expect(found.some((list) => list.includes('seed-moves-stop'))).toBe(true);
    expect(found.every((list) => !(list.includes('seed-moves-stop') && list.includes('stop-uphill')))).toBe(
      true,
    );
  });
});
