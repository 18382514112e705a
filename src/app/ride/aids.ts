/**
 * Which help a ride shows, and what it says: the level decides, the player may always switch one on, and a check
 * ride has none. Joins the coach's hints and marks to words; draws nothing itself.
 */
import { countLive, type LiveCount, liveMarks, NOTHING_COUNTED } from '../../core/coach/live.ts';
import type { Guide } from '../../core/coach/guide.ts';
import type { Aids, Level } from '../../core/level/schema.ts';
import type { LiveRide } from '../../core/ride/run.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { HudHelp, HudStep } from '../../game/hud/help.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { AIDS, type Settings } from '../../core/settings/settings.ts';
import { hudWords } from './words.ts';

/** Hints and marks are renewed this often (s of ride time). */
const EVERY_S = 0.25;

/** The help of a level for a player. */
export function aidsFor(level: Level, { aidsOn }: Pick<Settings, 'aidsOn'>): Aids {
  if (level.teaches === 'check') return level.aids;
  const switched = Object.fromEntries(AIDS.filter((aid) => aidsOn.includes(aid)).map((aid) => [aid, true]));
  return { ...level.aids, ...switched };
}

/** The same, worked out again only when the settings have become others. */
export function aidsWhile(level: Level, settings: () => Settings): () => Aids {
  let known: { readonly of: Settings; readonly aids: Aids } | null = null;
  return () => {
    const now = settings();
    if (known?.of !== now) known = { of: now, aids: aidsFor(level, now) };
    return known.aids;
  };
}

/** What is asked with every frame. */
interface RideHelp {
  frame(frame: RideFrame, aids: Aids, shown: HudHelp, units: Settings['units']): void;
}

/** Help for one ride; its hints are the guide's. */
export function createRideHelp(ride: LiveRide, guide: Guide): RideHelp {
  let count: LiveCount = NOTHING_COUNTED;
  let toldAtS = Number.NEGATIVE_INFINITY;
  return {
    frame(frame, aids, shown, units) {
      if (Math.abs(frame.timeS - toldAtS) < EVERY_S) return;
      toldAtS = frame.timeS;
      shown.setStep(aids.nextStep ? stepInWords(guide, frame, createFormat(units)) : null);
      if (!aids.liveMarks) return shown.setMarks(null);
      count = countLive(ride.world, ride.trace, count);
      const marks = liveMarks(ride.world, count);
      const names = ['cadence', 'easing', 'chainLine'] as const;
      const wanted = names.filter((name) => name !== 'chainLine' || ride.world.machine.ringCount > 1);
      shown.setMarks(wanted.map((name) => ({ name: hudWords.marks[name], value: marks[name] })));
    },
  };
}

function stepInWords(guide: Guide, frame: RideFrame, format: Format): HudStep | null {
  const step = guide.hint(frame);
  if (step === null) return null;
  const now = step.inM === 0;
  const roundM = format.unitM === 1 ? 5 : 20 * format.unitM;
  return {
    action: hudWords.step(step, step.second),
    // Round numbers are all that can be read while riding.
    when: now
      ? hudWords.stepNow
      : hudWords.stepIn(format.distance(Math.max(1, Math.round(step.inM / roundM)) * roundM)),
    now,
    direction: step.makes,
  };
}
