/**
 * Who offers a name and who takes it: finds names that two files declare for others, and names that are offered
 * to nobody. It works on texts that are handed in, so that it can be shown bad ones.
 */
import { posix } from 'node:path';
import { parseSync } from 'vite';
import type { Sources } from './boundaries.ts';

const scriptFile = /\.(ts|tsx)$/;
/** Their names are read by something that is no source file: the build, the browser, a program outside. */
const entries =
  /^src\/(main\.tsx|core\/index\.ts|cli\/main\.ts|offline\/worker\.ts|.*\.worker\.ts|.*\.d\.ts)$/;

/** A name that a file declares and exports. */
export interface Offer {
  readonly path: string;
  readonly name: string;
}

interface Usage {
  readonly offers: readonly Offer[];
  /** `path name` of what each file takes from another, `path *` where it takes all. */
  readonly taken: ReadonlyMap<string, ReadonlySet<string>>;
}

/** Everything offered and taken; `import('…')`, of a value or a type, counts as taking all. */
function readUsage(sources: Sources): Usage {
  const offers: Offer[] = [];
  const taken = new Map<string, Set<string>>();
  for (const [path, text] of sources) {
    if (!scriptFile.test(path)) continue;
    const mine = new Set<string>();
    taken.set(path, mine);
    const take = (specifier: string, name: string | null): void => {
      if (!specifier.startsWith('.')) return;
      const target = posix.join(posix.dirname(path), specifier.replace(/[?#].*$/, ''));
      mine.add(`${target} ${name ?? '*'}`);
    };
    const { staticImports, staticExports } = parseSync(path, text).module;
    for (const { moduleRequest, entries: some } of staticImports)
      for (const { importName } of some) take(moduleRequest.value, importName.name);
    for (const [, specifier = ''] of text.matchAll(/\bimport\(\s*['"]([^'"]+)/g)) take(specifier, null);
    for (const { moduleRequest, importName, exportName } of staticExports.flatMap((one) => one.entries)) {
      if (moduleRequest !== null) take(moduleRequest.value, importName.name);
      else if (path.startsWith('src/') && exportName.name !== null)
        offers.push({ path, name: exportName.name });
    }
  }
  return { offers, taken };
}

/** Names that more than one file of `src` declares and exports, each with its files. */
export function findSharedNames(sources: Sources): string[] {
  const places = new Map<string, string[]>();
  for (const { path, name } of readUsage(sources).offers)
    places.set(name, [...(places.get(name) ?? []), path]);
  return [...places]
    .filter(([, paths]) => paths.length > 1)
    .map(([name, paths]) => `${name}: ${paths.join(', ')}`);
}

/** Exports of `src` that no other file takes; of those that are no part of `src`, only takers `counts` says yes to. */
export function findUnusedExports(sources: Sources, counts = (_path: string): boolean => true): Offer[] {
  const { offers, taken } = readUsage(sources);
  const wanted = new Set<string>();
  for (const [path, names] of taken)
    if (path.startsWith('src/') || counts(path)) for (const one of names) wanted.add(one);
  return offers.filter(
    ({ path, name }) => !entries.test(path) && !wanted.has(`${path} ${name}`) && !wanted.has(`${path} *`),
  );
}
