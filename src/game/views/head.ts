/**
 * The rider's head in profile: neck, hair, friendly face and helmet. Drawn in units of the head's radius and
 * turned by the pose, so adult and child share one cut.
 */
import { type Context, blot, oval, trace } from '../paint/pen.ts';
import type { RiderTones } from '../paint/palette.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { ScenePlace } from './place.ts';
import type { Pose } from './pose.ts';
import { paintSprite, type Sprite } from './sprite.ts';

/** Cheeks after some riding, whatever is worn. */
const BLUSH = '#f0764a';

/** The head of one rider: neck, face and hair are painted once and laid where the pose holds them. */
export class HeadView {
  readonly #radius: number;
  readonly #face: Sprite;
  readonly #tail: Sprite | null;

  /** `radius` in metres, `pxPerM` in device pixels. */
  constructor(
    radius: number,
    tones: RiderTones,
    helmet: OutfitLook['helmet'],
    child: boolean,
    pxPerM: number,
  ) {
    this.#radius = radius;
    this.#face = paintSprite(-1.5, -1.8, 3, 3.65, radius * pxPerM * 1.15, (context) => {
      drawNeck(context, tones);
      drawFace(context, tones, child);
      if (helmet === 'crest') drawCrest(context, tones);
      drawHelmet(context, tones);
      if (helmet === 'star') drawStar(context, tones);
      else if (helmet === 'holes') drawHoles(context, tones, child);
    });
    this.#tail = child
      ? paintSprite(-1.5, -0.5, 1.8, 1.5, radius * pxPerM * 1.25, (context) => drawPonytail(context, tones))
      : null;
  }

  draw(context: Context, place: ScenePlace, pose: Pose): void {
    const radius = this.#radius;
    const cos = Math.cos(pose.faceRad) * radius;
    const sin = Math.sin(pose.faceRad) * radius;
    if (this.#tail) {
      const x = pose.head.x - 0.62 * cos - 0.28 * sin;
      const y = pose.head.y - 0.62 * sin + 0.28 * cos;
      const turn = pose.faceRad + pose.hairRad;
      place.aim(context, x, y, Math.cos(turn) * radius, Math.sin(turn) * radius, radius);
      this.#tail.draw(context);
    }
    place.aim(context, pose.head.x, pose.head.y, cos, sin, radius);
    this.#face.draw(context);
  }
}

/** From under the ear down and back to the collar. */
function drawNeck(context: Context, tones: RiderTones): void {
  context.lineCap = 'round';
  trace(context, tones.skinDark, 0.78, 'M-0.7 1.3 L-0.12 0.45');
}

function drawFace(context: Context, tones: RiderTones, child: boolean): void {
  blot(
    context,
    tones.skin,
    'M-0.72 -0.3 C-0.8 0.5 -0.45 0.86 0.06 0.96 C0.5 1.06 0.72 0.84 0.74 0.56 L0.8 0.3 Q1.08 0.28 1 0.1 Q0.86 -0.1 0.84 -0.36 Z',
  );
  blot(context, tones.hair, 'M-0.78 -0.3 Q-0.92 0.5 -0.52 0.62 Q-0.34 0.5 -0.36 0.06 L-0.2 -0.3 Z');
  oval(context, tones.skinDark, -0.22, 0.22, 0.12, 0.17, -0.1);
  oval(context, tones.shortsDark, 0.56, 0.06, child ? 0.1 : 0.08, child ? 0.13 : 0.11);
  trace(context, tones.shortsDark, 0.085, 'M0.4 0.56 Q0.56 0.7 0.72 0.54');
  context.globalAlpha = 0.5;
  oval(context, BLUSH, 0.26, 0.44, 0.17, 0.12);
  context.globalAlpha = 1;
}

function drawHelmet(context: Context, tones: RiderTones): void {
  trace(context, tones.shortsDark, 0.07, 'M-0.34 -0.16 L0.02 0.9 M0.16 -0.16 L0.02 0.9');
  const shell =
    'M-1.14 -0.22 C-1.2 -0.86 -0.6 -1.2 0 -1.18 C0.66 -1.16 1.06 -0.8 1.14 -0.24 Q0 0.06 -1.14 -0.22 Z';
  blot(context, 'rgba(18,24,30,0.22)', shell, 0, 0.09);
  blot(context, tones.helmet, shell);
  blot(context, tones.helmetBand, 'M-1.1 -0.34 Q-0.1 -0.06 1.06 -0.34 L1.1 -0.2 Q0 0.1 -1.1 -0.16 Z');
}

function drawHoles(context: Context, tones: RiderTones, child: boolean): void {
  const tone = child ? tones.jersey : tones.frame;
  const tall = child ? 0.12 : 0.07;
  for (let vent = 0; vent < 3; vent++)
    oval(context, tone, -0.5 + vent * 0.46, vent === 1 ? -0.76 : -0.68, 0.17, tall, -0.28 + vent * 0.3);
}

/** A five-pointed star of paper on the side of the shell. */
function drawStar(context: Context, tones: RiderTones): void {
  context.fillStyle = tones.jersey;
  context.beginPath();
  for (let corner = 0; corner < 10; corner++) {
    const reach = corner % 2 === 0 ? 0.36 : 0.15;
    const turn = (corner / 10) * Math.PI * 2 - Math.PI / 2;
    context.lineTo(-0.08 + Math.cos(turn) * reach, -0.68 + Math.sin(turn) * reach);
  }
  context.closePath();
  context.fill();
}

/** A row of paper teeth over the top of the shell, like a dragon's back. */
function drawCrest(context: Context, tones: RiderTones): void {
  context.fillStyle = tones.jersey;
  context.beginPath();
  for (let tooth = 0; tooth < 5; tooth++) {
    // From over the forehead to the back of the head.
    const turn = -Math.PI * (0.3 + tooth * 0.14);
    const next = turn - Math.PI * 0.14;
    const middle = (turn + next) / 2 - 0.12;
    context.moveTo(Math.cos(turn) * 1.02, -0.14 + Math.sin(turn) * 0.98);
    context.lineTo(Math.cos(middle) * 1.5, -0.1 + Math.sin(middle) * 1.48);
    context.lineTo(Math.cos(next) * 1.02, -0.14 + Math.sin(next) * 0.98);
  }
  context.fill();
}

/** A ponytail round its tie, hanging back and down. */
function drawPonytail(context: Context, tones: RiderTones): void {
  blot(context, tones.hair, 'M0 -0.18 C-0.7 -0.3 -1.1 0 -1.06 0.6 C-0.7 0.52 -0.3 0.36 0.06 0.22 Z');
  oval(context, tones.jersey, -0.12, 0.02, 0.12, 0.22, 0.2);
}
