/**
 * The whole picture for one canvas size: builds the views and draws one frame from back to front with plain
 * Canvas 2D. Knows nothing of the engine that calls it; a new size means a new stage.
 */
import { type Context, oval } from '../paint/pen.ts';
import type { RideEvent, RideFrame, RideWorld } from '../../core/ride/types.ts';
import { paletteFor, riderTones } from '../paint/palette.ts';
import { createSheet, finish, type Picture } from '../paint/sheet.ts';
import type { PictureQuality } from '../engine/quality.ts';
import type { Beside, Look, Scenery } from '../engine/types.ts';
import { AirView } from './air.ts';
import { Backdrop } from './backdrop.ts';
import { BikeView } from './bike.ts';
import { type BikeShape, bikeShapeFor, bodyFor } from './bikeShape.ts';
import { Cargo } from './cargo.ts';
import { Company } from './company.ts';
import { Confetti } from './confetti.ts';
import { DogView } from './dog.ts';
import { Feedback } from './feedback.ts';
import { Foreground } from './foreground.ts';
import { Ghosts } from './ghosts.ts';
import { Grass } from './grass.ts';
import { Ground } from './ground.ts';
import { Hills, NEAR_SHEET } from './hills.ts';
import { Camera, type Layout } from './layout.ts';
import { ScenePlace } from './place.ts';
import { Poser } from './pose.ts';
import { RiderView } from './rider.ts';
import { Sky } from './sky.ts';
import { Veil } from './veil.ts';
import { bendRatio, Wind } from './wind.ts';

/** The road is looked at this often for its lowest place, and taken to be this much lower (px). */
const ROAD_STEP_PX = 80;
const ROAD_SURE_PX = 36;
/** Steepest tilt of the bike on the exaggerated road (rad). */
const MOST_TILT_RAD = 0.42;

export class Stage {
  readonly #layout: Layout;
  readonly #camera: Camera;
  readonly #backdrop: Backdrop;
  readonly #hills: Hills;
  readonly #ground: Ground;
  readonly #grass: Grass;
  readonly #still: boolean;
  readonly #foreground: Foreground;
  readonly #veil: Veil;
  readonly #wind: Wind;
  readonly #feedback: Feedback;
  readonly #confetti: Confetti;
  readonly #shape: BikeShape;
  readonly #bike: BikeView;
  readonly #rider: RiderView;
  readonly #poser: Poser;
  readonly #contact: Picture;
  readonly #dog: DogView | null;
  readonly #air: AirView;
  readonly #company: Company | null;
  readonly #cargo: Cargo | null;
  readonly #ghosts: Ghosts | null;
  readonly #startHeightM: number;
  readonly #place = new ScenePlace();
  #slopeRad = 0;
  #ready = false;

  constructor(
    layout: Layout,
    world: RideWorld,
    scenery: Scenery,
    look: Look,
    beside: readonly Beside[] = [],
  ) {
    const palette = paletteFor(scenery, look.theme);
    const tones = riderTones(look.childRider, look.kit);
    const body = bodyFor(look.childRider);
    this.#layout = layout;
    this.#camera = new Camera(world.course, look.reducedMotion);
    this.#hills = new Hills(layout, palette, scenery);
    this.#backdrop = new Backdrop(layout, new Sky(layout, palette, scenery, look.reducedMotion), this.#hills);
    this.#ground = new Ground(layout, palette, world.course, scenery);
    this.#grass = new Grass(layout, palette, world.course, scenery.seed, look.reducedMotion);
    this.#still = look.reducedMotion;
    this.#foreground = new Foreground(layout, palette, scenery.seed, scenery.place);
    this.#veil = new Veil(layout, palette, scenery);
    this.#wind = new Wind(palette, world.course, look.reducedMotion);
    this.#feedback = new Feedback(palette, look.reducedMotion);
    this.#confetti = new Confetti(palette, tones.jersey, look.reducedMotion);
    this.#shape = bikeShapeFor(world.machine.bike, body);
    this.#bike = new BikeView(
      this.#shape,
      world.machine.bike,
      palette,
      tones,
      scenery.light === 'evening' ? 0.6 : 0.34,
      layout.riderPxPerM * layout.deviceScale,
      look.reducedMotion,
    );
    this.#rider = new RiderView(
      body,
      tones,
      look.kit,
      look.childRider,
      layout.riderPxPerM * layout.deviceScale,
    );
    this.#poser = new Poser(this.#shape, body, look.reducedMotion);
    this.#contact = paintContact(layout, scenery.light === 'evening');
    this.#dog = look.dog ? new DogView(layout, palette, 0, look.reducedMotion) : null;
    this.#air = new AirView(palette, scenery.air, look);
    const { bike } = world.machine;
    this.#company =
      scenery.company.length === 0
        ? null
        : new Company({
            layout,
            palette,
            bike,
            company: scenery.company,
            lengthM: world.course.lengthM,
            friendKit: look.friendKit,
            child: look.childRider,
            reducedMotion: look.reducedMotion,
          });
    this.#cargo = scenery.apples ? new Cargo(layout, palette, this.#shape, look.reducedMotion) : null;
    this.#ghosts =
      beside.length === 0
        ? null
        : new Ghosts({ layout, palette, bike, child: look.childRider, kit: look.kit }, beside);
    this.#startHeightM = world.course.heightM[0] ?? 0;
  }

  /** So many apples have hopped out of the basket since the start. */
  spill(count: number): void {
    this.#cargo?.spill(count);
  }

  applyEvents(events: readonly RideEvent[]): void {
    for (const event of events) {
      this.#feedback.apply(event);
      if (event.kind === 'finished') this.#confetti.throw();
    }
  }

  /** Moves everything to this frame; `elapsedS` since the last one. */
  update(frame: RideFrame, elapsedS: number): void {
    this.#camera.update(this.#layout, frame.distanceM, frame.speedMps, elapsedS);
    if (!this.#ready) this.#ground.prepare(this.#camera);
    this.#ready = true;
    this.#slopeRad = this.#tilt();
    this.#poser.update(frame, this.#slopeRad, elapsedS);
    this.#feedback.update(frame, elapsedS);
    this.#dog?.update(frame, elapsedS);
    this.#company?.update(frame, elapsedS);
    this.#cargo?.update(elapsedS);
    this.#ghosts?.update(frame);
  }

  draw(context: Context, frame: RideFrame, elapsedS: number, quality: PictureQuality): void {
    const layout = this.#layout;
    const camera = this.#camera;
    context.setTransform(layout.deviceScale, 0, 0, layout.deviceScale, 0, 0);
    context.globalAlpha = 1;
    const riseM = camera.heightM - this.#startHeightM;
    const from = quality > 0 ? 0 : 1;
    const groundY = this.#lowestRoadY();
    this.#backdrop.draw(context, {
      scrollPx: camera.scrollPx,
      riseM,
      timeS: frame.timeS,
      from,
      groundY,
      elapsedS,
    });
    this.#hills.draw(context, layout, camera.scrollPx, riseM, NEAR_SHEET, this.#hills.count, groundY);
    this.#company?.drawBehind(context, camera, frame);
    this.#ground.draw(context, camera);
    if (quality > 0) this.#grass.draw(context, layout, camera, frame);
    this.#wind.drawPennants(context, layout, camera, frame);
    this.#ghosts?.draw(context, camera, frame);
    this.#company?.drawFriend(context, camera, frame);
    this.#dog?.draw(context, layout, camera, frame.timeS);
    this.#drawRider(context, frame, elapsedS, quality > 1);
    this.#veil.draw(context, layout, camera, frame.sightM, elapsedS);
    this.#air.draw(context, layout, camera.scrollPx, frame, quality / 2);
    if (quality < 2) return;
    const bend = bendRatio(frame.windMps, this.#still ? 0 : frame.timeS, 0);
    this.#foreground.draw(context, layout, camera.scrollPx, bend);
    if (!this.#still) this.#foreground.drawWhip(context, layout, camera.scrollPx, frame.speedMps);
  }

  /** A line below which the road and its earth hide everything (CSS px). */
  #lowestRoadY(): number {
    const layout = this.#layout;
    let lowest = 0;
    for (let x = 0; x <= layout.width + ROAD_STEP_PX; x += ROAD_STEP_PX)
      lowest = Math.max(lowest, this.#camera.roadY(layout, x));
    return Math.min(layout.height, lowest + ROAD_SURE_PX);
  }

  /** Slope under both wheels as drawn (rad, clockwise positive). */
  #tilt(): number {
    const { rear, front } = this.#shape;
    const scale = this.#layout.riderPxPerM;
    const x = this.#camera.riderX;
    const rearY = this.#camera.roadY(this.#layout, x + rear.x * scale);
    const frontY = this.#camera.roadY(this.#layout, x + front.x * scale);
    const tilt = Math.atan2(frontY - rearY, (front.x - rear.x) * scale);
    return Math.max(-MOST_TILT_RAD, Math.min(MOST_TILT_RAD, tilt));
  }

  #drawRider(context: Context, frame: RideFrame, elapsedS: number, streaks: boolean): void {
    const layout = this.#layout;
    const place = this.#place;
    const scale = layout.riderPxPerM;
    const { rear, front, wheelRadius, axleHeight } = this.#shape;
    const { pose } = this.#poser;
    const x = this.#camera.riderX + this.#feedback.nudgePx;
    const rearY = this.#camera.roadY(layout, x + rear.x * scale);
    const frontY = this.#camera.roadY(layout, x + front.x * scale);
    const share = -rear.x / (front.x - rear.x);
    const roadY = rearY + (frontY - rearY) * share + 2.5 * layout.propScale;
    if (streaks) this.#wind.drawStreaks(context, layout, x, roadY, frame);
    const device = layout.deviceScale;
    place.set(x * device, roadY * device, this.#slopeRad, scale * device);
    place.home(context);
    const tall = (20 * layout.propScale) / scale;
    const shadowX = rear.x - wheelRadius * 1.3;
    context.drawImage(this.#contact.image, shadowX, tall * -0.45, front.x - rear.x + wheelRadius * 2.4, tall);
    const lean = this.#slopeRad + pose.rockRad;
    const upX = Math.sin(lean) * axleHeight * scale;
    const upY = -Math.cos(lean) * axleHeight * scale;
    // On whole pixels, like the road under it.
    place.set(Math.round((x + upX) * device), Math.round((roadY + upY) * device), lean, scale * device);
    this.#cargo?.drawOnBike(context, place, frame);
    this.#rider.drawFar(context, place, pose);
    this.#bike.drawFar(context, place, frame);
    this.#bike.drawNear(context, place, frame);
    this.#rider.drawNear(context, place, pose);
    this.#cargo?.drawBehind(context, layout, this.#camera, place, frame);
    context.setTransform(device, 0, 0, device, 0, 0);
    const cos = Math.cos(this.#slopeRad);
    const sin = Math.sin(this.#slopeRad);
    const axleX = rear.x * scale;
    const axleY = -wheelRadius * scale;
    const onX = x + axleX * cos - axleY * sin;
    const onY = roadY + axleX * sin + axleY * cos;
    this.#feedback.draw(context, onX, onY, layout.propScale, elapsedS);
    this.#confetti.draw(context, onX, onY, layout.propScale, elapsedS);
  }
}

/** The soft shadow under both wheels; longer to the left in the evening. */
function paintContact(layout: Layout, evening: boolean): Picture {
  const sheet = createSheet(220, 20, layout.deviceScale);
  const { context } = sheet;
  const gradient = context.createRadialGradient(110, 10, 2, 110, 10, 104);
  gradient.addColorStop(0, `rgba(16,24,28,${evening ? 0.62 : 0.5})`);
  gradient.addColorStop(0.7, 'rgba(16,24,28,0.28)');
  gradient.addColorStop(1, 'rgba(16,24,28,0)');
  context.translate(0, 9);
  context.scale(1, 0.085);
  context.translate(0, -10);
  oval(context, gradient, 110, 10, 104, 104);
  return finish(sheet);
}
