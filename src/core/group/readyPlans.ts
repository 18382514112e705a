/**
 * Plans to begin with: one evening with adults, one hour with children, and a check for either. Data only;
 * a coach changes a copy. The title is the id: each device says it in its own language (`planTitle` in `src/words`). Each fits into an hour with eight riders on one device.
 */
import type { ClinicPlan } from './plan.ts';

/** Plans that come with the game. */
export const READY_PLANS: readonly ClinicPlan[] = [
  {
    schema: 1,
    id: 'children-first-hour',
    title: 'children-first-hour',
    rides: [{ kind: 'bundled', levelId: 'click-before-the-hill' }],
    seedRule: 'same',
    seed: 1,
    bike: 'kids-24-1x8',
    riderId: 'by-bike',
    attempts: 2,
    aids: 'as-level',
    shows: 'group-picture',
    order: 'rotate',
    audience: 'children',
  },
  {
    schema: 1,
    id: 'adults-first-evening',
    title: 'adults-first-evening',
    rides: [{ kind: 'bundled', levelId: 'rolling-road' }],
    seedRule: 'same',
    seed: 1,
    bike: 'own',
    riderId: 'by-feel',
    attempts: 2,
    aids: 'as-level',
    shows: 'group-picture',
    order: 'rotate',
    audience: 'everyone',
  },
  {
    schema: 1,
    id: 'children-check',
    title: 'children-check',
    rides: [{ kind: 'check', audience: 'children' }],
    seedRule: 'fresh',
    seed: 7,
    bike: 'kids-24-1x8',
    riderId: 'by-bike',
    attempts: 1,
    aids: 'none',
    shows: 'own-marks',
    order: 'free',
    audience: 'children',
  },
  {
    schema: 1,
    id: 'adults-check',
    title: 'adults-check',
    rides: [{ kind: 'check', audience: 'everyone' }],
    seedRule: 'fresh',
    seed: 7,
    bike: 'own',
    riderId: 'by-feel',
    attempts: 1,
    aids: 'none',
    shows: 'own-marks',
    order: 'free',
    audience: 'everyone',
  },
];
