/** What was really ridden beside the reference ride: the place where they differ most, and the gear of the reference there. */
import { describe, expect, it } from 'vitest';
import { compareRecorded, timesOfBoth } from '../../../src/core/coach/recorded.ts';
import type { RecordedSample } from '../../../src/core/gpx/recorded.ts';
import type { TraceSample } from '../../../src/core/ride/trace.ts';

const cadenceOf = (atM: number): number => (atM >= 300 && atM < 400 ? 60 : 80);

const recorded = (cadenceRpm: (atM: number) => number | null): RecordedSample[] =>
  Array.from({ length: 61 }, (_, i) => ({
    distanceM: i * 10,
    timeS: i * 2,
    speedMps: 5,
    cadenceRpm: cadenceRpm(i * 10),
  }));

const reference = Array.from(
  { length: 301 },
  (_, i): TraceSample => ({
    timeS: i / 2,
    distanceM: i * 2,
    speedMps: 4,
    cadenceRpm: 82,
    bandLowRpm: 70,
    bandHighRpm: 90,
    pressureRatio: 1,
    torqueRatio: 1,
    overloadRatio: 0,
    loadRatio: 1,
    ringIndex: 0,
    sprocketIndex: i * 2 >= 250 ? 3 : 1,
    developmentM: 4,
    crossedS: 0,
    pedalling: true,
    held: false,
  }),
);
const climb = (atM: number): number => atM * 0.05;

describe('a recorded ride beside the reference', () => {
  it('tells of the hundred metres with the greatest difference in cadence, and the gear of the reference there', () => {
    const found = compareRecorded(recorded(cadenceOf), reference, climb);
    expect(found).toMatchObject({
      fromM: 300,
      toM: 400,
      recordedCadenceRpm: 60,
      referenceCadenceRpm: 82,
      recordedSpeedMps: 5,
      referenceSpeedMps: 4,
      gear: { ringIndex: 0, sprocketIndex: 3 },
    });
    expect(found?.slopeRatio).toBeCloseTo(0.05, 10);
  });

  it('looks at climbs first, where there are some', () => {
    const found = compareRecorded(recorded(cadenceOf), reference, (atM) => (atM < 200 ? atM * 0.05 : 10));
    expect(found?.toM).toBeLessThanOrEqual(250);
  });

  it('compares speeds where no cadence was recorded, and takes standing still for none', () => {
    expect(
      compareRecorded(
        recorded(() => null),
        reference,
        climb,
      )?.recordedCadenceRpm,
    ).toBeNull();
    expect(
      compareRecorded(
        recorded(() => 0),
        reference,
        climb,
      )?.recordedCadenceRpm,
    ).toBeNull();
  });

  it('tells how long both took for the road they share', () => {
    const rode = recorded(cadenceOf).filter(({ distanceM }) => distanceM >= 100);
    expect(timesOfBoth(rode, reference)).toEqual({
      fromM: 100,
      toM: 600,
      recordedS: 100,
      referenceS: 125,
    });
    expect(timesOfBoth([], reference)).toBeNull();
  });

  it('says nothing where the rides share no stretch', () => {
    expect(compareRecorded([], reference, climb)).toBeNull();
    expect(compareRecorded(recorded(cadenceOf), reference.slice(0, 20), climb)).toBeNull();
  });
});
