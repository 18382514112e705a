/**
 * Riders with one fault and no other, over the best ride's own manoeuvres: each does one thing wrong, in doses, and
 * everything else like the best ride. What a coach would say to each is written beside it.
 */
import { midBandRpm } from '../../../src/core/model/legs.ts';
import { cadenceAtRpm, gearAt } from '../../../src/core/model/machine.ts';
import type { Pressure } from '../../../src/core/model/types.ts';
import { planRoad } from '../../../src/core/planner/plan.ts';
import { scriptOfPolicy } from '../../../src/core/planner/reference.ts';
import { type Manoeuvre, scriptDriver } from '../../../src/core/planner/script.ts';
import type { Controller } from '../../../src/core/ride/run.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import type { RideCommand, RideState, RideWorld } from '../../../src/core/ride/types.ts';
import type { Verdict } from '../../../src/core/coach/types.ts';
import { shifted } from './exploits.ts';

type Code = Verdict['change']['code'];

/** A rider with one fault. */
export interface OneFault {
  readonly fault: string;
  /** Headlines that name it. */
  readonly named: readonly Code[];
  readonly doses: readonly number[];
  /** Null where the bike has no such gear. */
  readonly rider: (world: RideWorld, script: readonly Manoeuvre[], dose: number) => Controller | null;
}

const isBusy = (s: RideState): boolean => s.rear !== null || s.front !== null || s.queue.length > 0;
const rpmOf = (w: RideWorld, s: RideState): number =>
  cadenceAtRpm(s.speedMps, gearAt(w.machine, s.ringIndex, s.sprocketIndex).developmentM);
const developmentOf = (w: RideWorld, one: Pick<Manoeuvre, 'ringIndex' | 'sprocketIndex'>): number =>
  gearAt(w.machine, one.ringIndex, one.sprocketIndex).developmentM;

/** The gear before a manoeuvre of a script. */
function before(world: RideWorld, script: readonly Manoeuvre[], i: number): Omit<Manoeuvre, 'atM'> {
  return script[i - 1] ?? { ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex };
}

const isEasier = (world: RideWorld, script: readonly Manoeuvre[], i: number): boolean =>
  developmentOf(world, script[i] as Manoeuvre) < developmentOf(world, before(world, script, i));

/**
 * Every gear `by` sprockets from where the best ride has it (positive: easier), as far as the bike goes; null where the
 * bike goes no further than the gear one starts in, so that nothing but hills would be ridden in another gear.
 */
function otherGear(world: RideWorld, script: readonly Manoeuvre[], by: number): Manoeuvre[] | null {
  const most = world.machine.sprocketCount - 1;
  const start = world.startSprocketIndex + by;
  if (start < 0 || start > most) return null;
  const moved = [
    { atM: 5, ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex },
    ...script,
  ];
  return moved.map((one) => ({
    ...one,
    sprocketIndex: Math.min(most, Math.max(0, one.sprocketIndex + by)),
  }));
}

const driving = (world: RideWorld, script: readonly Manoeuvre[] | null): Controller | null =>
  script === null ? null : scriptDriver(world, script);

/** Easier manoeuvres so much earlier, none of them before the one that came before it. */
function earlier(world: RideWorld, script: readonly Manoeuvre[], byM: number): Manoeuvre[] {
  let lastM = 0;
  return script.map((one, i) => {
    const atM = isEasier(world, script, i) ? Math.max(lastM, one.atM - byM) : one.atM;
    lastM = atM;
    return { ...one, atM };
  });
}

/** Pressure of the legs where the hands have nothing to do. */
function withPressure(driver: Controller, wish: (state: RideState) => Pressure | null): Controller {
  return (state) => {
    const commands = driver(state);
    if (commands.length > 0 || isBusy(state) || state.pressure === 'ease' || state.phase !== 'riding')
      return commands;
    const want = wish(state) ?? 'steady';
    return state.pressure === want ? commands : [{ kind: 'pressure', pressure: want }];
  };
}

/** The manoeuvres that make the bike easier for a pitch. */
function forPitch(world: RideWorld, one: Manoeuvre): boolean {
  return world.course.pitches.some((p) => one.atM > p.footM - 110 && one.atM < p.endM);
}

/**
 * For every pitch only a share of the steps that the best ride makes: as easy as that on the ring one comes on, and no
 * easier before the pitch is over.
 */
function tooFew(world: RideWorld, script: readonly Manoeuvre[], share: number): Manoeuvre[] {
  const { machine, course } = world;
  const moved = [...script];
  for (const pitch of course.pitches) {
    const inside = moved.flatMap((one, i) =>
      one.atM > pitch.footM - 110 && one.atM < pitch.endM ? [i] : [],
    );
    const first = inside.find((i) => isEasier(world, moved, i));
    if (first === undefined) continue;
    const from = before(world, moved, first);
    const onRing = machine.gears.filter(
      (g) => g.ringIndex === from.ringIndex && g.sprocketIndex > from.sprocketIndex,
    );
    const easiest = Math.min(...inside.map((i) => developmentOf(world, moved[i] as Manoeuvre)));
    const steps = onRing.filter((g) => g.developmentM >= easiest * 0.985).length;
    // Of one step nothing can be left out but all of it, which is another fault.
    const limit = onRing[Math.max(1, Math.floor(share * steps)) - 1];
    if (limit === undefined || steps < 2) continue;
    for (const i of inside) {
      const one = moved[i] as Manoeuvre;
      if (developmentOf(world, one) < developmentOf(world, limit))
        moved[i] = { atM: one.atM, ringIndex: limit.ringIndex, sprocketIndex: limit.sprocketIndex };
    }
  }
  return moved;
}

/** For every pitch the hand takes the wrong way: so many sprockets harder where the best ride first goes easier, until the pitch is over. */
function wrongWay(world: RideWorld, script: readonly Manoeuvre[], by: number): Manoeuvre[] | null {
  const moved = [...script];
  let turned = 0;
  for (const { footM, endM } of world.course.pitches) {
    const inside = moved.flatMap((one, i) => (one.atM > footM - 110 && one.atM < endM ? [i] : []));
    const first = inside.find((i) => isEasier(world, moved, i));
    if (first === undefined) continue;
    const from = before(world, moved, first);
    if (from.sprocketIndex < by) continue;
    turned += 1;
    for (const i of inside.filter((one) => one >= first))
      moved[i] = { ...from, atM: (moved[i] as Manoeuvre).atM, sprocketIndex: from.sprocketIndex - by };
  }
  return turned === 0 ? null : moved;
}

const nearHill = (world: RideWorld, s: RideState): boolean =>
  world.course.pitches.some((p) => s.distanceM > p.footM - 80 && s.distanceM < p.endM);

/** A click there and back on every quiet stretch. */
function fidgets(world: RideWorld, driver: Controller, everyS: number): Controller {
  let quietTick = 0;
  let script: { tick: number; command: RideCommand }[] = [];
  return (state) => {
    const due = script.filter((one) => one.tick === state.tick).map((one) => one.command);
    script = script.filter((one) => one.tick > state.tick);
    if (due.length > 0 || script.length > 0) return due;
    const commands = driver(state);
    const calm = state.pressure === 'steady' && state.phase === 'riding' && !state.braking && !isBusy(state);
    if (commands.length > 0 || !calm) quietTick = state.tick;
    const hill = world.course.pitches.some(
      (p) => state.distanceM > p.footM - 60 && state.distanceM < p.endM + 5,
    );
    if (state.tick - quietTick < everyS * 120 || state.speedMps < 3 || hill) return commands;
    const up = rpmOf(world, state) > midBandRpm(world.machine.rider) && state.sprocketIndex > 0;
    if (!up && state.sprocketIndex >= world.machine.sprocketCount - 1) return commands;
    const push = (direction: 'easier' | 'harder', s: number): { tick: number; command: RideCommand } => ({
      tick: state.tick + Math.round(s * 120),
      command: { kind: 'shift', derailleur: 'rear', direction, steps: 1 },
    });
    script = [
      push(up ? 'harder' : 'easier', 0.3),
      push(up ? 'easier' : 'harder', 0.9),
      { tick: state.tick + 216, command: { kind: 'pressure', pressure: 'steady' } },
    ];
    quietTick = state.tick;
    return [{ kind: 'pressure', pressure: 'ease' }];
  };
}

/** Stays on the ring the chain is on as long as some gear there, crossed or not, is nearly as good; null with one ring. */
function crossing(world: RideWorld, script: readonly Manoeuvre[], within: number): Manoeuvre[] | null {
  if (world.machine.ringCount < 2) return null;
  let ringIndex = world.startRingIndex;
  return script.map((one) => {
    const wanted = developmentOf(world, one);
    const near = world.machine.gears
      .filter((g) => g.ringIndex === ringIndex && Math.abs(g.developmentM / wanted - 1) < within)
      .toSorted((a, b) => Math.abs(a.developmentM - wanted) - Math.abs(b.developmentM - wanted))[0];
    ringIndex = near?.ringIndex ?? one.ringIndex;
    return near === undefined ? one : { ...one, ringIndex, sprocketIndex: near.sprocketIndex };
  });
}

/** The same person with legs that like to turn faster or slower (rpm), and what the plan does for such legs. */
export function withTaste(world: RideWorld, rpm: number): RideWorld {
  const { bike, rider } = world.machine;
  const other = {
    ...rider,
    cadenceLowRpm: rider.cadenceLowRpm + rpm,
    cadenceHighRpm: rider.cadenceHighRpm + rpm,
  };
  return buildRideWorld(world.course, bike, other);
}

/** The best ride's timing in the gears that such legs like: everything harder or easier by the ratio of the bands. */
function byTaste(world: RideWorld, script: readonly Manoeuvre[], rpm: number): Controller | null {
  const { machine } = world;
  const ratio = midBandRpm(machine.rider) / (midBandRpm(machine.rider) + rpm);
  const start = { atM: 5, ringIndex: world.startRingIndex, sprocketIndex: world.startSprocketIndex };
  const gears = [start, ...script].map((one): Manoeuvre => {
    const wanted = developmentOf(world, one) * ratio;
    const near = machine.gears
      .filter((g) => g.ringIndex === one.ringIndex && !g.crossed)
      .toSorted((a, b) => Math.abs(a.developmentM - wanted) - Math.abs(b.developmentM - wanted))[0];
    return near === undefined ? one : { ...one, sprocketIndex: near.sprocketIndex };
  });
  return gears[0]?.sprocketIndex === start.sprocketIndex ? null : scriptDriver(world, gears);
}

/** On less of the road than this in another gear nobody would see a taste. */
const SEEN_SHARE = 0.25;

/** Share of the road that one script rides in another gear than the other, harder (1) or easier (-1). */
function otherShare(
  world: RideWorld,
  own: readonly Manoeuvre[],
  best: readonly Manoeuvre[],
  side: 1 | -1,
): number {
  const gearOf = (script: readonly Manoeuvre[], m: number): number =>
    developmentOf(world, script.findLast(({ atM }) => atM <= m) ?? before(world, script, 0));
  const { lengthM } = world.course;
  let other = 0;
  for (let m = 0; m < lengthM; m += 1) if (side * (gearOf(own, m) - gearOf(best, m)) > 0) other += 1;
  return other / lengthM;
}

/**
 * What the plan does for legs of that taste, ridden with the band of others; null where the gears of the bike are so few
 * that it is the same ride but for the hills, on which a step is then too few or too many.
 */
function plannedByTaste(world: RideWorld, script: readonly Manoeuvre[], rpm: number): Controller | null {
  const other = withTaste(world, rpm);
  const own = scriptOfPolicy(other, planRoad(other));
  return otherShare(world, own, script, rpm < 0 ? 1 : -1) < SEEN_SHARE ? null : scriptDriver(world, own);
}

/** All riders with one fault. */
export const ONE_FAULTS: readonly OneFault[] = [
  {
    fault: 'late',
    named: ['late-pitch', 'foot-down'],
    doses: [15, 25, 40],
    rider: (w, script, m) => shifted(w, script, m, true),
  },
  {
    fault: 'early',
    named: ['early-pitch'],
    doses: [40, 60, 80],
    rider: (w, script, m) => scriptDriver(w, earlier(w, script, m)),
  },
  {
    fault: 'too few steps',
    named: ['few-steps', 'foot-down'],
    doses: [0.34, 0.5, 0.67],
    rider: (w, script, share) => scriptDriver(w, tooFew(w, script, share)),
  },
  {
    fault: 'the wrong way',
    named: ['wrong-way'],
    doses: [1, 2],
    rider: (w, script, by) => driving(w, wrongWay(w, script, by)),
  },
  {
    fault: 'hard gear all day',
    named: ['slow-legs'],
    doses: [-2, -3],
    rider: (w, script, by) => driving(w, otherGear(w, script, by)),
  },
  {
    fault: 'easy gear all day',
    named: ['fast-legs'],
    doses: [2, 3],
    rider: (w, script, by) => driving(w, otherGear(w, script, by)),
  },
  {
    fault: 'slower legs by taste',
    named: ['slow-legs'],
    doses: [-10, -15],
    rider: byTaste,
  },
  {
    fault: 'slower legs by taste, planned',
    named: ['slow-legs'],
    doses: [-15],
    rider: plannedByTaste,
  },
  {
    fault: 'faster legs by taste',
    named: ['fast-legs'],
    doses: [10, 15],
    rider: byTaste,
  },
  {
    fault: 'faster legs by taste, planned',
    named: ['fast-legs'],
    doses: [15],
    rider: plannedByTaste,
  },
  {
    fault: 'not easing',
    named: ['ease'],
    doses: [0, 1, 2],
    rider: (w, script, spares) => {
      let n = 0;
      const drive = scriptDriver(w, script);
      return (s) => {
        const commands = drive(s);
        if (commands.some((c) => c.kind === 'pressure' && c.pressure === 'ease')) n += 1;
        // One manoeuvre in so many is eased after all.
        return spares > 0 && n % (4 - spares) === 0
          ? commands
          : commands.filter((c) => c.kind !== 'pressure');
      };
    },
  },
  {
    fault: 'fidgeting',
    named: ['fidget'],
    doses: [2, 4, 7],
    rider: (w, script, everyS) => fidgets(w, scriptDriver(w, script), everyS),
  },
  {
    fault: 'crossed chain',
    named: ['crossed'],
    doses: [0.08, 0.14, 0.2],
    rider: (w, script, within) => driving(w, crossing(w, script, within)),
  },
  {
    fault: 'pushing through',
    named: ['pushed', 'foot-down'],
    doses: [0, 10, 20],
    rider: (w, script, spareM) => {
      const kept = script.filter((one, i) => !isEasier(w, script, i) || !forPitch(w, one));
      const on = (s: RideState): boolean =>
        w.course.pitches.some((p) => s.distanceM > p.footM + spareM && s.distanceM < p.endM);
      return withPressure(scriptDriver(w, kept), (s) => (on(s) ? 'press' : null));
    },
  },
  {
    fault: 'coasting',
    named: ['coasted'],
    doses: [2, 3, 4],
    rider: (w, script, n) =>
      withPressure(scriptDriver(w, script), (s) =>
        Math.floor(s.tick / 240) % n === 0 && !nearHill(w, s) ? 'coast' : null,
      ),
  },
  {
    fault: 'never shifting',
    named: ['late-pitch', 'foot-down'],
    doses: [0],
    rider: (w) => scriptDriver(w, []),
  },
  {
    fault: 'dawdling',
    named: ['dawdle'],
    // Steady for so many of ten seconds, soft for the rest, but as the best ride on the way to hills and up them.
    doses: [2, 4, 6],
    rider: (w, script, steadyOfTen) =>
      withPressure(scriptDriver(w, script), (s) =>
        (s.tick / 120) % 10 < steadyOfTen || nearHill(w, s) ? null : 'ease',
      ),
  },
];
