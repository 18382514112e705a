/**
 * The gears of a bike as a staircase from the easiest to the hardest, in the order one would really shift: along the
 * sprockets on each ring, over to the next ring where that takes few clicks and no crossed chain. Every other gear
 * lies on the step it is nearest to, so that each gear is found exactly once.
 */
import type { Gear, Machine } from './types.ts';

/** Two gears nearer than this are as good as one (share of development). */
export const OVERLAP = 0.04;

export type GearStep = Readonly<ReturnType<typeof gearStairs>[number]>;

/** A step at a change of ring should be about as high as others (ours). */
const USUAL_STEP = 0.12;
/** A change of ring must at least make it harder. */
const LEAST_STEP = 0.01;
/** What counts against a way up: a crossed gear on it, a step unlike others, a click at a change of ring (ours). */
const COST = { crossed: 1, step: 10, click: 0.3 } as const;

export function gearStairs(machine: Machine) {
  const path = cheapestWay(machine);
  const rest = machine.gears.filter((gear) => !path.includes(gear));
  const others = new Map(path.map((gear) => [gear, [] as { gear: Gear; same: boolean }[]]));
  for (const gear of rest) {
    const near = nearest(path, gear);
    others.get(near)?.push({ gear, same: apart(near, gear) < OVERLAP });
  }
  return path.map((gear, i) => {
    const below = path[i - 1];
    return {
      gear,
      /** How much harder than the step below (share), and what the hands do for it; null on the lowest. */
      rise: below === undefined ? null : riseBetween(below, gear),
      /** Gears that lie on the same step; `same` where nobody would feel a difference. */
      others: (others.get(gear) ?? []).toSorted((a, b) => a.gear.developmentM - b.gear.developmentM),
    };
  });
}

function riseBetween(below: Gear, gear: Gear) {
  return {
    stepRatio: gear.developmentM / below.developmentM - 1,
    hands: {
      /** 1 to the next bigger ring, 0 none. */
      ringSteps: gear.ringIndex - below.ringIndex,
      /** Sprockets towards harder, or towards easier where negative. */
      rearSteps: below.sprocketIndex - gear.sprocketIndex,
    },
  };
}

function cheapestWay(machine: Machine): Gear[] {
  const { ringCount, sprocketCount } = machine;
  const at = (ring: number, sprocket: number): Gear => machine.gears[ring * sprocketCount + sprocket] as Gear;
  const along = (ring: number, from: number, to: number): Gear[] =>
    Array.from({ length: from - to + 1 }, (_, i) => at(ring, from - i));
  const crossedOn = (gears: readonly Gear[]): number => gears.filter(({ crossed }) => crossed).length;
  let best: { cost: number; path: Gear[] } | null = null;
  const climb = (ring: number, from: number, path: readonly Gear[], cost: number): void => {
    if (best !== null && cost >= best.cost) return;
    if (ring === ringCount - 1) {
      const top = along(ring, from, 0);
      const all = cost + COST.crossed * crossedOn(top);
      if (best === null || all < best.cost) best = { cost: all, path: [...path, ...top] };
      return;
    }
    // Out on one sprocket, in on another of the next ring.
    for (let outIndex = 0; outIndex <= from; outIndex += 1) {
      const used = along(ring, from, outIndex);
      for (let inIndex = 0; inIndex < sprocketCount; inIndex += 1) {
        const step = at(ring + 1, inIndex).developmentM / at(ring, outIndex).developmentM - 1;
        if (step < LEAST_STEP) continue;
        const price =
          COST.crossed * crossedOn(used) +
          COST.step * Math.abs(step - USUAL_STEP) +
          COST.click * Math.abs(inIndex - outIndex);
        climb(ring + 1, inIndex, [...path, ...used], cost + price);
      }
    }
  };
  climb(0, sprocketCount - 1, [], 0);
  const found = best as { path: Gear[] } | null;
  // Rings so alike that no change makes it harder: the gears as they follow in development.
  return found?.path ?? [...machine.gears].sort((a, b) => a.developmentM - b.developmentM);
}

function nearest(path: readonly Gear[], gear: Gear): Gear {
  return path.reduce((best, one) => (apart(one, gear) < apart(best, gear) ? one : best));
}

/** How far apart two gears are, as a share of the smaller development. */
function apart(a: Gear, b: Gear): number {
  const ratio = a.developmentM / b.developmentM;
  return (ratio > 1 ? ratio : 1 / ratio) - 1;
}
