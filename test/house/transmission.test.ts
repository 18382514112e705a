/**
 * A gear is not always a sprocket: besides the model, the pictures and the forms for parts, hardly any file may know
 * teeth or the places of the shifters. The others ask `core/model/transmission.ts`.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { listFiles, repository } from './files.ts';

/** Teeth of a part, places of a shifter and their counts, by the names they have everywhere. */
const KNOWS =
  /[a-z]Teeth\b|[rR]ingIndex|[sS]procketIndex|[rR]ingCount|[sS]procketCount|\b(?:from|to)Index\b|chainAt(?:Ring|Sprocket)/;

/** The model itself, pictures, and forms in which parts are typed or chosen. */
const MAY_KNOW = [
  'src/core/model/',
  'src/game/',
  'src/ui/pictures/',
  'src/features/bike/',
  'src/features/gearcheck/',
  'src/words/gears.ts',
];

describe('the transmission', () => {
  it('is known in its parts by at most fifteen files besides model, pictures and forms', () => {
    const files = listFiles().filter((path) => /^src\/.*\.tsx?$/.test(path));
    const knowing = files.filter(
      (path) =>
        !MAY_KNOW.some((start) => path.startsWith(start)) &&
        KNOWS.test(readFileSync(join(repository, path), 'utf8')),
    );
    // At the time of writing there were 61 before the model answered for them.
    expect(files.length).toBeGreaterThan(400);
    expect(knowing.length, knowing.join('\n')).toBeLessThanOrEqual(15);
  });
});
