/** The picture of a group as programs read it: single lines and first shifts beside what pages draw, and no names. */
import { describe, expect, it } from 'vitest';
import { groupPicture } from '../../src/core/group/picture/group.ts';
import { groupRideOf } from '../../src/core/group/picture/groupRide.ts';
import { printedPicture } from '../../src/cli/common/printedPicture.ts';
import { bundledRemarker, realRecord } from '../core/group/rides.ts';

interface Printed {
  readonly roads: readonly {
    readonly caughtPitch: number | null;
    readonly verdict: { readonly pitch: number | null };
    readonly pitches: readonly {
      readonly index: number;
      readonly rides: number;
      readonly caughtRiders: number;
      readonly caughtRides: number;
      readonly firstShiftBeforeFootM: { readonly count: number } | null;
      readonly withoutShift: number;
      readonly referenceFirstShiftBeforeFootM: number | null;
    }[];
    readonly strip: {
      readonly lines: readonly { readonly cadenceRpm: readonly number[] }[];
      readonly easier: readonly number[];
      readonly harder: readonly number[];
    } | null;
  }[];
}

describe('the picture that is printed', () => {
  const records = ['red-fox', 'blue-owl'].flatMap((nickname, i) =>
    [1, 2].map((attempt) =>
      realRecord(
        { deviceId: 'a', seq: 2 * i + attempt, nickname, attempt },
        attempt - 0.9,
        'three-little-hills',
      ),
    ),
  );
  const remarker = bundledRemarker();
  const rides = records.flatMap((record) => groupRideOf(remarker.remark(record)) ?? []);
  const print = (ridden: typeof rides): Printed => printedPicture(groupPicture(ridden), ridden) as Printed;
  const [road] = print(rides).roads;

  it('names one pitch, the one the pages name', () => {
    expect(road?.verdict.pitch).not.toBeNull();
    expect(road?.caughtPitch).toBe(road?.verdict.pitch);
  });

  it('counts for each pitch who had little credit and who shifted for it', () => {
    for (const pitch of road?.pitches ?? []) {
      const low = records.filter(({ pitches }) => (pitches[pitch.index]?.creditPercent ?? 100) < 70);
      expect(pitch.caughtRides).toBe(low.length);
      expect(pitch.caughtRiders).toBe(new Set(low.map(({ nickname }) => nickname)).size);
      expect((pitch.firstShiftBeforeFootM?.count ?? 0) + pitch.withoutShift).toBe(pitch.rides);
    }
    expect(road?.pitches.some(({ caughtRides }) => caughtRides > 0)).toBe(true);
    expect(road?.pitches.some((pitch) => pitch.referenceFirstShiftBeforeFootM !== null)).toBe(true);
  });

  it('has every line and every shift once, in an order that does not tell who rode', () => {
    const sum = (counts: readonly number[] = []): number => counts.reduce((a, b) => a + b, 0);
    const made = (part: 'easierAtM' | 'harderAtM'): number =>
      rides.reduce((all, { line }) => all + (line?.[part].length ?? 0), 0);
    expect(road?.strip?.lines).toHaveLength(4);
    expect(sum(road?.strip?.easier)).toBe(made('easierAtM'));
    expect(sum(road?.strip?.harder)).toBe(made('harderAtM'));
    expect(print(rides.toReversed())).toEqual(print(rides));
  });

  it('holds no name, no device and no ride', () => {
    const text = JSON.stringify(print(rides));
    for (const { nickname, deviceId, id, checksum } of records)
      for (const name of [nickname, `"${deviceId}"`, id, checksum]) expect(text).not.toContain(name);
  });

  it('of marks alone has no lines', () => {
    const bare = rides.map(({ record }) => ({ record, line: null, reference: null }));
    expect(print(bare).roads[0]?.strip).toBeNull();
    expect(print(bare).roads[0]?.pitches.map(({ caughtRides }) => caughtRides)).toEqual(
      road?.pitches.map(({ caughtRides }) => caughtRides),
    );
  });
});
