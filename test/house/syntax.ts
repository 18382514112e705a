/**
 * Reads a source file into its syntax tree and lists what it refers to: imports of every kind, files
 * named by address, patterns of files. What is allowed is decided elsewhere.
 */
import { parseSync } from 'vite';

/** A node of the tree; everything but its type and place has to be looked at before use. */
export interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** How a file refers to another. `type` leaves no trace in the running program. */
export type ReferenceKind = 'static' | 'type' | 'dynamic' | 'address' | 'pattern';

/** One mention of another file or package. */
export interface Reference {
  readonly specifier: string;
  readonly kind: ReferenceKind;
  readonly line: number;
}

/** A parsed file. */
export interface Module {
  readonly path: string;
  readonly program: SyntaxNode;
  readonly references: readonly Reference[];
  /** What could not be read, each with its line. */
  readonly unreadable: readonly { readonly line: number; readonly text: string }[];
  readonly lineOf: (offset: number) => number;
}

/** Whether a value found in the tree is a node. */
export function isNode(value: unknown): value is SyntaxNode {
  return typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';
}

/** Calls `visit` for a node and everything below it; `false` leaves out what is below. */
export function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | null, key: string) => void,
): void {
  const step = (current: SyntaxNode, parent: SyntaxNode | null, key: string): void => {
    visit(current, parent, key);
    for (const [childKey, child] of Object.entries(current)) {
      for (const item of Array.isArray(child) ? (child as unknown[]) : [child]) {
        if (isNode(item)) step(item, current, childKey);
      }
    }
  };
  step(node, null, '');
}

/** The text of a string literal or of a template without gaps. */
function textOf(node: unknown): string | null {
  if (!isNode(node)) return null;
  if (node.type === 'Literal' && typeof node['value'] === 'string') return node['value'];
  if (node.type === 'TSLiteralType') return textOf(node['literal']);
  if (node.type !== 'TemplateLiteral') return null;
  const quasis = node['quasis'] as { value: { cooked: string } }[];
  return quasis.length === 1 ? (quasis[0]?.value.cooked ?? null) : null;
}

function isNamed(node: unknown, name: string): boolean {
  return isNode(node) && node.type === 'Identifier' && node['name'] === name;
}

/** `import.meta.<name>`. */
function isImportMeta(node: unknown, name: string): boolean {
  return (
    isNode(node) &&
    node.type === 'MemberExpression' &&
    isNode(node['object']) &&
    node['object'].type === 'MetaProperty' &&
    isNamed(node['property'], name)
  );
}

/** What a node refers to: kind and the nodes that hold the names, or null if it refers to nothing. */
function referencesAt(node: SyntaxNode): { kind: ReferenceKind; names: readonly unknown[] } | null {
  const args = (node['arguments'] ?? []) as readonly unknown[];
  switch (node.type) {
    case 'ImportDeclaration':
      return { kind: node['importKind'] === 'type' ? 'type' : 'static', names: [node['source']] };
    case 'ExportAllDeclaration':
    case 'ExportNamedDeclaration':
      if (!isNode(node['source'])) return null;
      return { kind: node['exportKind'] === 'type' ? 'type' : 'static', names: [node['source']] };
    case 'TSExternalModuleReference':
      return { kind: 'static', names: [node['expression']] };
    case 'ImportExpression':
      return { kind: 'dynamic', names: [node['source']] };
    case 'TSImportType':
      return { kind: 'type', names: [node['source'] ?? node['argument']] };
    case 'NewExpression':
      if (!isNamed(node['callee'], 'URL') || !isImportMeta(args[1], 'url')) return null;
      return { kind: 'address', names: [args[0]] };
    case 'CallExpression':
      if (isNamed(node['callee'], 'require')) return { kind: 'static', names: [args[0]] };
      if (!isImportMeta(node['callee'], 'glob')) return null;
      return { kind: 'pattern', names: patternNames(args[0]) };
    default:
      return null;
  }
}

function patternNames(argument: unknown): readonly unknown[] {
  const isList = isNode(argument) && argument.type === 'ArrayExpression';
  const all = isList ? (argument['elements'] as readonly unknown[]) : [argument];
  // A pattern that begins with "!" leaves files out; it brings none in.
  return all.filter(
    (one) => !(isNode(one) && typeof one['value'] === 'string' && one['value'].startsWith('!')),
  );
}

/** Parses a file; JSX counts as an import of preact, because the build writes that import. */
export function readModule(path: string, text: string): Module {
  const parsed = parseSync(path, text);
  const program = parsed.program as unknown as SyntaxNode;
  const lineOf = (offset: number): number => text.slice(0, offset).split('\n').length;
  const references: Reference[] = [];
  const unreadable = parsed.errors.map((error) => ({ line: 1, text: error.message }));
  let hasJsx = false;
  walk(program, (node) => {
    const line = lineOf(node.start);
    const isJsx = node.type === 'JSXElement' || node.type === 'JSXFragment';
    if (isJsx && !hasJsx) references.push({ specifier: 'preact', kind: 'static', line });
    hasJsx ||= isJsx;
    const found = referencesAt(node);
    for (const name of found?.names ?? []) {
      const specifier = textOf(name);
      if (specifier !== null && found !== null) references.push({ specifier, kind: found.kind, line });
      else unreadable.push({ line, text: 'names what it refers to only while running' });
    }
  });
  return { path, program, references, unreadable, lineOf };
}
