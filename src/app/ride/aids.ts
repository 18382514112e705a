/**
 * Which help a ride shows, and what it says: the level decides, the player may always switch one on, and a check
 * ride has none. Joins the coach's hints and marks to words; draws nothing itself.
 */
import { countLive, type LiveCount, liveMarks, NOTHING_COUNTED } from '../../core/coach/live.ts';
import type { Guide, NextStep } from '../../core/coach/guide.ts';
import type { Push } from '../../core/model/transmission.ts';
import type { Aids, Level } from '../../core/level/schema.ts';
import { shiftsInFront } from '../../core/model/shifters.ts';
import type { LiveRide } from '../../core/ride/run.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import type { HudStep } from '../../game/hud/help.ts';
import { type RideLook, type RideViews, showsNumbers } from './views.ts';
import { keyName } from '../../words/common.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { AIDS, type KeyAction, type Settings } from '../../core/settings/settings.ts';
import { words } from '../../words/words.ts';

const say = words('hud');

/** Hints and marks are renewed this often (s of ride time). */
const EVERY_S = 0.25;

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

/** Help for one ride; its hints are the guide's. */
export function createRideHelp(ride: LiveRide, guide: Guide, level: Level) {
  let count: LiveCount = NOTHING_COUNTED;
  let toldAtS = Number.NEGATIVE_INFINITY;
  let wasOver = false;
  let tellsHands = false;
  return {
    /** Whether its hint tells the hands what to do in this moment. */
    tellsHands: (): boolean => tellsHands,
    frame(
      frame: RideFrame,
      aids: Aids,
      { help, want }: Pick<RideViews, 'help' | 'want'>,
      look: RideLook,
    ): void {
      // Behind the finish no time passes any more; what was hinted is taken away at once.
      const isOver = frame.phase === 'finished';
      if (isOver === wasOver && Math.abs(frame.timeS - toldAtS) < EVERY_S) return;
      wasOver = isOver;
      toldAtS = frame.timeS;
      const step = aids.nextStep ? guide.hint(frame) : null;
      tellsHands = step?.inM === 0;
      // Soft feet belong to a shift; whoever has them already, or leaves them to the game, is told of the lever only.
      const softens =
        tellsHands && !ride.world.autoEase && (frame.pressure === 'steady' || frame.pressure === 'press');
      const numbers = showsNumbers(level, look.settings);
      help.setStep(step === null ? null : stepInWords(step, softens, look, numbers));
      want(step !== null && tellsHands ? [...(softens ? (['ease'] as const) : []), actionOf(step)] : []);
      if (!aids.liveMarks) return help.setMarks(null);
      count = countLive(ride.world, ride.trace, count);
      const marks = liveMarks(ride.world, count);
      const names = ['cadence', 'easing', 'chainLine'] as const;
      const wanted = names.filter((name) => name !== 'chainLine' || shiftsInFront(ride.world.machine.bike));
      help.setMarks(wanted.map((name) => ({ name: say(`marks-${name}`), value: marks[name] })));
    },
  };
}

/** "Easier, 2 steps"; `ear-move` is the same said aloud. */
export function moveText(id: 'move' | 'move-after' | 'ear-move', one: Push): string {
  return say(id, { move: `${one.derailleur}-${one.direction}`, steps: one.steps });
}

const stepText = (first: Push, then: Push | null): string =>
  then === null
    ? moveText('move', first)
    : say('move-then', { first: moveText('move', first), second: moveText('move-after', then) });

function stepInWords(
  step: NextStep,
  softens: boolean,
  { settings, showPads }: RideLook,
  numbers: boolean,
): HudStep {
  const format: Format = createFormat(settings.units);
  const now = step.inM === 0;
  const roundM = format.unitM === 1 ? 5 : 20 * format.unitM;
  const moves = [step, ...(step.second === null ? [] : [step.second])].map(actionOf);
  const keyOf = (action: KeyAction): readonly string[] =>
    settings.keys[action].slice(0, 1).map((code) => keyName(code));
  return {
    action: numbers ? stepText(step, step.second) : moveText('move', { ...step, steps: 1 }),
    // Round numbers are all that can be read while riding.
    when: now
      ? say('step-now')
      : !numbers
        ? say('step-soon')
        : say('step-in', {
            distance: format.distance(Math.max(1, Math.round(step.inM / roundM)) * roundM),
          }),
    now,
    move: actionOf(step),
    softens,
    softKeys: showPads || !softens ? [] : keyOf('ease'),
    keys: showPads ? [] : moves.flatMap(keyOf),
  };
}

/** What the hands do for a move. */
export function actionOf({ derailleur, direction }: Pick<Push, 'derailleur' | 'direction'>): KeyAction {
  if (derailleur === 'rear') return direction === 'easier' ? 'rear-easier' : 'rear-harder';
  return direction === 'easier' ? 'front-smaller' : 'front-bigger';
}
