/**
 * The next 250 m as an inked strip: profile, hatching by gradient, the percent of steep parts, stop lines, and
 * a torn edge where sight ends. Redrawn a few times a second on a small canvas.
 */
import type { Course } from '../../core/course/types.ts';
import type { RideFrame } from '../../core/ride/types.ts';
import { type Context, disc, hoop, octagon } from '../paint/pen.ts';
import type { MachineTones } from '../paint/palette.ts';
import { deviceScale } from '../paint/sheet.ts';
import { ROAD_AHEAD_M } from '../../core/settings/settings.ts';
import { sampleAt } from '../../core/math/numbers.ts';
import { roadHeightM } from '../views/layout.ts';
import { strokesBefore, strokesBetween } from '../views/roadInk.ts';
import { InkLabels } from './inkLabels.ts';
import { type SteepPart, steepParts } from './steepParts.ts';
import { words } from '../../words/words.ts';
import type { HudFormats } from './options.ts';

const say = words('hud');

/** So much of the strip lies behind the rider (m). */
const BEHIND_M = 12;
/** Marks further away than this would crowd the edge (m). */
const LAST_MARK_M = 200;

/** So far the words about the heights reach under the road, on the narrowest screens beyond the first distance (px). */
const STEEPER_PX = 104;

type StripFormats = Pick<HudFormats, 'percent' | 'metres' | 'markM'>;

type Labels = Readonly<Record<'percent' | 'metres' | 'sight', InkLabels>>;

function labelsFor({ ink, paper }: MachineTones, deviceScale: number): Labels {
  return {
    percent: new InkLabels({ sizePx: 14, weight: 800, ink, rim: paper }, deviceScale),
    metres: new InkLabels({ sizePx: 11, weight: 600, ink, rim: null }, deviceScale),
    sight: new InkLabels({ sizePx: 13, weight: 600, ink, rim: null }, deviceScale),
  };
}

/** The stretch that is drawn (m), and where its places, its surface and its lower edge are on the canvas (px). */
interface View {
  readonly fromM: number;
  readonly seenM: number;
  readonly column: (m: number) => number;
  readonly line: (m: number) => number;
  readonly baseY: number;
}

export class RoadAheadView {
  readonly #canvas: HTMLCanvasElement;
  readonly #course: Course;
  readonly #tones: MachineTones;
  readonly #formats: StripFormats;
  readonly #parts: readonly SteepPart[];
  #strokes: Float64Array;
  #labels: Labels;
  #width = 0;
  #height = 0;
  #deviceScale = 1;
  #pxPerM = 1;
  #heightPxPerM = 1;

  constructor(canvas: HTMLCanvasElement, course: Course, tones: MachineTones, formats: StripFormats) {
    this.#canvas = canvas;
    this.#course = course;
    this.#tones = tones;
    this.#formats = formats;
    this.#parts = steepParts(course);
    this.#strokes = new Float64Array(0);
    this.#labels = labelsFor(tones, 1);
  }

  /** Takes the canvas' laid-out size; call it when that may have changed. */
  fit(): void {
    const width = this.#canvas.clientWidth;
    const height = this.#canvas.clientHeight;
    if (width === this.#width && height === this.#height) return;
    this.#deviceScale = deviceScale();
    this.#labels = labelsFor(this.#tones, this.#deviceScale);
    this.#width = width;
    this.#height = height;
    this.#canvas.width = Math.round(width * this.#deviceScale);
    this.#canvas.height = Math.round(height * this.#deviceScale);
    this.#pxPerM = width / (ROAD_AHEAD_M + BEHIND_M);
    this.#strokes = strokesBefore(this.#course, this.#pxPerM * 1.5);
    this.#heightPxPerM = Math.min(this.#pxPerM * 5, (height - 44) / Math.max(4, this.#largestRise()));
  }

  #largestRise(): number {
    let largest = 0;
    for (let from = 0; from < this.#course.lengthM; from += 20) {
      const [low, high] = this.#heightsBetween(from, Math.min(this.#course.lengthM, from + ROAD_AHEAD_M), 5);
      largest = Math.max(largest, high - low);
    }
    return largest;
  }

  /** The lowest and the highest place of a stretch (m), looked at every so many metres. */
  #heightsBetween(fromM: number, toM: number, stepM: number): readonly [low: number, high: number] {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let m = fromM; m <= toM; m += stepM) {
      const height = roadHeightM(this.#course, Math.min(m, this.#course.lengthM));
      low = Math.min(low, height);
      high = Math.max(high, height);
    }
    return [low, high];
  }

  draw(frame: RideFrame): void {
    const canvas = this.#canvas.getContext('2d');
    if (!canvas || this.#width === 0) return;
    canvas.setTransform(this.#deviceScale, 0, 0, this.#deviceScale, 0, 0);
    canvas.clearRect(0, 0, this.#width, this.#height);
    const fromM = frame.distanceM - BEHIND_M;
    const seenM = Math.min(
      frame.distanceM + frame.sightM,
      fromM + ROAD_AHEAD_M + BEHIND_M,
      this.#course.lengthM + 6,
    );
    const [low, high] = this.#heightsBetween(fromM, fromM + ROAD_AHEAD_M + BEHIND_M, 6);
    const middle = (low + high) / 2;
    const baseY = this.#height - 17;
    const view: View = {
      fromM,
      seenM,
      baseY,
      line: (m) => (baseY + 22) / 2 - (roadHeightM(this.#course, m) - middle) * this.#heightPxPerM,
      column: (m) => (m - fromM) * this.#pxPerM,
    };
    this.#fillGround(canvas, view);
    this.#hatch(canvas, view);
    this.#tear(canvas, view);
    this.#profile(canvas, view);
    this.#marks(canvas, frame, view);
    this.#percents(canvas, frame, view);
  }

  #fillGround(canvas: Context, { fromM, seenM, column, line, baseY }: View): void {
    canvas.fillStyle = this.#tones.sand;
    canvas.beginPath();
    canvas.moveTo(column(fromM), baseY);
    for (let m = fromM; m < seenM; m += 2) canvas.lineTo(column(m), line(m));
    canvas.lineTo(column(seenM), line(seenM));
    canvas.lineTo(column(seenM), baseY);
    canvas.closePath();
    canvas.fill();
  }

  #hatch(canvas: Context, { fromM, seenM, column, line, baseY }: View): void {
    canvas.strokeStyle = this.#tones.ink;
    canvas.lineWidth = 1.1;
    canvas.beginPath();
    for (const m of strokesBetween(this.#strokes, fromM, seenM)) {
      const uphill = sampleAt(this.#course.slopeRatio, m) > 0;
      const x = column(m);
      const y = line(m) + 3;
      canvas.moveTo(x, y);
      canvas.lineTo(x, uphill ? baseY : Math.min(baseY, y + 7));
    }
    canvas.stroke();
  }

  #profile(canvas: Context, { fromM, seenM, column, line }: View): void {
    canvas.strokeStyle = this.#tones.ink;
    canvas.lineWidth = 2.6;
    canvas.lineJoin = 'round';
    canvas.beginPath();
    for (let m = fromM; m < seenM; m += 2) canvas.lineTo(column(m), line(m));
    canvas.lineTo(column(seenM), line(seenM));
    canvas.stroke();
  }

  /** Beyond sight a blank sheet with a torn edge lies over the strip. */
  #tear(canvas: Context, { fromM, seenM, column, baseY }: View): void {
    if (seenM >= Math.min(fromM + ROAD_AHEAD_M + BEHIND_M, this.#course.lengthM)) return;
    const x = column(seenM);
    canvas.beginPath();
    for (let y = 4, i = 0; y <= baseY + 2; y += 5, i++)
      canvas.lineTo(x + (i % 2 === 0 ? -3 : 3) + ((i * 7) % 5) - 2, y);
    canvas.strokeStyle = this.#tones.sandDark;
    canvas.lineWidth = 1.4;
    canvas.stroke();
    canvas.lineTo(this.#width, baseY + 2);
    canvas.lineTo(this.#width, 4);
    canvas.globalAlpha = 0.42;
    canvas.fillStyle = this.#tones.sand;
    canvas.fill();
    canvas.globalAlpha = 1;
    if (this.#width - x > 110)
      this.#labels.sight.draw(canvas, say('outOfSight'), (x + this.#width) / 2, baseY / 2 + 2, this.#width);
  }

  #marks(canvas: Context, frame: RideFrame, { seenM, column, line, baseY }: View): void {
    canvas.fillStyle = this.#tones.ink;
    for (let mark = 1; mark * this.#formats.markM <= LAST_MARK_M; mark++) {
      const aheadM = mark * this.#formats.markM;
      const x = column(frame.distanceM + aheadM);
      const named = mark % 2 === 0;
      canvas.fillRect(x - 0.6, baseY, 1.2, named ? 4 : 3);
      if (named && x > STEEPER_PX)
        this.#labels.metres.draw(canvas, this.#formats.metres(aheadM), x, baseY + 11, this.#width);
    }
    for (const lineM of this.#course.stopLinesM) {
      if (lineM < frame.distanceM || lineM > seenM) continue;
      drawStopSign(canvas, column(lineM), line(lineM) - 8, this.#tones);
    }
    const x = column(frame.distanceM);
    const y = line(frame.distanceM) - 6;
    disc(canvas, this.#tones.rider, x, y, 6.5);
    hoop(canvas, this.#tones.paper, 2, x, y, 6.5);
  }

  #percents(canvas: Context, frame: RideFrame, { seenM, column, line }: View): void {
    for (const part of this.#parts) {
      const from = Math.max(part.fromM, frame.distanceM + 8);
      const to = Math.min(part.toM, seenM - 4, frame.distanceM + ROAD_AHEAD_M - 8);
      if (to - from < 10) continue;
      const m = (from + to) / 2;
      const shift = part.slopeRatio > 0 ? -10 : 10;
      const y = Math.max(9, line(m) - 14);
      const x = column(m) + shift;
      this.#labels.percent.draw(canvas, this.#formats.percent(part.slopeRatio), x, y, this.#width);
    }
  }
}

/** The sign of a stop line in small. */
function drawStopSign(canvas: Context, x: number, y: number, { ink, attention }: MachineTones): void {
  octagon(canvas, attention, x, y, 7);
  canvas.lineWidth = 1.8;
  canvas.strokeStyle = ink;
  canvas.stroke();
  canvas.fillStyle = ink;
  canvas.fillRect(x - 3.6, y - 1.2, 7.2, 2.4);
}
