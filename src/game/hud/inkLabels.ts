/**
 * Short texts on a canvas that is drawn again and again: each is written once on a sheet of its own and laid down
 * from there, because writing costs a browser far more than laying. One store for one kind of lettering.
 */
import type { Context } from '../paint/pen.ts';
import { createSheet, finish, type Picture, snap } from '../paint/sheet.ts';

/** How the letters look. */
interface Lettering {
  /** Size (CSS px) and weight of the letters. */
  readonly sizePx: number;
  readonly weight: number;
  readonly ink: string;
  /** A rim that lifts the letters off what lies under them, or null. */
  readonly rim: string | null;
}

/** Width of the rim's stroke (CSS px). */
const RIM_PX = 4;

/** Texts in one lettering. */
export class InkLabels {
  readonly #lettering: Lettering;
  readonly #deviceScale: number;
  readonly #kept = new Map<string, Picture>();

  constructor(lettering: Lettering, deviceScale: number) {
    this.#lettering = lettering;
    this.#deviceScale = deviceScale;
  }

  /** Lays a text with the middle of its box at (x, y), but never over the edges at 0 and `width`. */
  draw(context: Context, text: string, x: number, y: number, width: number): void {
    if (text === '') return;
    let label = this.#kept.get(text);
    if (label === undefined) {
      label = this.#write(text);
      this.#kept.set(text, label);
    }
    const held = Math.max(0, Math.min(width - label.width, x - label.width / 2));
    const left = snap(held, this.#deviceScale);
    const top = snap(y - label.height / 2, this.#deviceScale);
    context.drawImage(label.image, left, top, label.width, label.height);
  }

  #write(text: string): Picture {
    const { sizePx, weight, ink, rim } = this.#lettering;
    const font = `${weight} ${sizePx}px system-ui, sans-serif`;
    const measure = createSheet(1, 1, 1).context;
    measure.font = font;
    const width = Math.ceil(measure.measureText(text).width) + RIM_PX;
    const height = Math.ceil(sizePx * 1.3) + RIM_PX;
    const sheet = createSheet(width, height, this.#deviceScale);
    const { context } = sheet;
    context.font = font;
    context.textAlign = 'center';
    context.textBaseline = 'middle';
    if (rim !== null) {
      context.strokeStyle = rim;
      context.lineWidth = RIM_PX;
      context.strokeText(text, width / 2, height / 2);
    }
    context.fillStyle = ink;
    context.fillText(text, width / 2, height / 2);
    return finish(sheet);
  }
}
