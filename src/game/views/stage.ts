/**
 * The whole picture for one canvas size: builds the views and draws one frame from back to front with plain
 * Canvas 2D. Knows nothing of the engine that calls it; a new size means a new stage.
 */
import type { RideEvent, RideFrame, RideWorld } from '../../core/ride/types.ts';
import type { PictureQuality } from '../engine/quality.ts';
import type { Beside, Look, Scenery } from '../engine/types.ts';
import { paletteFor } from '../paint/palette.ts';
import { type Context, oval } from '../paint/pen.ts';
import { createSheet, finish, type Picture } from '../paint/sheet.ts';
import { AirView } from './air.ts';
import { Backdrop } from './backdrop.ts';
import { Cargo } from './cargo.ts';
import { Company } from './company.ts';
import { Confetti } from './confetti.ts';
import { Cyclist } from './cyclist.ts';
import { DogView } from './dog.ts';
import { Feedback } from './feedback.ts';
import { Foreground } from './foreground.ts';
import { Ghosts } from './ghosts.ts';
import { Grass } from './grass.ts';
import { Ground } from './ground.ts';
import { Hills, NEAR_SHEET } from './hills.ts';
import { Camera, type Layout } from './layout.ts';
import { ScenePlace } from './place.ts';
import type { Staging } from './staging.ts';
import { Veil } from './veil.ts';
import { bendRatio, Wind } from './wind.ts';

/** The road is looked at this often for its lowest place, and taken to be this much lower (px). */
const ROAD_STEP_PX = 80;
const ROAD_SURE_PX = 36;
/** Steepest tilt of the bike on the exaggerated road (rad). */
const MOST_TILT_RAD = 0.42;

export class Stage {
  readonly #staging: Staging;
  readonly #backdrop: Backdrop;
  readonly #hills: Hills;
  readonly #ground: Ground;
  readonly #grass: Grass;
  readonly #foreground: Foreground;
  readonly #veil: Veil;
  readonly #wind: Wind;
  readonly #feedback: Feedback;
  readonly #confetti: Confetti;
  readonly #cyclist: Cyclist;
  readonly #contact: Picture;
  readonly #dog: DogView | null;
  readonly #air: AirView;
  readonly #company: Company | null;
  readonly #cargo: Cargo | null;
  readonly #ghosts: Ghosts | null;
  readonly #place = new ScenePlace();
  #slopeRad = 0;
  #ready = false;

  constructor(
    layout: Layout,
    { course, machine: { bike } }: RideWorld,
    scenery: Scenery,
    look: Look,
    beside: readonly Beside[],
  ) {
    const palette = paletteFor(scenery, look.theme);
    const camera = new Camera(layout, course, look.reducedMotion);
    const staging: Staging = { layout, palette, scenery, look, course, bike, camera };
    const isEvening = scenery.light === 'evening';
    this.#staging = staging;
    this.#hills = new Hills(staging);
    this.#backdrop = new Backdrop(staging, this.#hills);
    this.#ground = new Ground(staging);
    this.#grass = new Grass(staging);
    this.#foreground = new Foreground(staging);
    this.#veil = new Veil(staging);
    this.#wind = new Wind(staging);
    this.#feedback = new Feedback(staging);
    this.#confetti = new Confetti(staging);
    this.#cyclist = new Cyclist({
      bike,
      child: look.childRider,
      kit: look.kit,
      palette,
      haloAlpha: isEvening ? 0.6 : 0.34,
      pxPerM: layout.riderPxPerM * layout.deviceScale,
      still: look.reducedMotion,
    });
    this.#contact = paintContact(layout, isEvening);
    this.#dog = look.dog ? new DogView(staging) : null;
    this.#air = new AirView(staging);
    this.#company = scenery.company.length === 0 ? null : new Company(staging);
    this.#cargo = scenery.apples ? new Cargo(staging, this.#cyclist.shape) : null;
    this.#ghosts = beside.length === 0 ? null : new Ghosts(staging, beside);
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
    this.#staging.camera.update(frame.distanceM, frame.speedMps, elapsedS);
    if (!this.#ready) this.#ground.prepare();
    this.#ready = true;
    this.#slopeRad = this.#tilt();
    this.#cyclist.update(frame, this.#slopeRad, elapsedS);
    this.#feedback.update(frame, elapsedS);
    this.#dog?.update(frame, elapsedS);
    this.#company?.update(frame, elapsedS);
    this.#cargo?.update(elapsedS);
    this.#ghosts?.update(frame);
  }

  draw(context: Context, frame: RideFrame, elapsedS: number, quality: PictureQuality): void {
    const { layout, look } = this.#staging;
    context.setTransform(layout.deviceScale, 0, 0, layout.deviceScale, 0, 0);
    context.globalAlpha = 1;
    const groundY = this.#lowestRoadY();
    this.#backdrop.draw(context, frame.timeS, quality > 0 ? 0 : 1, groundY, elapsedS);
    this.#hills.draw(context, NEAR_SHEET, this.#hills.count, groundY);
    this.#company?.drawBehind(context, frame);
    this.#ground.draw(context);
    if (quality > 0) this.#grass.draw(context, frame);
    this.#wind.drawPennants(context, frame);
    this.#ghosts?.draw(context, frame);
    this.#company?.drawFriend(context, frame);
    this.#dog?.draw(context, frame.timeS);
    this.#drawRider(context, frame, elapsedS, quality > 1);
    this.#veil.draw(context, frame.sightM, elapsedS);
    this.#air.draw(context, frame, quality / 2);
    if (quality < 2) return;
    this.#foreground.draw(context, bendRatio(frame.windMps, look.reducedMotion ? 0 : frame.timeS, 0));
    if (!look.reducedMotion) this.#foreground.drawWhip(context, frame.speedMps);
  }

  /** A line below which the road and its earth hide everything (CSS px). */
  #lowestRoadY(): number {
    const { layout, camera } = this.#staging;
    let lowest = 0;
    for (let x = 0; x <= layout.width + ROAD_STEP_PX; x += ROAD_STEP_PX)
      lowest = Math.max(lowest, camera.roadY(x));
    return Math.min(layout.height, lowest + ROAD_SURE_PX);
  }

  /** Slope under both wheels as drawn (rad, clockwise positive). */
  #tilt(): number {
    const { layout, camera } = this.#staging;
    const { rear, front } = this.#cyclist.shape;
    const scale = layout.riderPxPerM;
    const rearY = camera.roadY(camera.riderX + rear.x * scale);
    const frontY = camera.roadY(camera.riderX + front.x * scale);
    const tilt = Math.atan2(frontY - rearY, (front.x - rear.x) * scale);
    return Math.max(-MOST_TILT_RAD, Math.min(MOST_TILT_RAD, tilt));
  }

  #drawRider(context: Context, frame: RideFrame, elapsedS: number, streaks: boolean): void {
    const { layout, camera } = this.#staging;
    const place = this.#place;
    const scale = layout.riderPxPerM;
    const { shape, pose } = this.#cyclist;
    const { rear, front, wheelRadius, axleHeight } = shape;
    const x = camera.riderX + this.#feedback.nudgePx;
    const rearY = camera.roadY(x + rear.x * scale);
    const frontY = camera.roadY(x + front.x * scale);
    const share = -rear.x / (front.x - rear.x);
    const roadY = rearY + (frontY - rearY) * share + 2.5 * layout.propScale;
    if (streaks) this.#wind.drawStreaks(context, x, roadY, frame);
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
    this.#cyclist.draw(context, place, frame);
    this.#cargo?.drawBehind(context, place, frame);
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
