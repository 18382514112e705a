/**
 * One picture at a time for the frame figures: an empty scene, or the ride as it is drawn in the game. Both
 * run on the same engine and the same canvas size; `?show=empty` and `?show=ride` choose.
 */
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { FRESH_CLOCK, type RideClock, ticksDue } from '../../../src/core/ride/clock.ts';
import { frameOf } from '../../../src/core/ride/frame.ts';
import { NAMED_HABITS, virtualRider } from '../../../src/core/ride/riders.ts';
import { startRide } from '../../../src/core/ride/run.ts';
import { buildRideWorld } from '../../../src/core/ride/world.ts';
import { CANVAS, Game, SCALE_NONE, Scene } from '../../../src/game/engine.ts';
import { mountRide } from '../../../src/game/mount.ts';
import levelFile from '../../../levels/rolling-road.json';

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

function showRide(): void {
  const parsed = parseLevel(levelFile);
  const bike = bikeById('road-2x11');
  const rider = riderById('adult-weekly');
  if (!parsed.ok || bike === undefined || rider === undefined) throw new Error('the bundled ride is missing');
  const world = buildRideWorld(courseOfLevel(parsed.level), bike, rider);
  const ride = startRide(world);
  const hands = virtualRider(world, NAMED_HABITS.early, 1);
  let clock: RideClock = FRESH_CLOCK;
  mountRide({
    parent: picture,
    world,
    scenery: { light: 'day', seed: 1 },
    look: { theme: 'indoor', reducedMotion: false, childRider: false, dog: false },
    nextFrame(timeMs) {
      const due = ticksDue(clock, timeMs);
      clock = due.clock;
      for (let i = 0; i < due.ticks; i += 1) ride.step(hands(ride.state()));
      return frameOf(world, ride.state());
    },
  });
}

if (new URLSearchParams(location.search).get('show') === 'ride') showRide();
else showEmpty();
