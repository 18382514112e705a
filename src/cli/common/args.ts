/**
 * Reads the words after a verb: flags with a value, flags without, and files. Every misuse is a sentence;
 * what the values mean is left to the verbs.
 */
import { BadInput } from './badInput.ts';

/** A flag takes a value (`text`) or stands alone (`switch`). */
export type FlagKind = 'text' | 'switch';

export interface Args {
  readonly values: ReadonlyMap<string, string>;
  readonly switches: ReadonlySet<string>;
  readonly files: readonly string[];
}

/** Limits and wording of a number that is asked for. */
interface NumberRule {
  readonly low: number;
  readonly high: number;
  /** What the number is, with its unit: "the slope (rise over run, 8 % is 0.08)". */
  readonly what: string;
  readonly whole?: boolean;
}

/**
 * Sorts the words. `--flag value` and `--flag=value` mean the same; a value may begin with a minus sign.
 * @throws BadInput for a flag that is unknown, given twice, or lacks its value, and for an unwanted word
 */
export function readArgs(
  words: readonly string[],
  flags: Readonly<Record<string, FlagKind>>,
  takesFiles: boolean,
): Args {
  const values = new Map<string, string>();
  const switches = new Set<string>();
  const files: string[] = [];
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] as string;
    if (!word.startsWith('-') || word === '-') {
      if (!takesFiles) throw new BadInput(`Nothing is known to do with "${word}" here.`);
      files.push(word);
      continue;
    }
    const { name, inline } = splitFlag(word);
    const kind = Object.hasOwn(flags, name) ? flags[name] : undefined;
    if (kind === undefined || !word.startsWith('--')) throw new BadInput(unknownFlag(word, flags));
    if (values.has(name) || switches.has(name)) throw new BadInput(`--${name} is given twice.`);
    if (kind === 'switch') {
      if (inline !== undefined) throw new BadInput(`--${name} stands alone, without a value.`);
      switches.add(name);
      continue;
    }
    const value = inline ?? words[(i += 1)];
    if (value === undefined || value === '' || (inline === undefined && value.startsWith('--')))
      throw new BadInput(`--${name} needs a value after it.`);
    values.set(name, value);
  }
  return { values, switches, files };
}

function splitFlag(word: string): { name: string; inline: string | undefined } {
  const bare = word.replace(/^--?/, '');
  const at = bare.indexOf('=');
  return at < 0 ? { name: bare, inline: undefined } : { name: bare.slice(0, at), inline: bare.slice(at + 1) };
}

function unknownFlag(word: string, flags: Readonly<Record<string, FlagKind>>): string {
  const known = Object.keys(flags).map((name) => `--${name}`);
  return `The flag "${word}" is not known here. Known are ${known.join(', ')}.`;
}

/** The value of a flag that must be there. */
export function needed(args: Args, name: string, what: string): string {
  const value = args.values.get(name);
  if (value === undefined) throw new BadInput(`--${name} is missing; it names ${what}.`);
  return value;
}

/** A number from a flag, or the fallback where the flag is absent; without a fallback it must be there. */
export function numberOf(args: Args, name: string, rule: NumberRule, fallback?: number): number {
  const text = args.values.get(name);
  if (text === undefined) {
    if (fallback !== undefined) return fallback;
    throw new BadInput(`--${name} is missing; it gives ${rule.what}.`);
  }
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(text) ? Number(text) : Number.NaN;
  if (Number.isNaN(value))
    throw new BadInput(
      rule.whole === true
        ? `"${text}" after --${name} is no number; write ${rule.what} as a whole number, like 7.`
        : `"${text}" after --${name} is no number; write ${rule.what} with a point, like 0.5.`,
    );
  if (rule.whole === true && !Number.isInteger(value))
    throw new BadInput(`"${text}" after --${name} is no whole number; it gives ${rule.what}.`);
  if (value < rule.low || value > rule.high)
    throw new BadInput(
      `${text} after --${name} is out of range; ${rule.what} goes from ${rule.low} to ${rule.high}.`,
    );
  // A negative zero would print as "-0".
  return value + 0;
}
