/**
 * Writes `src/words/messages.ts`: the names of all English messages and what is filled in, so that the compiler knows
 * a misspelt name, a forgotten value and one of the wrong kind. `npm run words` writes it, a test compares.
 */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import {
  FluentParser,
  Junk,
  Message,
  type MessageReference,
  NumberLiteral,
  type SelectExpression,
  VariableReference,
  Visitor,
} from '@fluent/syntax';
import { ENGLISH, textOf, wordFiles } from './carry.ts';

/** Names a number can be chosen by: the plural categories of Unicode. */
const PLURALS = new Set(['zero', 'one', 'two', 'few', 'many', 'other']);

/** What a variable may be: a number where it is counted, one of the names where it is chosen by, else text or number. */
class Values extends Visitor {
  readonly kinds = new Map<string, string>();
  readonly used = new Set<string>();
  override visitVariableReference({ id }: VariableReference): void {
    if (!this.kinds.has(id.name)) this.kinds.set(id.name, 'Text');
  }
  override visitMessageReference({ id }: MessageReference): void {
    this.used.add(id.name);
  }
  override visitSelectExpression(node: SelectExpression): void {
    const { selector, variants } = node;
    this.genericVisit(node);
    const keys = variants.map(({ key }) => (key instanceof NumberLiteral ? null : key.name));
    const isCounted = keys.every((key) => key === null || PLURALS.has(key));
    const name = selector instanceof VariableReference ? selector.id.name : null;
    if (name !== null) {
      // Chosen by more than once, it may be any of the names.
      const before = (this.kinds.get(name) ?? '').split(' | ').filter((kind) => kind.startsWith("'"));
      const names = new Set([...before, ...keys.map((key) => `'${key}'`)]);
      this.kinds.set(name, isCounted ? 'number' : [...names].join(' | '));
    }
    const counted = selector.type === 'FunctionReference' ? selector.arguments.positional[0] : null;
    if (counted instanceof VariableReference) this.kinds.set(counted.id.name, 'number');
  }
}

/** Nobody reads the file line by line (characters). */
const WIDTH = 240;

/** As many to a line as fit. */
function packed(parts: readonly string[], indent: string): string {
  const lines: string[] = [];
  for (const part of parts) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + part.length < WIDTH) lines[lines.length - 1] = `${last} ${part}`;
    else lines.push(`${indent}${part}`);
  }
  return lines.join('\n');
}

/** The type of the messages of one file. */
function typeOfFile(file: string): string {
  const found = new Map<string, Values>();
  for (const entry of new FluentParser().parse(textOf(ENGLISH, file)).body) {
    if (entry instanceof Junk)
      throw new Error(`${file}.ftl: ${entry.annotations[0]?.message}: ${entry.content}`);
    if (!(entry instanceof Message)) continue;
    const values = new Values();
    values.visit(entry);
    found.set(entry.id.name, values);
  }
  const kindsOf = ({ kinds, used }: Values): ReadonlyMap<string, string> =>
    new Map([...[...used].flatMap((id) => [...kindsOf(found.get(id) ?? new Values())]), ...kinds]);
  const all = [...found].map(([id, values]) => [id, kindsOf(values)] as const);
  const plain = all.flatMap(([id, kinds]) => (kinds.size === 0 ? [`| '${id}'`] : []));
  const filled = all.flatMap(([id, kinds]) => {
    const values = [...kinds].map(([name, kind]) => `${name}: ${kind}`).join('; ');
    return kinds.size === 0 ? [] : [`'${id}': { ${values} };`];
  });
  const rest = filled.length === 0 ? ';' : ` & {\n${packed(filled, '    ')}\n  };`;
  return `  ${file}: Plain<\n${packed(plain, '    ')}\n  >${rest}`;
}

/** The text of `src/words/messages.ts`. */
export function messageTypes(): string {
  return `/* oxlint-disable max-lines -- A list. */
/** Every message and what is filled in, from the files in \`assets/words/en\`. Written by \`npm run words\`, not by hand. */
type Plain<Ids extends string> = Record<Ids, null>;
type Text = string | number;

export interface Messages {
${wordFiles().map(typeOfFile).join('\n')}
}
`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  writeFileSync(new URL('../../src/words/messages.ts', import.meta.url), messageTypes());
