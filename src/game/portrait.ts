/**
 * A still of bike and rider as the ride draws them, for a page on which colours are chosen. Needs no engine: the
 * same pieces, one frame of a ride that stands for riding along on the flat.
 */
import type { Bike } from '../core/model/types.ts';
import type { RideFrame } from '../core/ride/types.ts';
import { paletteFor } from './paint/palette.ts';
import { deviceScale } from './paint/sheet.ts';
import type { OutfitLook } from '../core/settings/outfit.ts';
import type { Look } from './engine/types.ts';
import { bikeShapeFor, bodyFor } from './views/bikeShape.ts';
import { Cyclist } from './views/cyclist.ts';
import { ScenePlace } from './views/place.ts';

/** What is to be seen. */
interface PortraitOptions {
  readonly bike: Bike;
  readonly kit: OutfitLook;
  readonly theme: Look['theme'];
  readonly childRider: boolean;
  /** Riding along: any frame of a ride on this bike. */
  readonly frame: RideFrame;
}

/** Draws into the whole of `canvas`, at the size the page has given it. */
export function paintPortrait(canvas: HTMLCanvasElement, options: PortraitOptions): void {
  const { bike, kit, theme, childRider, frame } = options;
  const device = deviceScale();
  canvas.width = Math.round(canvas.clientWidth * device);
  canvas.height = Math.round(canvas.clientHeight * device);
  const context = canvas.getContext('2d');
  if (context === null) return;
  const body = bodyFor(childRider);
  const shape = bikeShapeFor(bike, body);
  const long = shape.front.x - shape.rear.x + shape.wheelRadius * 2 + 0.1;
  const tall = shape.axleHeight - shape.bar.y + body.torso + 0.42;
  const pxPerM = Math.min(canvas.width / long, canvas.height / tall);
  const palette = paletteFor({ place: 'valley', light: 'day' }, theme);
  const cyclist = new Cyclist({
    bike,
    child: childRider,
    kit,
    palette,
    haloAlpha: 0.34,
    pxPerM,
    still: true,
  });
  cyclist.update(frame, 0, 0);
  const place = new ScenePlace();
  const x = canvas.width / 2 - ((shape.rear.x + shape.front.x) / 2) * pxPerM;
  place.set(x, canvas.height - (shape.axleHeight + 0.03) * pxPerM, 0, pxPerM);
  cyclist.draw(context, place, frame);
}
