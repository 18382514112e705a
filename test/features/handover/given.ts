/** A plan with a long level of its own, an evening of results, and frames of both. No expectation lives here. */
import type { ClinicPlan } from '../../../src/core/group/plan.ts';
import type { HandOver } from '../../../src/core/transfer/rideFile.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import type { Message } from '../../../src/features/handover/message.ts';
import { madeUpRecord, ownLevel, planWith } from '../../core/group/rides.ts';
import type { readText } from '../../../src/features/handover/reading.ts';

/** What a text turned out to be. */
export type Arrival = Awaited<ReturnType<typeof readText>>['arrivals'][number];

export const SITE = 'https://hill.example/ride/';

/** A plan with that level in it. */
export function ownPlan(): ClinicPlan {
  return planWith({
    rides: [
      { kind: 'own', level: ownLevel() },
      { kind: 'check', audience: 'children' },
    ],
  });
}

/** 36 rides of one tablet, marks only. */
export function readiness(deviceId = 'tablet-3', count = 36): HandOver {
  return {
    planId: 'tuesday',
    deviceId,
    lastSeq: count,
    withdrawn: [],
    records: Array.from({ length: count }, (_, i) =>
      madeUpRecord(
        {
          deviceId,
          seq: i + 1,
          nickname: ['red-fox', 'blue-owl', '~Zoë', 'grey-hare'][i % 4] ?? '',
          attempt: 1 + Math.floor(i / 12),
        },
        seededRandom(i),
        4,
      ),
    ),
  };
}

/** A message that must come out. */
export function made(message: Message | null): Message {
  if (message === null) throw new Error('too big for codes');
  return message;
}

/** In another order; the same seed gives the same. */
export function shuffled<T>(items: readonly T[], seed: number): T[] {
  const random = seededRandom(seed);
  return items
    .map((item) => ({ item, place: random() }))
    .sort((a, b) => a.place - b.place)
    .map(({ item }) => item);
}
