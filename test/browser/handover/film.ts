/** A film of codes for a browser's pretended camera: uncompressed, black and white, each code for a few pictures. */
import { writeFileSync } from 'node:fs';
import { codeOf } from '../../../src/ui/pictures/code.ts';
import { photo, type Shot } from '../../features/handover/photo.ts';

const WIDTH = 720;
const HEIGHT = 720;
const PICTURES_A_SECOND = 10;
/** Pictures each code stands for. */
const HOLD = 12;

/** Writes the film (YUV4MPEG2): hands move, so each code is shown in every shot. The browser plays it round and round. */
export function writeFilm(file: string, texts: readonly string[], shots: readonly Shot[]): void {
  const head = Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F${PICTURES_A_SECOND}:1 Ip A1:1 C420jpeg\n`);
  const pieces: Buffer[] = [head];
  const pictures = shots.flatMap((shot) => texts.map((text, i) => photo(codeOf(text), shot, i)));
  for (const picture of pictures) {
    const light = Buffer.alloc(WIDTH * HEIGHT, 150);
    const left = Math.floor((WIDTH - picture.width) / 2);
    const top = Math.floor((HEIGHT - picture.height) / 2);
    for (let y = Math.max(0, -top); y < Math.min(picture.height, HEIGHT - top); y += 1)
      for (let x = Math.max(0, -left); x < Math.min(picture.width, WIDTH - left); x += 1)
        light[(y + top) * WIDTH + x + left] = picture.data[4 * (y * picture.width + x)] ?? 0;
    const grey = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
    for (let k = 0; k < HOLD; k += 1) pieces.push(Buffer.from('FRAME\n'), light, grey);
  }
  writeFileSync(file, Buffer.concat(pieces));
}
