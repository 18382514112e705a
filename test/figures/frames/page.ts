/**
 * One picture at a time for the frame figures: an empty scene, the ride as the game draws it, and the same
 * picture by a bare loop without an engine. All on the same canvas size; `?show=` chooses.
 */
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { FRESH_CLOCK, ticksDue } from '../../../src/core/ride/clock.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/virtual/riders.ts';
import { startRide } from '../../../src/core/ride/run.ts';
import type { RideCommand, RideFrame, RideWorld } from '../../../src/core/ride/types.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { CANVAS, Game, SCALE_NONE, Scene } from '../../../src/game/engine/engine.ts';
import { outfitLook, USUAL_OUTFIT } from '../../../src/core/settings/outfit.ts';
import { mountRide } from '../../../src/game/mount.ts';
import { layoutFor } from '../../../src/game/views/layout.ts';
import { Stage } from '../../../src/game/views/stage.ts';
import levelFile from '../../../levels/rolling-road.json';

const SCENERY = {
  place: 'valley',
  light: 'day',
  air: 'clear',
  company: [],
  apples: false,
  seed: 1,
  numbers: true,
} as const;
const LOOK = {
  theme: 'indoor',
  reducedMotion: false,
  childRider: false,
  dog: false,
  kit: outfitLook(USUAL_OUTFIT),
  friendKit: outfitLook(USUAL_OUTFIT),
} as const;
/** More than any watching lasts. */
const WATCHED_TICKS = 20_000;

const picture = document.getElementById('picture') as HTMLElement;

function showEmpty(): void {
  new Game({
    type: CANVAS,
    parent: picture,
    width: picture.clientWidth,
    height: picture.clientHeight,
    scale: { mode: SCALE_NONE, zoom: 1 },
    banner: false,
    audio: { noAudio: true },
    input: { keyboard: false, mouse: false, touch: false, gamepad: false },
    scene: new Scene({ key: 'empty' }),
  });
}

/** A ride whose commands are known before it begins: thinking for the rider is no part of a picture. */
function rideAlong(): { readonly world: RideWorld; readonly nextFrame: (timeMs: number) => RideFrame } {
  const parsed = parseLevel(levelFile);
  const bike = bikeById('road-2x11');
  const rider = riderById('adult-weekly');
  if (!parsed.ok || bike === undefined || rider === undefined) throw new Error('the bundled ride is missing');
  const world = buildRideWorld(courseOfLevel(parsed.level), bike, rider);
  const before = startRide(world);
  const hands = virtualRider(world, NAMED_HABITS.early, 1);
  const commands: (readonly RideCommand[])[] = [];
  while (commands.length < WATCHED_TICKS && before.now.phase !== 'finished') {
    const now = hands(before.state());
    commands.push(now);
    before.step(now);
  }
  const ride = startRide(world);
  let clock = FRESH_CLOCK;
  const nextFrame = (timeMs: number): RideFrame => {
    const due = ticksDue(clock, timeMs);
    clock = due.clock;
    for (let i = 0; i < due.ticks; i += 1) ride.step(commands[ride.now.tick] ?? []);
    return frameOf(world, ride.now);
  };
  return { world, nextFrame };
}

function showRide(): void {
  mountRide({
    parent: picture,
    scenery: SCENERY,
    look: LOOK,
    beside: [],
    ...rideAlong(),
    onBroken: (error) => {
      throw error;
    },
  });
}

function showBare(): void {
  const { world, nextFrame } = rideAlong();
  const canvas = document.createElement('canvas');
  canvas.width = picture.clientWidth;
  canvas.height = picture.clientHeight;
  picture.append(canvas);
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('no canvas');
  const stage = new Stage(
    layoutFor(canvas.width, canvas.height, 1, LOOK.childRider),
    world,
    SCENERY,
    LOOK,
    [],
  );
  let lastMs = performance.now();
  const draw = (timeMs: number): void => {
    const passedS = Math.max(0, timeMs - lastMs) / 1000;
    lastMs = timeMs;
    const frame = nextFrame(timeMs);
    stage.update(frame, passedS);
    stage.draw(context, frame, passedS, 2);
    requestAnimationFrame(draw);
  };
  requestAnimationFrame(draw);
}

const shows: Readonly<Record<string, () => void>> = { empty: showEmpty, ride: showRide, bare: showBare };
shows[new URLSearchParams(location.search).get('show') ?? '']?.();
