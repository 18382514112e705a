/**
 * Turns what a person named (a level file, a bike, a rider) into the thing itself, or into a sentence
 * that lists what there is.
 */
import type { RoadAnswers } from '../../core/gpx/choose.ts';
import { parseLevelText } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { BIKES, bikeById, RIDERS, riderById } from '../../core/model/presets.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import { sentenceOf } from '../../words/problems.ts';
import { type Args, needed } from './args.ts';
import { readTextFile } from './files.ts';
import { BadInput } from './badInput.ts';

/** The bike after `--bike`. */
export function bikeFrom(args: Args): Bike {
  const id = needed(args, 'bike', 'a bike');
  const bike = bikeById(id);
  if (bike === undefined)
    throw new BadInput(`There is no bike "${id}". Choose one of ${BIKES.map((b) => b.id).join(', ')}.`);
  return bike;
}

/** The rider after `--rider`. */
export function riderFrom(args: Args): Rider {
  const id = needed(args, 'rider', 'a rider');
  const rider = riderById(id);
  if (rider === undefined)
    throw new BadInput(`There is no rider "${id}". Choose one of ${RIDERS.map((r) => r.id).join(', ')}.`);
  return rider;
}

/** The level in a file; the first problem becomes the sentence. */
export function levelFromFile(path: string): Level {
  const parsed = parseLevelText(readTextFile(path));
  if (parsed.ok) return parsed.level;
  const [first] = parsed.problems;
  const more = parsed.problems.length - 1;
  const place = first === undefined || first.path === '' ? '' : ` at ${first.path}`;
  throw new BadInput(
    `"${path}" is no level that can be ridden${place}: ${first === undefined ? '' : sentenceOf(first)}${more > 0 ? ` (${more} more: ask "levels ${path}")` : ''}`,
  );
}

/** What the heights of a recorded road are in, where that was said. @throws BadInput for another unit */
export function heightsFrom(args: Args): RoadAnswers {
  const heights = args.values.get('heights');
  if (heights === undefined) return {};
  if (heights === 'metres' || heights === 'feet') return { heights };
  throw new BadInput(`--heights must be metres or feet; "${heights}" is neither.`);
}
