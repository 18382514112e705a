/**
 * The bundled levels in the language that is spoken. The build takes the words out of their files; here they come back
 * from the message files, and the whole is parsed at the door. One that is broken is left out and named by the tests and
 * the command line.
 */
import { parseLevel } from '../core/level/parse.ts';
import type { Level } from '../core/level/schema.ts';
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

const said = (name: string): string => (say.has(name) ? say(name) : '');

function inWords(file: LevelFile): unknown {
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

/** Every level of `levels/` that parses. */
export function bundledLevels(): readonly Level[] {
  return Object.values(files).flatMap((file) => {
    const parsed = parseLevel(inWords(file));
    return parsed.ok ? [parsed.level] : [];
  });
}
