/**
 * The bundled levels in the language that is spoken. The build takes the words out of their files; here they come back
 * from the message files, and the whole is parsed at the door. One that is broken is left out and named by the tests and
 * the command line.
 */
import { parseLevel } from '../core/level/parse.ts';
import type { Level } from '../core/level/schema.ts';
import { helpLimit } from '../words/cues.ts';
import { createFormat } from '../words/format.ts';
import { words } from '../words/words.ts';

const say = words('ladder');

interface LevelFile {
  readonly id: string;
  readonly cues?: readonly object[];
}

const files = import.meta.glob<LevelFile>(['../../levels/*.json', '!**/level.schema.json'], {
  eager: true,
  import: 'default',
  query: '?wordless',
});

function inWords<File extends LevelFile>(file: File, speed: string): File {
  const said = (name: string): string => (say.has(name) ? say.coded(name, { speed }) : '');
  const { id, cues = [] } = file;
  let count = 0;
  const cueOf = (cue: object): object => {
    if (!('text' in cue)) return cue;
    count += 1;
    return { ...cue, text: said(`cue-${id}-${count}`) };
  };
  const texts = { title: said(`title-${id}`), sentence: said(`sentence-${id}`) };
  return { ...file, ...texts, ...(cues.length === 0 ? {} : { cues: cues.map(cueOf) }) };
}

/** In another language only their words are others. */
let parsedOnce: readonly Level[] | null = null;

/** Every level of `levels/` that parses, speaking in these units. */
export function bundledLevels(units: 'metric' | 'imperial' = 'metric'): readonly Level[] {
  const speed = helpLimit(createFormat(units));
  parsedOnce ??= Object.values(files).flatMap((file) => {
    const parsed = parseLevel(inWords(file, speed));
    return parsed.ok ? [parsed.level] : [];
  });
  return parsedOnce.map((level) => inWords(level, speed));
}
