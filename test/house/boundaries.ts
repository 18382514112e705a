/**
 * Compares sources with the import table: who imports whom, which packages, no cycles, a pure core, short
 * files. It works on texts that are handed in, so that it can be shown bad ones and be seen to complain.
 */
import { posix } from 'node:path';
import { findImpurities } from './purity.ts';
import type { Module, Reference } from './syntax.ts';
import { readModule } from './syntax.ts';
import { importTable, lazyRooms, roomOf } from './table.ts';

/** Texts of files by their path from the top of the repository. */
export type Sources = ReadonlyMap<string, string>;

/** Longest file anybody has to read (lines). */
export const MAXIMUM_LINES = 600;
/** From here on a file is named by the check, for somebody to ask whether it holds one thing or two. */
export const LONG_LINES = 300;

const scriptFile = /\.(ts|tsx|mts|js|mjs)$/;

/** The file a relative specifier means; a `?url` or `?worker` behind it does not change which. */
function targetOf(fromPath: string, specifier: string): string {
  return posix.join(posix.dirname(fromPath), specifier.replace(/[?#].*$/, ''));
}

function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:';
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] as string);
}

function problemWithRoom(from: string, to: string, kind: Reference['kind']): string | null {
  if (from === to) return null;
  if (!importTable.get(from)?.rooms.includes(to)) return `${from} must not import ${to}`;
  const isLate = kind === 'dynamic' || kind === 'type';
  return lazyRooms.includes(to) && !isLate ? `${to} is loaded late: use import() or a type import` : null;
}

function problemWithReference(
  room: string,
  path: string,
  reference: Reference,
  sources: Sources,
): string | null {
  const { specifier, kind } = reference;
  if (!specifier.startsWith('.')) {
    if (specifier.startsWith('/') || specifier.startsWith('#')) return `${specifier} is not a relative path`;
    const name = packageOf(specifier);
    return importTable.get(room)?.packages.includes(name) ? null : `${room} must not use the package ${name}`;
  }
  const target = targetOf(path, specifier);
  const folder = target.split('/')[0] as string;
  if (folder !== 'src') {
    return importTable.get(room)?.folders.includes(folder) ? null : `${room} must not refer to ${target}`;
  }
  const targetRoom = roomOf(target);
  if (targetRoom === null) return `${target} is in no room of the house`;
  if (kind !== 'pattern' && !sources.has(target)) return `there is no ${target}`;
  return problemWithRoom(room, targetRoom, kind);
}

function problemsOfModule(room: string, module: Module, sources: Sources): string[] {
  const at = (line: number, text: string): string => `${module.path}:${line} ${text}`;
  const problems = module.unreadable.map(({ line, text }) => at(line, text));
  for (const reference of module.references) {
    const problem = problemWithReference(room, module.path, reference, sources);
    if (problem !== null) problems.push(at(reference.line, problem));
  }
  if (room.startsWith('core/')) {
    problems.push(...findImpurities(module).map(({ line, text }) => at(line, text)));
  }
  return problems;
}

/** Files of `src` that each file of `src` mentions, types and late imports included. */
function buildGraph(modules: readonly Module[]): ReadonlyMap<string, readonly string[]> {
  return new Map(
    modules.map(({ path, references }) => [
      path,
      references
        .filter(({ specifier, kind }) => specifier.startsWith('.') && kind !== 'pattern')
        .map(({ specifier }) => targetOf(path, specifier)),
    ]),
  );
}

/** One line for each cycle that a walk through the graph runs into. */
export function findCycles(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const finished = new Set<string>();
  const trail: string[] = [];
  const cycles: string[] = [];
  const visit = (path: string): void => {
    if (finished.has(path)) return;
    const start = trail.indexOf(path);
    if (start >= 0) {
      cycles.push(`import cycle: ${[...trail.slice(start), path].join(' > ')}`);
      return;
    }
    trail.push(path);
    for (const next of graph.get(path) ?? []) visit(next);
    trail.pop();
    finished.add(path);
  };
  for (const path of graph.keys()) visit(path);
  return cycles;
}

/**
 * One line for each ring of folders of `src`: a folder that imports another must not be imported by it, by however
 * long a way. A folder is its own files; what lies in folders within it is another folder.
 */
export function findFolderCycles(sources: Sources): string[] {
  const scripts = [...sources].filter(([path]) => path.startsWith('src/') && scriptFile.test(path));
  const folders = new Map<string, string[]>();
  for (const [path, targets] of buildGraph(scripts.map(([path, text]) => readModule(path, text)))) {
    const from = posix.dirname(path);
    const others = targets.map((target) => posix.dirname(target)).filter((folder) => folder !== from);
    folders.set(from, [...(folders.get(from) ?? []), ...others]);
  }
  return findCycles(folders);
}

/** Files of more than so many lines, wherever they are, as `path has N lines`. */
export function findLongFiles(sources: Sources, most = MAXIMUM_LINES): string[] {
  return (
    [...sources]
      // What a script writes has the length of what it is written from.
      .filter(
        ([path]) => (scriptFile.test(path) || path.endsWith('.css')) && path !== 'src/words/messages.ts',
      )
      .map(([path, text]) => ({ path, lines: text.replace(/\n$/, '').split('\n').length }))
      .filter(({ lines }) => lines > most)
      .map(({ path, lines }) => `${path} has ${lines} lines, more than ${most}`)
  );
}

/** Everything in `src` that breaks the table, as `file:line what is wrong`. */
export function checkBoundaries(sources: Sources): string[] {
  const problems: string[] = [];
  const modules: Module[] = [];
  for (const [path, text] of sources) {
    if (!path.startsWith('src/')) continue;
    if (/^src\/(core\/)?tsconfig\.json$/.test(path)) continue;
    const room = roomOf(path);
    if (room === null) problems.push(`${path} is in no room of the house`);
    if (room === null || !scriptFile.test(path)) continue;
    const module = readModule(path, text);
    modules.push(module);
    problems.push(...problemsOfModule(room, module, sources));
  }
  return [...problems, ...findCycles(buildGraph(modules))];
}
