/**
 * Looks for one QR code in a picture, several times in several lights, sizes and turns, because a reader made for
 * good pictures gives up on bad ones. Fetched only when something is to be read; pure.
 */
import jsQR from 'jsqr';
import {
  evenLight,
  gathered,
  type Grey,
  greyOf,
  type CameraPicture,
  pictureOf,
  scaled,
  turned,
} from './light.ts';

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
