/**
 * The road load against rides people really rode: four road rides recorded second by second (scikit-learn
 * MOOC, Inria, CC BY 4.0). They are read where they lie beside the repository and are no part of it;
 * without them these checks are skipped and say so.
 */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeEach, describe, expect, it } from 'vitest';
import { powerForSpeedW } from '../../src/core/model/machine.ts';
import { bandLowRpm } from '../../src/core/model/legs.ts';
import { rider } from '../core/ride/worlds.ts';

const FOLDER = fileURLToPath(new URL('../../../shared/data/rides/', import.meta.url));
const RIDES = `${FOLDER}rides_road_4x.csv`;
const CADENCES = `${FOLDER}cadence_and_gear_by_gradient.csv`;
const here = existsSync(RIDES) && existsSync(CADENCES);
const REASON = 'the open rides are not beside the repository (../shared/data/rides)';
if (!here) process.stdout.write(`Skipped: ${REASON}\n`);

const BLOCK_S = 60;
/** At least this many of its seconds are pedalled; otherwise coasting is what would be measured. */
const PEDALLED_S = 48;
const CLASSES = [
  { from: -3, to: -1, publishedW: 165 },
  { from: -1, to: -0.3, publishedW: 190 },
  { from: -0.3, to: 0.3, publishedW: 194 },
  { from: 0.3, to: 1, publishedW: 204 },
  { from: 1, to: 3, publishedW: 236 },
  { from: 3, to: 5, publishedW: 278 },
  { from: 5, to: 12, publishedW: 309 },
] as const;

interface Second {
  readonly ride: number;
  readonly timeS: number;
  readonly speedMps: number;
  readonly gradientPercent: number;
  readonly cadenceRpm: number;
  readonly powerW: number;
}

interface Block {
  readonly gradientPercent: number;
  readonly measuredW: number;
  readonly modelW: number;
}

function readSeconds(): Second[] {
  const [, ...lines] = readFileSync(RIDES, 'utf8').trim().split('\n');
  return lines.map((line) => {
    const [ride, timeS, speedMps, , gradientPercent, cadenceRpm, powerW] = line.split(',').map(Number);
    return { ride, timeS, speedMps, gradientPercent, cadenceRpm, powerW } as Second;
  });
}

function mean(seconds: readonly Second[], of: (second: Second) => number): number {
  return seconds.reduce((sum, second) => sum + of(second), 0) / seconds.length;
}

/** Averages first, physics afterwards: single seconds with noisy gradients make climbs look too strong. */
function toBlock(seconds: readonly Second[]): Block {
  const first = seconds[0] as Second;
  const last = seconds.at(-1) as Second;
  const gradientPercent = mean(seconds, (s) => s.gradientPercent);
  const efficiency = 0.976;
  const massKg = 85;
  const steadyW = powerForSpeedW(
    mean(seconds, (s) => s.speedMps),
    {
      slopeRatio: gradientPercent / 100,
      windMps: 0,
      massKg,
      cdaM2: 0.32,
      rollingCoefficient: 0.005,
      efficiency,
      airDensityKgM3: 1.225,
      bearings: true,
    },
  );
  const gainedJ = (massKg * (last.speedMps ** 2 - first.speedMps ** 2)) / 2;
  const modelW = steadyW + gainedJ / (last.timeS - first.timeS) / efficiency;
  return { gradientPercent, measuredW: mean(seconds, (s) => s.powerW), modelW };
}

function blocks(): Block[] {
  const all = readSeconds();
  const out: Block[] = [];
  for (const ride of [1, 2, 3, 4]) {
    const seconds = all.filter((second) => second.ride === ride);
    for (let i = 0; i + BLOCK_S <= seconds.length; i += BLOCK_S) {
      const part = seconds.slice(i, i + BLOCK_S);
      const unbroken = (part.at(-1) as Second).timeS - (part[0] as Second).timeS === BLOCK_S - 1;
      const pedalled = part.filter((second) => second.cadenceRpm > 0).length;
      if (unbroken && pedalled >= PEDALLED_S) out.push(toBlock(part));
    }
  }
  return out;
}

describe('four open road rides, minutes of pedalling: 85 kg, CdA 0.32, Crr 0.005, efficiency 0.976', () => {
  beforeEach((context) => context.skip(!here, REASON));
  const minutes = here ? blocks() : [];

  it.each(CLASSES)(
    'from $from to $to % the model asks what was measured, within 8 %',
    ({ from, to, publishedW }) => {
      const inClass = minutes.filter((m) => m.gradientPercent >= from && m.gradientPercent < to);
      expect(inClass.length).toBeGreaterThan(25);
      const measuredW = inClass.reduce((sum, m) => sum + m.measuredW, 0) / inClass.length;
      const modelW = inClass.reduce((sum, m) => sum + m.modelW, 0) / inClass.length;
      // The published class means confirm that the same minutes were chosen; how many count as pedalled is not published.
      expect(Math.abs(measuredW / publishedW - 1)).toBeLessThan(0.04);
      expect(Math.abs(modelW / measuredW - 1)).toBeLessThan(0.08);
    },
  );
});

describe('cadence on climbs in the open rides', () => {
  beforeEach((context) => context.skip(!here, REASON));

  /** Change of mean cadence per 1 % of gradient, weighted by the time spent. */
  function fallPerPercent(ride: string): number {
    const rows = readFileSync(CADENCES, 'utf8')
      .trim()
      .split('\n')
      .map((line) => line.split(','))
      .filter(([name]) => name === ride)
      .map((cells) => {
        const [low, high] = (cells[1] as string).split('..').map(Number) as [number, number];
        return { x: (low + high) / 2, y: Number(cells[5]), w: Number(cells[2]) };
      });
    const total = rows.reduce((sum, row) => sum + row.w, 0);
    const x0 = rows.reduce((sum, row) => sum + row.w * row.x, 0) / total;
    const y0 = rows.reduce((sum, row) => sum + row.w * row.y, 0) / total;
    const xy = rows.reduce((sum, row) => sum + row.w * (row.x - x0) * (row.y - y0), 0);
    return -xy / rows.reduce((sum, row) => sum + row.w * (row.x - x0) ** 2, 0);
  }

  // A flat ride and one gently rolling one, whose climbs hardly leave 3 %, fall outside and are left out.
  it.each(['ride_hills_27km', 'road_1', 'road_2', 'road_3', 'road_4'])(
    '%s falls by 1.3 to 1.8 rpm per 1 %, and so does our band',
    (ride) => {
      const fall = fallPerPercent(ride);
      expect(fall).toBeGreaterThan(1.3);
      expect(fall).toBeLessThan(1.8);
      const weekly = rider('adult-weekly');
      const ours = weekly.cadenceLowRpm - bandLowRpm(weekly, 0.01);
      expect(Math.abs(ours - fall)).toBeLessThan(0.25);
    },
  );
});
