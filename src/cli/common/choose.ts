/**
 * Turns what a person named (a level file, a bike, a rider) into the thing itself, or into a sentence
 * that lists what there is.
 */
import type { RoadAnswers } from '../../core/gpx/choose.ts';
import { readGpx } from '../../core/gpx/file.ts';
import { importRoad } from '../../core/gpx/road.ts';
import { parseLevelText } from '../../core/level/parse.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { Level } from '../../core/level/schema.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import { sentenceOf } from '../../words/problems.ts';
import { type Args, needed } from './args.ts';
import { readBytes, readTextFile } from './files.ts';
import { BadInput, noSuch } from './badInput.ts';

export function named<T extends { readonly id: string }>(kind: string, id: string, all: readonly T[]): T {
  const found = all.find((one) => one.id === id);
  if (found !== undefined) return found;
  throw noSuch(
    kind,
    id,
    all.map((one) => one.id),
  );
}

export function bikeFrom(args: Args): Bike {
  return named('bike', needed(args, 'bike', 'a bike'), BIKES);
}

export function riderFrom(args: Args): Rider {
  return named('rider', needed(args, 'rider', 'a rider'), RIDERS);
}

/** Where the first problem is and what it says, as the end of a sentence. */
export function firstOf([first]: readonly Problem[]): string {
  if (first === undefined) return ': ';
  return `${first.path === '' ? '' : ` at ${first.path}`}: ${sentenceOf(first)}`;
}

/** The level in a file; the first problem becomes the sentence. */
export function levelFromFile(path: string): Level {
  const parsed = parseLevelText(readTextFile(path));
  if (parsed.ok) return parsed.level;
  const more = parsed.problems.length - 1;
  const rest = more > 0 ? ` (${more} more: ask "levels ${path}")` : '';
  throw new BadInput(`"${path}" is no level that can be ridden${firstOf(parsed.problems)}${rest}`);
}

/** The road of a GPX file, with the month it was ridden in; or what is wrong with the file. */
export function roadFrom(args: Args, path: string) {
  const read = readGpx(readBytes(path), (label) => new TextDecoder(label));
  if (!read.ok) return read;
  const made = importRoad(read.file, heightsFrom(args));
  return made.ok ? { ...made, month: read.file.month } : made;
}

/** What the heights of a recorded road are in, where that was said. @throws BadInput for another unit */
function heightsFrom(args: Args): RoadAnswers {
  const heights = args.values.get('heights');
  if (heights === undefined) return {};
  if (heights === 'metres' || heights === 'feet') return { heights };
  throw new BadInput(`--heights must be metres or feet; "${heights}" is neither.`);
}
