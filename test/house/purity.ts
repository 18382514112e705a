/**
 * What the core must not touch: clocks, chance without a seed, the host it runs on, and arithmetic that
 * comes out differently in another browser. A ride is its recording only as long as none of it creeps in.
 */
import type { Module, SyntaxNode } from './syntax.ts';
import { isNode, walk } from './syntax.ts';

/** Functions and constants of `Math` that give the same bits everywhere. */
const exactMath = new Set(
  ['abs', 'ceil', 'floor', 'fround', 'imul', 'clz32', 'max', 'min', 'round', 'sign', 'sqrt', 'trunc'].concat([
    'E',
    'LN10',
    'LN2',
    'LOG10E',
    'LOG2E',
    'PI',
    'SQRT1_2',
    'SQRT2',
  ]),
);

/** Why each of these names has no place in the core. */
const forbiddenNames: Readonly<Record<string, string>> = {
  Date: 'is a clock',
  Temporal: 'is a clock',
  performance: 'is a clock',
  setTimeout: 'waits for a clock',
  setInterval: 'waits for a clock',
  setImmediate: 'waits for the host',
  queueMicrotask: 'waits for the host',
  requestAnimationFrame: 'waits for a screen',
  requestIdleCallback: 'waits for a screen',
  crypto: 'is chance without a seed',
  Intl: 'depends on the language of the host',
  globalThis: 'is the host',
  window: 'is the host',
  navigator: 'is the host',
  process: 'is the host',
  fetch: 'is the network',
  eval: 'hides what it does',
};

/** Methods whose answer depends on the language of the host. */
const localMethods = new Set(['localeCompare', 'toLocaleString', 'toLocaleLowerCase', 'toLocaleUpperCase']);

/** Keys under which an identifier is a label of something else and not a use of a name. */
function isLabel(node: SyntaxNode, parent: SyntaxNode | null, key: string): boolean {
  if (parent === null || parent['computed'] === true) return false;
  if (parent.type === 'MemberExpression') return key === 'property';
  if (parent.type === 'TSQualifiedName') return key === 'right';
  if (parent.type === 'ImportSpecifier') return key === 'imported';
  if (key !== 'key') return false;
  // `{ Date }` is both a label and a use; the use is visited as the value.
  return isNode(node);
}

function problemWithMath(parent: SyntaxNode | null): string | null {
  if (parent?.type !== 'MemberExpression' || parent['computed'] === true || !isNode(parent['property'])) {
    return 'Math may only be used as Math.name, so that its functions can be checked';
  }
  const name = String(parent['property']['name']);
  if (exactMath.has(name)) return null;
  return name === 'random'
    ? 'Math.random is chance without a seed'
    : `Math.${name} differs between browsers in the last place`;
}

function problemAt(node: SyntaxNode, parent: SyntaxNode | null, key: string): string | null {
  switch (node.type) {
    case 'Identifier': {
      const name = String(node['name']);
      if (isLabel(node, parent, key)) return localMethods.has(name) ? `${name} depends on the host` : null;
      if (name === 'Math') return problemWithMath(parent);
      return Object.hasOwn(forbiddenNames, name) ? `${name} ${forbiddenNames[name]}` : null;
    }
    case 'BinaryExpression':
      return node['operator'] === '**' ? '** differs between browsers in the last place' : null;
    case 'AssignmentExpression':
      return node['operator'] === '**=' ? '**= differs between browsers in the last place' : null;
    case 'MetaProperty':
      return isNode(node['meta']) && node['meta']['name'] === 'import' ? 'import.meta is the host' : null;
    default:
      return null;
  }
}

/** Everything in a file of the core that would make it impure, each with its line. */
export function findImpurities(module: Module): readonly { readonly line: number; readonly text: string }[] {
  const found: { line: number; text: string }[] = [];
  walk(module.program, (node, parent, key) => {
    const text = problemAt(node, parent, key);
    if (text !== null) found.push({ line: module.lineOf(node.start), text });
  });
  return found;
}
