/**
 * The time of a ride: counting down, riding tick by tick, paused, over. Owns clock, command queue and what is
 * said; draws and sounds nothing itself but tells those who do.
 */
import type { Aids, Level } from '../../core/level/schema.ts';
import { midBandRpm } from '../../core/model/legs.ts';
import { FRESH_CLOCK, ticksDue } from '../../core/ride/clock.ts';
import { frameOf } from '../../core/ride/frame.ts';
import { brakeForLine } from '../../core/ride/pilot.ts';
import type { LiveRide } from '../../core/ride/run.ts';
import { roomFor } from '../../core/model/transmission.ts';
import type { RideCommand, RideEvent, RideFrame, ShiftDirection } from '../../core/ride/types.ts';
import { cueAt, cuesBesideGuide } from './cues.ts';
import type { FirstSteps } from '../../state/firstSteps.ts';
import { afterEvents, EMPTY_BOARD } from './remarks.ts';
import { cueText } from '../../words/cues.ts';
import { words } from '../../words/words.ts';

const say = words('hud');

type RideMode = 'counting' | 'riding' | 'paused' | 'over';

interface RideListeners {
  frame(frame: RideFrame): void;
  events(events: readonly RideEvent[]): void;
  say(cue: string | null, remark: string | null): void;
  /** A beat of the click track. */
  beat(): void;
  /** Seconds left, null when the pedals turn. */
  count(secondsLeft: number | null): void;
  over(): void;
}

export interface LoopOptions {
  readonly ride: LiveRide;
  readonly level: Level;
  readonly aids: () => Aids;
  /** True where the guide knows the best ride, so that its hints can be shown. */
  readonly guided: () => boolean;
  readonly listeners: RideListeners;
  /** Ride time over real time. */
  readonly pace: () => number;
  /** Faster countdowns in tests. */
  readonly countPace: number;
  /** Somebody else starts so much earlier (s). */
  readonly waitS: number;
  /** The game brakes at lines for this rider; never while they brake themselves. */
  readonly brakesAtLines: () => boolean;
  /** Commands of a ride that is watched again, tick by tick; null while somebody rides. */
  readonly script: ((tick: number) => readonly RideCommand[]) | null;
  /** The first steps with the levers, during which the world stands still. */
  readonly firstSteps: Pick<FirstSteps, 'stands'>;
}

/** Seconds of countdown before the pedals turn. */
const COUNT_S = 3;
/** What is said is looked at this often, and at once when something happens (ms). */
const SAY_EVERY_MS = 100;
/** The picture stays this long after the finish (ms): paper falls, and the dog jumps. */
const AFTER_FINISH_MS = 1800;

export class RideLoop {
  readonly #options: LoopOptions;
  readonly #pilot: ReturnType<typeof brakeForLine>;
  #mode: RideMode = 'counting';
  #countEndMs: number | null = null;
  #countShown: number | null = null;
  /** What is left of waiting for somebody else's start. */
  #waitS: number;
  #overAtMs: number | null = null;
  #clock = FRESH_CLOCK;
  #queue: RideCommand[] = [];
  #board = EMPTY_BOARD;
  #beats = 0;
  #saidAtMs = Number.NEGATIVE_INFINITY;

  constructor(options: LoopOptions) {
    this.#options = options;
    this.#waitS = options.waitS;
    this.#pilot = brakeForLine(options.ride.world);
  }

  mode(): RideMode {
    return this.#mode;
  }

  /** A command for the next tick. Pushes of a lever while paused are lost, as they should be. */
  command(command: RideCommand): void {
    if (this.#mode !== 'paused' || command.kind !== 'shift') this.#queue.push(command);
  }

  /** The frame of this moment; rides on as far as time has come. */
  nextFrame(timeMs: number): RideFrame {
    const { ride, listeners } = this.#options;
    if (this.#mode === 'counting') this.#count(timeMs);
    else if (this.#mode === 'riding') this.#rideOn(timeMs);
    else if (this.#overAtMs !== null && timeMs >= this.#overAtMs) {
      this.#overAtMs = null;
      listeners.over();
    }
    const frame = frameOf(ride.world, ride.now);
    listeners.frame(frame);
    return frame;
  }

  pause(): void {
    if (this.#mode === 'over') return;
    this.#mode = 'paused';
    if (this.#countShown !== null) this.#waitS = Math.max(0, this.#countShown - COUNT_S);
    this.#countEndMs = null;
    this.#countShown = null;
  }

  /** Counts down, then rides on. */
  resume(): void {
    if (this.#mode === 'paused') this.#mode = 'counting';
  }

  #count(timeMs: number): void {
    const { countPace, listeners } = this.#options;
    // Who is asked to do something first needs no countdown: the pedals turn when it is done.
    const isAsked = this.#options.firstSteps.stands(this.#options.ride.now.tick, timeMs);
    this.#countEndMs ??= timeMs + (isAsked ? 0 : ((COUNT_S + this.#waitS) * 1000) / countPace);
    const leftS = Math.ceil(((this.#countEndMs - timeMs) * countPace) / 1000);
    if (leftS > 0) {
      if (leftS !== this.#countShown) listeners.count(leftS);
      this.#countShown = leftS;
      return;
    }
    this.#countEndMs = null;
    this.#countShown = null;
    this.#waitS = 0;
    this.#mode = 'riding';
    this.#clock = FRESH_CLOCK;
    listeners.count(null);
  }

  #rideOn(timeMs: number): void {
    const { ride, listeners, pace, countPace, firstSteps } = this.#options;
    if (firstSteps.stands(ride.now.tick, timeMs)) {
      this.#clock = FRESH_CLOCK;
      return;
    }
    const due = ticksDue(this.#clock, timeMs, pace());
    this.#clock = due.clock;
    const events: RideEvent[] = [];
    for (let i = 0; i < due.ticks && ride.now.phase !== 'finished'; i += 1) this.#tick(events);
    if (events.length > 0) listeners.events(events);
    if (events.length > 0 || Math.abs(timeMs - this.#saidAtMs) >= SAY_EVERY_MS) this.#say(events, timeMs);
    this.#beat();
    if (ride.now.phase !== 'finished') return;
    this.#mode = 'over';
    this.#overAtMs = timeMs + AFTER_FINISH_MS / countPace;
  }

  /** Commands wait where a frame holds no tick; all of them act at the beginning of the next one. */
  #tick(events: RideEvent[]): void {
    const { ride, brakesAtLines, script } = this.#options;
    if (script !== null) {
      for (const event of ride.step(script(ride.now.tick))) events.push(event);
      return;
    }
    const commands = brakesAtLines() ? [...this.#queue, ...this.#pilot(ride.now)] : this.#queue;
    this.#queue = [];
    for (const event of ride.step(commands)) events.push(event);
  }

  #say(events: readonly RideEvent[], timeMs: number): void {
    this.#saidAtMs = timeMs;
    const { ride, level, aids, guided, listeners } = this.#options;
    const { tick, distanceM } = ride.now;
    const { machine, tickS } = ride.world;
    const ringFor = (direction: ShiftDirection): boolean =>
      roomFor(machine, ride.now, 'front', direction) > 0;
    this.#board = afterEvents(this.#board, events, tick * tickS, ringFor);
    const shown = aids();
    const cues = shown.nextStep && guided() ? cuesBesideGuide(level.cues) : level.cues;
    const cue = shown.cues ? cueAt(cues, distanceM) : null;
    const said = cue === null ? null : 'text' in cue ? cue.text : cueText(cue.cue, machine.bike);
    const { code } = this.#board;
    listeners.say(said, code === null ? null : say(`remark-${code}`));
  }

  #beat(): void {
    const { ride, aids, listeners } = this.#options;
    const { tick, phase } = ride.now;
    if (!aids().clickTrack || phase !== 'riding') return;
    const { rider } = ride.world.machine;
    const now = Math.floor((tick * ride.world.tickS * midBandRpm(rider)) / 60);
    if (now > this.#beats) listeners.beat();
    this.#beats = now;
  }
}
