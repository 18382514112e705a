/**
 * The only place of the house that reads and writes files. Whatever goes wrong with a file becomes a
 * sentence; what stands in it is judged by the core.
 */
import { closeSync, existsSync, openSync, readdirSync, readFileSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { BadInput } from './badInput.ts';

/** Bigger than any level, recording or track that can be ridden (bytes). */
const BIGGEST_FILE = 64 * 1024 * 1024;
/** Seen from the top of the repository, where `npm run` always starts the command line. */
const LEVELS_FOLDER = 'levels';
const PACKAGE_FILE = 'package.json';

/**
 * The text of a file, as UTF-8.
 * @throws BadInput if there is none, or it is a folder, unreadable or far too big
 */
export function readTextFile(path: string): string {
  return readBytes(path).toString('utf8');
}

/**
 * The bytes of a file.
 * @throws BadInput if there is none, or it is a folder, unreadable or far too big
 */
export function readBytes(path: string): Buffer {
  try {
    const found = statSync(path);
    if (found.isDirectory()) throw new BadInput(`"${path}" is a folder; a file is needed here.`);
    if (!found.isFile()) throw new BadInput(`"${path}" is no ordinary file.`);
    if (found.size > BIGGEST_FILE) throw new BadInput(`"${path}" is far too big to be right.`);
    return readFileSync(path);
  } catch (error) {
    if (error instanceof BadInput) throw error;
    throw new BadInput(fileSentence(path, error, 'read'));
  }
}

/** A file that should hold JSON, as a value. */
export function readJson(path: string): unknown {
  const text = readTextFile(path);
  try {
    // Some editors put an invisible mark before the first brace.
    return JSON.parse(text.replace(/^\uFEFF/, '')) as unknown;
  } catch {
    throw new BadInput(`"${path}" is not readable as JSON. Check commas, quotes and brackets.`);
  }
}

/**
 * Paths of the bundled levels, in order of their names.
 * @throws BadInput if the command line was not started at the top of the repository
 */
export function bundledLevelFiles(): string[] {
  const found = existsSync(LEVELS_FOLDER) ? readdirSync(LEVELS_FOLDER) : [];
  const files = found.filter((name) => name.endsWith('.json') && name !== 'level.schema.json').sort();
  if (files.length === 0)
    throw new BadInput(
      'There are no levels here. Start this at the top of the repository, or name the files.',
    );
  return files.map((name) => join(LEVELS_FOLDER, name));
}

/**
 * The version of the game, as its package says at the top of the repository.
 * @throws BadInput if the command line was not started there
 */
export function ownVersion(): string {
  const found = existsSync(PACKAGE_FILE) ? readJson(PACKAGE_FILE) : null;
  if (found !== null && typeof found === 'object' && 'version' in found && typeof found.version === 'string')
    return found.version;
  throw new BadInput('The version is not known here. Start this at the top of the repository.');
}

const CHUNK = 1 << 16;

/**
 * Opens a file for lines. An existing one is overwritten only if its name says that it holds such lines.
 * @throws BadInput where that would destroy something else, or cannot be written
 */
export function openLines(path: string, ending: string) {
  if (existsSync(path) && statSync(path).isDirectory())
    throw new BadInput(`"${path}" is a folder; name a file in it, like "${join(path, `ride${ending}`)}".`);
  if (existsSync(path) && !path.endsWith(ending))
    throw new BadInput(
      `"${path}" exists and does not end in ${ending}, so it was left alone. Choose another name.`,
    );
  let file: number;
  try {
    file = openSync(path, 'w');
  } catch (error) {
    throw new BadInput(fileSentence(path, error, 'written'));
  }
  let waiting = '';
  const flush = (): void => {
    if (waiting !== '') writeSync(file, waiting);
    waiting = '';
  };
  return {
    line: (text: string): void => {
      waiting += `${text}\n`;
      if (waiting.length > CHUNK) flush();
    },
    close: (): void => {
      flush();
      closeSync(file);
    },
  };
}
/** A file that grows line by line. */
export type LineFile = ReturnType<typeof openLines>;

function fileSentence(path: string, error: unknown, done: 'read' | 'written'): string {
  switch ((error as NodeJS.ErrnoException).code) {
    case 'ENOENT':
      return done === 'read'
        ? `There is no file "${path}".`
        : `"${path}" cannot be written; its folder does not exist.`;
    case 'ENOTDIR':
      return `"${path}" leads through something that is no folder.`;
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return `"${path}" may not be ${done}.`;
    default:
      return `"${path}" cannot be ${done}.`;
  }
}
