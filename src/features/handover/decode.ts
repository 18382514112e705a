/**
 * Looks for one QR code in a picture, several times in several lights, sizes and turns, because a reader made for
 * good pictures gives up on bad ones: evened out where light falls from one side, sharpened where the camera was out of
 * focus, bigger, smaller or turned. Fetched only when something is to be read; pure.
 */
import jsQR from 'jsqr';

/** Longer pictures are made smaller first (pixels); codes of ours have at most 105 squares a side. */
const LONGEST_SIDE = 1_000;

/** Ways to look at a picture, the cheapest and luckiest first. */
const VIEWS: readonly ((grey: Grey) => Grey)[] = [
  (grey) => grey,
  (grey) => scaled(grey, 1.5),
  (grey) => gathered(grey, 2, 5),
  (grey) => scaled(grey, 2),
  (grey) => gathered(evenLight(grey), 2, 4),
  (grey) => gathered(grey, 1, 2),
  (grey) => gathered(scaled(grey, 1.5), 2, 3),
  (grey) => turned(scaled(grey, 1.5), 0.8),
  (grey) => scaled(grey, 0.7),
  (grey) => evenLight(grey),
  (grey) => gathered(scaled(grey, 2), 4, 4),
];

/** How many ways there are, for those who try one at a time. */
export const WAYS = VIEWS.length;

/** The text of the code in a picture, or null where none can be read. Tries every way. */
export function decodePicture(picture: CameraPicture): string | null {
  for (let way = 0; way < WAYS; way += 1) {
    const text = decodeOneWay(picture, way);
    if (text !== null) return text;
  }
  return null;
}

/** One way only: a camera gives the next picture soon, and another way can be tried on that. */
export function decodeOneWay(picture: CameraPicture, way: number): string | null {
  const view = VIEWS[way % WAYS];
  if (view === undefined || picture.width < 21 || picture.height < 21) return null;
  const { data, width, height } = pictureOf(view(fitted(greyOf(picture))));
  try {
    const found = jsQR(data, width, height, { inversionAttempts: 'dontInvert' });
    return found === null || found.data === '' ? null : found.data;
  } catch {
    // Some patterns that look like a code lead the reader outside the picture.
    return null;
  }
}

function fitted(grey: Grey): Grey {
  const longest = Math.max(grey.width, grey.height);
  return longest > LONGEST_SIDE ? scaled(grey, LONGEST_SIDE / longest) : grey;
}

/** A picture as a canvas gives it: four bytes a pixel. */
export interface CameraPicture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** A picture in grey, one number from 0 to 255 a pixel. */
interface Grey {
  readonly light: Float32Array;
  readonly width: number;
  readonly height: number;
}

/** Grey as the eye weighs colours. */
function greyOf({ data, width, height }: CameraPicture): Grey {
  const light = new Float32Array(width * height);
  for (let i = 0; i < light.length; i += 1)
    light[i] = 0.299 * at(data, 4 * i) + 0.587 * at(data, 4 * i + 1) + 0.114 * at(data, 4 * i + 2);
  return { light, width, height };
}

/** Back to four bytes a pixel. */
function pictureOf({ light, width, height }: Grey): CameraPicture {
  const data = new Uint8ClampedArray(light.length * 4);
  for (let i = 0; i < light.length; i += 1) {
    const value = at(light, i);
    data[4 * i] = value;
    data[4 * i + 1] = value;
    data[4 * i + 2] = value;
    data[4 * i + 3] = 255;
  }
  return { data, width, height };
}

/** Every place between the darkest and the lightest of its surroundings, so that shade and glare no longer count. */
function evenLight(grey: Grey): Grey {
  const radius = Math.max(8, Math.round(Math.min(grey.width, grey.height) / 12));
  const mean = boxMean(grey, radius);
  const spread = boxMean(
    map(grey, (value, i) => Math.abs(value - at(mean.light, i))),
    radius,
  );
  return map(grey, (value, i) => {
    // A plain wall must not become a pattern of its noise.
    const scale = Math.max(3, at(spread.light, i));
    return clamp(128 + ((value - at(mean.light, i)) / scale) * 64);
  });
}

/**
 * What a lens smeared over about `radius` pixels, gathered again: smear the guess, see what differs from the
 * picture, add that to the guess, a few rounds.
 */
function gathered(grey: Grey, radius: number, rounds: number): Grey {
  let guess = grey;
  for (let round = 0; round < rounds; round += 1) {
    const soft = boxMean(boxMean(guess, radius), radius);
    guess = map(guess, (value, i) => value + at(grey.light, i) - at(soft.light, i));
  }
  return guess;
}

/** Another size, between pixels by their distance; smaller ones are averaged first. */
function scaled(grey: Grey, factor: number): Grey {
  const from = factor < 0.75 ? boxMean(grey, Math.max(1, Math.round(0.4 / factor))) : grey;
  const width = Math.max(1, Math.round(grey.width * factor));
  const height = Math.max(1, Math.round(grey.height * factor));
  const light = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1)
      light[y * width + x] = between(from, (x + 0.5) / factor - 0.5, (y + 0.5) / factor - 0.5);
  return { light, width, height };
}

/** Turned about its middle by an angle (radians), on a bigger grey sheet so that no corner is lost. */
export function turned(grey: Grey, angle: number): Grey {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const width = Math.ceil(Math.abs(grey.width * cos) + Math.abs(grey.height * sin));
  const height = Math.ceil(Math.abs(grey.width * sin) + Math.abs(grey.height * cos));
  const light = new Float32Array(width * height);
  for (let y = 0; y < height; y += 1)
    for (let x = 0; x < width; x += 1) {
      const dx = x - width / 2;
      const dy = y - height / 2;
      const fromX = cos * dx + sin * dy + grey.width / 2;
      const fromY = -sin * dx + cos * dy + grey.height / 2;
      const outside = fromX < 0 || fromY < 0 || fromX >= grey.width || fromY >= grey.height;
      light[y * width + x] = outside ? 200 : between(grey, fromX, fromY);
    }
  return { light, width, height };
}

/** Mean of a square round every pixel, by running sums, so that its size costs nothing. */
function boxMean({ light, width, height }: Grey, radius: number): Grey {
  const sums = new Float64Array((width + 1) * (height + 1));
  const row = width + 1;
  for (let y = 0; y < height; y += 1) {
    let sum = 0;
    for (let x = 0; x < width; x += 1) {
      sum += at(light, y * width + x);
      sums[(y + 1) * row + x + 1] = at(sums, y * row + x + 1) + sum;
    }
  }
  const out = new Float32Array(light.length);
  for (let y = 0; y < height; y += 1) {
    const top = Math.max(0, y - radius) * row;
    const low = Math.min(height, y + radius + 1) * row;
    for (let x = 0; x < width; x += 1) {
      const left = Math.max(0, x - radius);
      const right = Math.min(width, x + radius + 1);
      const sum = at(sums, low + right) - at(sums, low + left) - at(sums, top + right) + at(sums, top + left);
      out[y * width + x] = sum / (((low - top) / row) * (right - left));
    }
  }
  return { light: out, width, height };
}

function between({ light, width, height }: Grey, x: number, y: number): number {
  const x0 = Math.min(width - 1, Math.max(0, Math.floor(x)));
  const y0 = Math.min(height - 1, Math.max(0, Math.floor(y)));
  const x1 = Math.min(width - 1, x0 + 1);
  const y1 = Math.min(height - 1, y0 + 1);
  const fx = Math.min(1, Math.max(0, x - x0));
  const fy = Math.min(1, Math.max(0, y - y0));
  const top = at(light, y0 * width + x0) * (1 - fx) + at(light, y0 * width + x1) * fx;
  const low = at(light, y1 * width + x0) * (1 - fx) + at(light, y1 * width + x1) * fx;
  return top * (1 - fy) + low * fy;
}

function map(grey: Grey, change: (value: number, index: number) => number): Grey {
  const light = new Float32Array(grey.light.length);
  for (let i = 0; i < light.length; i += 1) light[i] = change(at(grey.light, i), i);
  return { ...grey, light };
}

function clamp(value: number): number {
  return Math.min(255, Math.max(0, value));
}

/** Indices here are all within the picture. */
function at(values: Uint8ClampedArray | Float32Array | Float64Array, index: number): number {
  return values[index] as number;
}
