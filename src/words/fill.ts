/**
 * Fills in a message as Fluent says (`projectfluent.org`): values, other messages and terms, plurals and choices. Only
 * what is left after parsing, in a sixth of the size of the usual package, so that the first page stays small; a test
 * compares both on every message.
 */

export type Values = Readonly<Record<string, string | number>>;
type Options = Intl.NumberFormatOptions & Intl.PluralRulesOptions;
/** A number with the way it is written and counted. */
interface Counted {
  readonly number: number;
  readonly options: Options;
}

type Expression =
  | { readonly type: 'var'; readonly name: string }
  | { readonly type: 'str'; readonly value: string }
  | { readonly type: 'num'; readonly value: number; readonly precision: number }
  | { readonly type: 'mesg'; readonly name: string; readonly attr: string | null }
  | {
      readonly type: 'term' | 'func';
      readonly name: string;
      readonly attr?: string | null;
      readonly args: readonly Argument[];
    }
  | {
      readonly type: 'select';
      readonly selector: Expression;
      readonly variants: readonly { readonly key: Expression; readonly value: Pattern }[];
      readonly star: number;
    };
type Argument = Expression | { readonly type: 'narg'; readonly name: string; readonly value: Expression };
type Pattern = string | readonly (string | Expression)[];

/** A message, or a term with its attributes. */
export interface Entry {
  readonly value: Pattern;
  readonly attributes: Readonly<Record<string, Pattern>>;
}

/** A file of messages in a language. */
export interface Book {
  readonly entries: ReadonlyMap<string, Entry>;
  /** How numbers are written, and how they are counted. */
  readonly locale: string;
}

const kept = new Map<string, unknown>();
/** Kept: making one costs a hundred times as much as using it. */
function once<T>(name: string, locale: string, options: Options, make: () => T): T {
  const key = `${name} ${locale} ${JSON.stringify(options)}`;
  if (!kept.has(key)) kept.set(key, make());
  return kept.get(key) as T;
}

export function numberWriter(locale: string, options: Options): Intl.NumberFormat {
  return once('number', locale, options, () => new Intl.NumberFormat(locale, options));
}

export function fill(book: Book, pattern: Pattern, values: Values): string {
  if (typeof pattern === 'string') return pattern;
  return pattern
    .map((part) => (typeof part === 'string' ? part : written(book, valueOf(book, part, values))))
    .join('');
}

function written({ locale }: Book, value: string | Counted): string {
  if (typeof value === 'string') return value;
  const { number, options } = value;
  return numberWriter(locale, options).format(number);
}

function valueOf(book: Book, part: Expression, values: Values): string | Counted {
  switch (part.type) {
    case 'var': {
      const value = values[part.name] ?? `{$${part.name}}`;
      return typeof value === 'number' ? { number: value, options: {} } : value;
    }
    case 'str':
      return part.value;
    case 'num':
      return { number: part.value, options: { minimumFractionDigits: part.precision } };
    case 'mesg':
      return entryText(book, part.name, part.attr, values);
    case 'term':
      // A term knows nothing but what it is given.
      return entryText(book, `-${part.name}`, part.attr, namedOf(book, part.args, values));
    case 'func':
      return functionOf(book, part.args, values);
    case 'select':
      return fill(book, chosen(book, part, values), values);
  }
}

function entryText(book: Book, id: string, attribute: string | null | undefined, values: Values): string {
  const entry = book.entries.get(id);
  const pattern = typeof attribute === 'string' ? entry?.attributes[attribute] : entry?.value;
  return pattern === undefined ? `{${id}}` : fill(book, pattern, values);
}

function namedOf(book: Book, args: readonly Argument[], values: Values): Record<string, string | number> {
  return Object.fromEntries(
    args.flatMap((arg) => {
      if (arg.type !== 'narg') return [];
      const value = valueOf(book, arg.value, values);
      return [[arg.name, typeof value === 'string' ? value : value.number] as const];
    }),
  );
}

/** NUMBER() is the only function there is. */
function functionOf(book: Book, args: readonly Argument[], values: Values): string | Counted {
  const [first] = args;
  const value = first === undefined || first.type === 'narg' ? '' : valueOf(book, first, values);
  if (typeof value === 'string') return value;
  return { number: value.number, options: { ...value.options, ...namedOf(book, args, values) } as Options };
}

function chosen(book: Book, part: Extract<Expression, { type: 'select' }>, values: Values): Pattern {
  const by = valueOf(book, part.selector, values);
  const fits = (key: string | Counted): boolean => {
    if (typeof by === 'string' || typeof key !== 'string') {
      return typeof by === 'string' ? by === key : typeof key !== 'string' && key.number === by.number;
    }
    const { locale } = book;
    const rules = once('plural', locale, by.options, () => new Intl.PluralRules(locale, by.options));
    return rules.select(by.number) === key;
  };
  const variant = part.variants.find(({ key }) => fits(valueOf(book, key, values)));
  return (variant ?? part.variants[part.star])?.value ?? '';
}
