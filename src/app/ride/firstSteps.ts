/**
 * The first steps with the levers in a ride on the screen: shows and tells what `src/state/firstSteps.ts` asks for, keeps
 * from the ride what was not asked for, and gives the legs soft feet at the first two shifts. A ride in which nothing is
 * asked for has them as well; they let everything through.
 */
import type { LiveRide } from '../../core/ride/run.ts';
import { UNDONE_WITHIN_S } from '../../core/ride/trace.ts';
import type { RideCommand } from '../../core/ride/types.ts';
import type { KeyAction } from '../../core/settings/settings.ts';
import type { InputHub } from '../../input/hub.ts';
import { createFirstSteps, type FirstStepShown } from '../../state/firstSteps.ts';
import { actionOf } from './aids.ts';

/** Rolled between two of the first steps (s of ride time): the shift back that is asked for is none that was undone at once. */
const ROLL_S = UNDONE_WITHIN_S + 0.2;
/** Legs are soft by themselves for so long at the first two shifts (s of ride time). */
const SOFT_S = 1;
/** Whoever does nothing for so long at one of them rides on (ms). */
const PATIENCE_MS = 15_000;
/** By ear a voice first says where one is; what is asked for comes after that (ms). */
const NAMED_MS = 1000;

interface FirstStepsOptions {
  readonly isAsked: boolean;
  readonly ride: LiveRide;
  readonly hub: Pick<InputHub, 'now'>;
  readonly byEar: boolean;
  /** Faster in tests. */
  readonly speed: number;
  readonly command: (command: RideCommand) => void;
  /** Shown, lit and told now; null when it is over. */
  readonly show: (shown: FirstStepShown | null) => void;
  readonly onDone: () => void;
}

export function firstStepsOf(options: FirstStepsOptions) {
  const { ride, hub, command } = options;
  const { autoEase, tickS } = ride.world;
  /** Until then the legs are soft by themselves; null when they are the player's. */
  let softUntilTick: number | null = null;
  const show = (shown: FirstStepShown | null): void => {
    // Feet that are soft already need not be so once more.
    if (shown?.asked === 'ease' && hub.now().pressure === 'ease') steps.takes('ease');
    else options.show(shown);
  };
  const steps = createFirstSteps({
    isAsked: options.isAsked,
    autoEase,
    rollTicks: Math.round(ROLL_S / tickS),
    isShifting: () => ride.now.rear !== null || ride.now.queue.length > 0,
    lookMs: (options.byEar ? NAMED_MS : 0) / options.speed,
    patienceMs: PATIENCE_MS / options.speed,
    show,
    onDone: options.onDone,
  });
  return {
    ...steps,
    /** Something is asked for: nothing else is said meanwhile. */
    isOn: (): boolean => steps.shown() !== null,
    /** A hand did something; whether the ride may have it. */
    takes(given: RideCommand): boolean {
      const action = actionOfCommand(given);
      if (action === null) return true;
      const isAskedFor = action === steps.shown()?.asked;
      if (!steps.takes(action)) return false;
      // Nobody has heard of soft feet yet.
      if (isAskedFor && given.kind === 'shift') {
        command({ kind: 'pressure', pressure: 'ease' });
        softUntilTick = ride.now.tick + Math.round(SOFT_S / tickS);
      }
      return true;
    },
    /** Looks whether feet have been soft for long enough. */
    frame(): void {
      if (softUntilTick === null || ride.now.tick < softUntilTick) return;
      softUntilTick = null;
      command({ kind: 'pressure', pressure: hub.now().pressure });
    },
    /** Shows once more what is asked for, to a picture that is new. */
    showAgain(): void {
      const shown = steps.shown();
      if (shown !== null) show(shown);
    },
  };
}

/** What a hand did; letting go is nothing. */
function actionOfCommand(command: RideCommand): KeyAction | null {
  if (command.kind === 'shift') return actionOf(command);
  if (command.kind === 'brake') return command.on ? 'brake' : null;
  return command.pressure === 'steady' ? null : command.pressure;
}
