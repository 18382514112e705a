/**
 * Plans to begin with: one evening with adults, one hour with children, and a check for either. Data only;
 * a coach changes a copy. The title is the id: each device says it in its own language (`planTitle` in `src/words`). Each fits into an hour with eight riders on one device.
 */
import type { ClinicPlan } from './plan.ts';

/** What is usual in a plan: all on their own bikes, twice over the same road, one after the other. */
export const USUAL_PLAN = {
  schema: 1,
  seedRule: 'same',
  bike: 'own',
  riderId: 'by-feel',
  attempts: 2,
  aids: 'as-level',
  shows: 'group-picture',
  order: 'rotate',
  audience: 'everyone',
} as const satisfies Partial<ClinicPlan>;

const CHILDREN = { bike: 'kids-24-1x8', riderId: 'by-bike', audience: 'children' } as const;
const CHECK = { seedRule: 'fresh', attempts: 1, aids: 'none', shows: 'own-marks', order: 'free' } as const;

const named = (id: string) => ({ ...USUAL_PLAN, id, title: id });

export const READY_PLANS: readonly ClinicPlan[] = [
  {
    ...named('children-first-hour'),
    ...CHILDREN,
    rides: [{ kind: 'bundled', levelId: 'click-before-the-hill' }],
    seed: 1,
  },
  { ...named('adults-first-evening'), rides: [{ kind: 'bundled', levelId: 'rolling-road' }], seed: 1 },
  {
    ...named('children-check'),
    ...CHILDREN,
    ...CHECK,
    rides: [{ kind: 'check', audience: 'children' }],
    seed: 7,
  },
  { ...named('adults-check'), ...CHECK, rides: [{ kind: 'check', audience: 'everyone' }], seed: 7 },
];
