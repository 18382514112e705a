/**
 * Who offers a name and who takes it: finds names that two files declare for others, and names that are offered
 * to nobody. It works on texts that are handed in, so that it can be shown bad ones.
 */
import { posix } from 'node:path';
import type { Sources } from './boundaries.ts';
import { isNode, readModule, type SyntaxNode, walk } from './syntax.ts';

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

function nameOf(node: unknown): string | null {
  if (!isNode(node)) return null;
  if (node.type === 'Identifier') return String(node['name']);
  return node.type === 'Literal' ? String(node['value']) : null;
}

function nodesOf(value: unknown): readonly SyntaxNode[] {
  return Array.isArray(value) ? (value as unknown[]).filter(isNode) : [];
}

/** Names a declaration brings: `const { a, b } = …` brings two. */
function declaredNames(declaration: SyntaxNode): readonly string[] {
  if (declaration.type !== 'VariableDeclaration') return [nameOf(declaration['id']) ?? ''].filter(Boolean);
  return nodesOf(declaration['declarations']).flatMap((one) => patternNames(one['id']));
}

function patternNames(pattern: unknown): readonly string[] {
  if (!isNode(pattern)) return [];
  if (pattern.type === 'Identifier') return [String(pattern['name'])];
  if (pattern.type === 'ObjectPattern')
    return nodesOf(pattern['properties']).flatMap((one) => patternNames(one['value'] ?? one['argument']));
  return pattern.type === 'ArrayPattern' ? nodesOf(pattern['elements']).flatMap(patternNames) : [];
}

function targetOf(path: string, source: unknown): string | null {
  const specifier = nameOf(source);
  if (specifier === null || !specifier.startsWith('.')) return null;
  return posix.join(posix.dirname(path), specifier.replace(/[?#].*$/, ''));
}

/** Everything offered and taken; `import('…')` counts as taking all. */
function readUsage(sources: Sources): Usage {
  const offers: Offer[] = [];
  const taken = new Map<string, Set<string>>();
  for (const [path, text] of sources) {
    if (!scriptFile.test(path)) continue;
    const mine = new Set<string>();
    taken.set(path, mine);
    const take = (source: unknown, name: string): void => {
      const target = targetOf(path, source);
      if (target !== null) mine.add(`${target} ${name}`);
    };
    walk(readModule(path, text).program, (node) => {
      switch (node.type) {
        case 'ImportDeclaration':
          for (const one of nodesOf(node['specifiers'])) {
            if (one.type === 'ImportSpecifier') take(node['source'], nameOf(one['imported']) ?? '*');
            else take(node['source'], '*');
          }
          return;
        case 'ExportAllDeclaration':
        case 'ImportExpression':
          return take(node['source'], '*');
        case 'TSImportType':
          return take(node['source'] ?? node['argument'], '*');
        case 'ExportNamedDeclaration':
          for (const one of nodesOf(node['specifiers'])) {
            if (isNode(node['source'])) take(node['source'], nameOf(one['local']) ?? '*');
          }
          if (isNode(node['declaration']) && path.startsWith('src/'))
            offers.push(...declaredNames(node['declaration']).map((name) => ({ path, name })));
          return;
        default:
      }
    });
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

/** Exports of `src` that no other file of `src` takes; tests alone are no reason to offer a name. */
export function findUnusedExports(sources: Sources): Offer[] {
  const { offers, taken } = readUsage(sources);
  const wanted = new Set<string>();
  for (const [path, names] of taken) if (path.startsWith('src/')) for (const one of names) wanted.add(one);
  return offers.filter(
    ({ path, name }) => !entries.test(path) && !wanted.has(`${path} ${name}`) && !wanted.has(`${path} *`),
  );
}
