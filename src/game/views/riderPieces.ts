/**
 * The pieces of paper a rider is made of, each painted once along its own bone: from the origin, x towards the
 * next joint, in metres. How they are laid together is `rider.ts`, how they move is `pose.ts`.
 */
import { blot, box, type Context, oval, polygon } from '../paint/pen.ts';
import type { RiderTones } from '../paint/palette.ts';
import { castShadow, dropShadow, type PaintSheet } from '../paint/sheet.ts';
import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { BodyShape } from './bikeShape.ts';
import { paintLimb, paintSprite, type Sprite } from './sprite.ts';

const SHADOW = '#12181e';

/** Everything one side of the body needs. */
export interface SidePieces {
  readonly thigh: Sprite;
  readonly shank: Sprite;
  readonly foot: Sprite;
  readonly upperArm: Sprite;
  readonly forearm: Sprite;
}

/** A limb along x that tapers from `startRadius` to `endRadius`. */
function taper(
  context: Context,
  tone: string,
  fromX: number,
  toX: number,
  startRadius: number,
  endRadius: number,
): void {
  context.fillStyle = tone;
  context.beginPath();
  context.arc(fromX, 0, startRadius, Math.PI / 2, -Math.PI / 2);
  context.arc(toX, 0, endRadius, -Math.PI / 2, Math.PI / 2);
  context.closePath();
  context.fill();
}

/** The shadow near pieces throw on what lies under them, fallen to the lower right when the piece points `boneRad` down. */
function throwShadow(sheet: PaintSheet, boneRad: number): void {
  const x = 0.012;
  const y = 0.017;
  const cos = Math.cos(boneRad);
  const sin = Math.sin(boneRad);
  castShadow(sheet, SHADOW, 0.34, 0.016, x * cos + y * sin, y * cos - x * sin);
}

/** All pieces of the near or the far side. */
export function paintSide(body: BodyShape, tones: RiderTones, far: boolean, pxPerM: number): SidePieces {
  const { girth, thigh, shank, upperArm, forearm } = body;
  const skin = far ? tones.skinDark : tones.skin;
  const shorts = far ? tones.shortsDark : tones.shorts;
  const jersey = far ? tones.jerseyDark : tones.jersey;
  /** Bare skin from joint to joint (radii in metres of an adult), with what is worn over it. */
  const limb = (
    length: number,
    thickest: number,
    boneRad: number,
    [start, end]: readonly [number, number],
    dress: (context: Context) => void,
  ): Sprite => {
    // Room for the thickest place and, on the near side, for the shadow; what is empty costs as much to lay as what is not.
    const room = thickest * girth + (far ? 0.008 : 0.045);
    return paintLimb(length, room, pxPerM, (context, sheet) => {
      if (!far) throwShadow(sheet, boneRad);
      taper(context, skin, 0, length, start * girth, end * girth);
      dropShadow(context);
      dress(context);
    });
  };
  return {
    thigh: limb(thigh, 0.1, 0.7, [0.094, 0.057], (context) =>
      taper(context, shorts, 0, thigh * 0.72, 0.1 * girth, 0.073 * girth),
    ),
    // The belly of the calf a little behind the bone, and a sock.
    shank: limb(shank, 0.068, 1.6, [0.054, 0.034], (context) => {
      oval(context, skin, shank * 0.36, 0.017 * girth, shank * 0.3, 0.05 * girth);
      taper(context, far ? skin : tones.sock, shank * 0.78, shank, 0.041 * girth, 0.037 * girth);
    }),
    foot: paintSprite(-0.2 * girth, -0.13 * girth, 0.34 * girth, 0.17 * girth, pxPerM * 1.25, (context) => {
      context.scale(girth, girth);
      paintFoot(context, tones, far);
    }),
    upperArm: limb(upperArm, 0.073, 1.1, [0.056, 0.042], (context) =>
      taper(context, jersey, 0, upperArm * 0.62, 0.072 * girth, 0.058 * girth),
    ),
    forearm: limb(forearm, 0.051, 0.5, [0.042, 0.03], (context) =>
      oval(context, shorts, forearm + 0.004, 0, 0.046 * girth, 0.035 * girth),
    ),
  };
}

/** A shoe round its pedal spindle. */
function paintFoot(context: Context, tones: RiderTones, far: boolean): void {
  blot(
    context,
    far ? tones.shortsDark : tones.shoe,
    'M-0.152 -0.012 Q-0.162 -0.086 -0.112 -0.096 L-0.072 -0.088 Q-0.02 -0.05 0.062 -0.046 Q0.098 -0.034 0.09 -0.008 Z',
  );
  box(context, far ? tones.shortsDark : tones.frame, -0.154, -0.014, 0.244, 0.02);
  // The pedal under the sole moves with it.
  box(context, tones.shortsDark, -0.05, 0.002, 0.1, 0.024, 0.012);
  if (!far) box(context, tones.jersey, -0.06, -0.066, 0.022, 0.052);
}

/** The trunk from hip (origin) to shoulder (`body.torso`, 0) with the hips under it. */
export function paintTrunk(
  body: BodyShape,
  tones: RiderTones,
  pattern: OutfitLook['pattern'],
  pxPerM: number,
): Sprite {
  const { torso, girth } = body;
  const shadow = 0.045;
  const left = -Math.max(0.2 * torso, 0.14 * girth) - shadow;
  const top = -0.2 * girth - shadow;
  const wide = 1.14 * torso + shadow - left;
  return paintSprite(left, top, wide, 0.17 * girth + shadow - top, pxPerM * 1.25, (context, sheet) => {
    throwShadow(sheet, -0.9);
    context.save();
    context.scale(body.torso, body.girth);
    blot(context, tones.jersey, TRUNK);
    dropShadow(context);
    blot(context, tones.jerseyDark, 'M-0.14 0.1 Q0.4 0.075 0.93 0.11 Q0.5 0.165 0.02 0.13');
    blot(context, tones.jerseyLight, 'M-0.2 -0.075 Q0.28 -0.2 0.82 -0.122 Q0.3 -0.155 -0.18 -0.03');
    if (pattern === 'plain') paintPocket(context, tones);
    else paintPattern(context, tones, pattern);
    context.restore();
    oval(context, tones.shorts, -0.014, -0.004, 0.122 * body.girth, 0.104 * body.girth, 0.4);
  });
}

/** Along the spine x runs 0 to 1 from hip to shoulder; y is minus towards the back, in metres. */
const TRUNK =
  'M-0.2 -0.07 C0.08 -0.165 0.62 -0.185 0.98 -0.092 Q1.14 -0.05 1.1 0.03 Q1.04 0.115 0.86 0.118 Q0.45 0.135 0.06 0.105 L-0.16 0.09 Z';

function paintPocket(context: Context, tones: RiderTones): void {
  context.globalAlpha = 0.55;
  polygon(context, tones.jerseyDark, [-0.1, -0.092], [0.2, -0.12], [0.19, -0.03], [-0.1, -0.01]);
  context.globalAlpha = 1;
}

/** Pieces of pale paper glued on the jersey, cut off at its edge: a band round the chest, or dots. */
function paintPattern(context: Context, tones: RiderTones, pattern: 'band' | 'dots'): void {
  context.save();
  context.clip(new Path2D(TRUNK));
  if (pattern === 'band') polygon(context, tones.sock, [0.46, -0.3], [0.7, -0.3], [0.62, 0.3], [0.38, 0.3]);
  else {
    context.fillStyle = tones.sock;
    context.beginPath();
    for (let i = 0; i < 15; i++) {
      const x = -0.06 + (i % 5) * 0.25 + (Math.floor(i / 5) % 2) * 0.12;
      const y = -0.115 + Math.floor(i / 5) * 0.085;
      context.moveTo(x + 0.055, y);
      // Across the spine lengths are metres, along it shares of the trunk; this makes the dots round.
      context.ellipse(x, y, 0.055, 0.026, 0, 0, Math.PI * 2);
    }
    context.fill();
  }
  context.restore();
}
