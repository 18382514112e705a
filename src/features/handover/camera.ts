/**
 * The camera as a row of texts: opens it, looks at one picture after another, gives what it reads and lets the
 * camera go when told. Pictures are looked at and thrown away; none is kept or sent.
 */
import type { CameraPicture } from './light.ts';

/** Why there is no camera. */
export type CameraProblem = 'not-secure' | 'refused' | 'none' | 'in-use';

/** A camera that is on. */
export interface CodeCamera {
  readonly stop: () => void;
}

/** A picture is made this wide at most (pixels); finer ones only take longer. */
const WIDEST = 960;
/** Between two pictures (ms), so that the page stays quick. */
const PAUSE_MS = 60;

/** Looks at one picture in the way whose turn it is. */
type Look = (picture: CameraPicture, way: number) => string | null;

/** Turns the camera on. The video element shows what it sees. */
export async function openCamera(
  video: HTMLVideoElement,
  look: Look,
  onText: (text: string) => void,
): Promise<CodeCamera | CameraProblem> {
  if (!window.isSecureContext || navigator.mediaDevices === undefined) return 'not-secure';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: false,
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 960 } },
    });
  } catch (error) {
    return problemOf(error);
  }
  video.srcObject = stream;
  await video.play().catch(() => undefined);
  let timer = 0;
  let way = 0;
  const next = (): void => {
    const picture = pictureFrom(video, video.videoWidth, video.videoHeight, WIDEST);
    const text = picture === null ? null : look(picture, way);
    // What worked once will work for the next code too.
    if (text === null) way += 1;
    else onText(text);
    timer = window.setTimeout(next, PAUSE_MS);
  };
  next();
  return {
    stop: () => {
      window.clearTimeout(timer);
      for (const track of stream.getTracks()) track.stop();
      video.srcObject = null;
    },
  };
}

/** A picture file as pixels, or null where it is no picture. */
export async function pictureOfFile(file: Blob): Promise<CameraPicture | null> {
  try {
    const bitmap = await createImageBitmap(file);
    const picture = pictureFrom(bitmap, bitmap.width, bitmap.height, 2_400);
    bitmap.close();
    return picture;
  } catch {
    return null;
  }
}

let sheet: HTMLCanvasElement | null = null;

function pictureFrom(
  source: CanvasImageSource,
  width: number,
  height: number,
  most: number,
): CameraPicture | null {
  if (width === 0 || height === 0) return null;
  const factor = Math.min(1, most / Math.max(width, height));
  sheet ??= document.createElement('canvas');
  sheet.width = Math.round(width * factor);
  sheet.height = Math.round(height * factor);
  const pen = sheet.getContext('2d', { willReadFrequently: true });
  if (pen === null) return null;
  pen.drawImage(source, 0, 0, sheet.width, sheet.height);
  return pen.getImageData(0, 0, sheet.width, sheet.height);
}

function problemOf(error: unknown): CameraProblem {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  return name === 'NotReadableError' || name === 'AbortError' ? 'in-use' : 'none';
}
