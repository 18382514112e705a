/**
 * Where the road cannot be seen: a hedge that stands over it from the end of sight onwards, or torn sheets of
 * tissue in mist. Follows the sight of the frame smoothly; draws nothing while sight reaches past the picture.
 */
import { blot, box, type Context } from '../paint/pen.ts';
import { DARK } from '../paint/plants.ts';
import type { Palette } from '../paint/palette.ts';
import { seededStream } from '../paint/seeded.ts';
import { castShadow, dropShadow, mix, paintPicture, withAlpha } from '../paint/sheet.ts';
import type { PaintSheet, Picture } from '../paint/sheet.ts';
import type { Staging } from './staging.ts';

const STEP_PX = 46;

/** Hides what the rider cannot see yet. */
export class Veil {
  readonly #staging: Staging;
  /** Two bushes of a hedge, or the tissue of mist alone. */
  readonly #first: Picture;
  readonly #second: Picture | null;
  #edgeM = Number.POSITIVE_INFINITY;

  constructor(staging: Staging) {
    this.#staging = staging;
    const { layout, palette, scenery } = staging;
    const { width, height, deviceScale, propScale } = layout;
    const fine = Math.min(deviceScale, 1.5);
    const hedge = (seed: number): Picture =>
      paintPicture(150 * propScale, 268 * propScale, fine, palette.grainAlpha, (sheet) =>
        paintHedge(sheet, propScale, palette, seed),
      );
    const mist = scenery.light === 'mist';
    this.#first = mist
      ? paintPicture(width, height, 1, palette.grainAlpha, (sheet) => paintTissue(sheet, palette))
      : hedge(scenery.seed);
    this.#second = mist ? null : hedge(scenery.seed + 1);
  }

  draw(context: Context, sightM: number, elapsedS: number): void {
    const { layout, camera } = this.#staging;
    const visibleM = (layout.width - camera.riderX) / layout.pxPerM + 6;
    const target = Math.min(sightM, visibleM);
    if (!Number.isFinite(this.#edgeM)) this.#edgeM = target;
    this.#edgeM += (target - this.#edgeM) * (1 - 1 / (1 + elapsedS * 3));
    if (this.#edgeM >= visibleM - 1) return;
    const edgeX = camera.screenX(camera.distanceM + this.#edgeM);
    if (this.#second !== null) this.#drawHedge(context, edgeX, this.#second);
    else context.drawImage(this.#first.image, edgeX, 0, this.#first.width, layout.height);
  }

  /** Bushes stand at fixed places of the road, so the hedge scrolls with it; the first ones are lower. */
  #drawHedge(context: Context, edgeX: number, second: Picture): void {
    const { layout, camera } = this.#staging;
    const step = STEP_PX * layout.propScale;
    const scrolled = camera.distanceM * layout.pxPerM - camera.riderX;
    const first = Math.ceil((edgeX + scrolled) / step);
    const last = Math.ceil((layout.width + scrolled) / step) + 2;
    for (let bush = last; bush >= first; bush--) {
      const x = bush * step - scrolled;
      const { width, height, image } = bush % 2 === 0 ? this.#first : second;
      const grown = Math.min(1, 0.62 + ((x - edgeX) / step) * 0.13) * (0.93 + ((bush * 37) % 11) * 0.012);
      const foot = camera.roadY(x) + 54 * layout.propScale;
      context.drawImage(image, x - width * 0.2, foot - height * grown, width, height * grown);
    }
  }
}

/** One bush of the hedge: a tall folded lobe with a few cut leaves. */
function paintHedge(sheet: PaintSheet, size: number, palette: Palette, seed: number): void {
  const { context } = sheet;
  const random = seededStream(seed + 77);
  const tone = mix(palette.verge, palette.vergeDark, 0.62 + random() * 0.18);
  castShadow(sheet, palette.shadow, 0.42, 10, -4, 1);
  const bush = 'M16 78 A52 52 0 0 1 120 78 V232 A26 26 0 0 1 94 258 H42 A26 26 0 0 1 16 232 Z';
  blot(context, tone, bush, 0, 0, size);
  dropShadow(context);
  context.globalCompositeOperation = 'source-atop';
  box(context, mix(tone, DARK, 0.15), 68 * size, 24 * size, 90 * size, 240 * size);
  for (let leaf = 0; leaf < 13; leaf++) {
    const x = (26 + random() * 84) * size;
    const y = (44 + random() * 196) * size;
    const turn = -0.6 - random() * 0.9;
    const tint = withAlpha(mix(palette.verge, palette.paper, random() * 0.22), 0.75);
    const tip = `${Math.cos(turn) * 13} ${Math.sin(turn) * 13}`;
    blot(context, tint, `M0 0 Q-3 -9 ${tip} Q9 -2 0 0`, x, y, size);
  }
  context.globalCompositeOperation = 'source-over';
}

/** Torn sheets of tissue, one over the other, until nothing shows through. */
function paintTissue(sheet: PaintSheet, palette: Palette): void {
  const { context, width, height } = sheet;
  const random = seededStream(19);
  for (let layer = 0; layer < 8; layer++) {
    castShadow(sheet, palette.shadow, 0.05, 9, -2, 0);
    context.fillStyle = withAlpha(mix(palette.skyMiddle, palette.skyLow, 0.3), 0.26 + layer * 0.08);
    context.beginPath();
    const left = 14 + layer * 30;
    context.moveTo(left, -20);
    for (let y = -20; y <= height + 20; y += 9) {
      context.lineTo(left + Math.sin(y * 0.013 + layer * 2) * 13 + random() * 5, y);
    }
    context.lineTo(width + 40, height + 20);
    context.lineTo(width + 40, -20);
    context.closePath();
    context.fill();
  }
}
