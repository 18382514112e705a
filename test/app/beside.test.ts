/** Silhouettes of other rides follow their traces by the time since the start. */
import { describe, expect, it } from 'vitest';
import { besideFor } from '../../src/app/ride/beside.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { rideThrough } from '../../src/core/ride/run.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import { bundledLevels } from '../../src/app/levels.ts';

const level = bundledLevels().find(({ id }) => id === 'click-before-the-hill')!;
const world = buildRideWorld(courseOfLevel(level), bikeById('kids-20-1x7')!, riderById('child-9')!);
const { trace } = rideThrough(world, () => []);

describe('a ride beside', () => {
  it('is where its trace was at that time, and stands at its end', () => {
    const [last] = besideFor({ best: () => null, last: trace }, { beside: 'last' });
    const sample = trace.samples[200]!;
    expect(last!.at(sample.timeS)!.distanceM).toBeCloseTo(sample.distanceM, 6);
    expect(last!.at(-5)!.distanceM).toBe(trace.samples[0]!.distanceM);
    expect(last!.at(1e6)!.distanceM).toBe(trace.samples.at(-1)!.distanceM);
  });

  it('turns its cranks while the legs turned', () => {
    const [last] = besideFor({ best: () => null, last: trace }, { beside: 'both' }).slice(1);
    const { timeS } = trace.samples[100]!;
    const turned = last!.at(timeS + 1)!.crankTurns - last!.at(timeS)!.crankTurns;
    expect(turned).toBeCloseTo(trace.samples[105]!.cadenceRpm / 60, 1);
  });

  it('is nobody while the best ride is not known, where none is wished for, and where none may be', () => {
    const unknown = besideFor({ best: () => null, last: null }, { beside: 'both' });
    expect(unknown.map(({ who, at }) => [who, at(3)])).toEqual([['best', null]]);
    expect(besideFor({ best: () => trace, last: trace }, { beside: 'nobody' })).toEqual([]);
    expect(besideFor(null, { beside: 'both' })).toEqual([]);
  });
});
