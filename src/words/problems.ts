/**
 * The sentences about what is wrong with a level, a plan, a shared link or a recorded road, for command line and
 * pages alike: the core finds a code and its numbers, here they become what a person can do.
 */
import type { PlanCode } from '../core/group/plan.ts';
import type { WarningCode } from '../core/level/lint.ts';
import type { LevelProblemCode } from '../core/level/parse.ts';
import type { Problem, ProblemAbout, SchemaCode } from '../core/level/problems.ts';
import { gearOfValues } from '../core/model/transmission.ts';
import type { LinkCode } from '../core/transfer/share.ts';
import type { Values } from './fill.ts';
import { createFormat, type Format } from './format.ts';
import type { Messages } from './messages.ts';
import { roadSentence } from './roads.ts';
import { number, text, texts, written } from './values.ts';
import { words } from './words.ts';

const say = words('problems');

type Name = keyof Messages['problems'];
type About<A extends ProblemAbout> = Problem & { readonly about: A };

export function sentenceOf(problem: Problem): string {
  return sentenceIn(createFormat('metric'))(problem);
}

/** The same in the units of whoever reads it. */
export function sentenceIn(format: Format): (problem: Problem) => string {
  return (problem) => {
    switch (problem.about) {
      case 'road':
        return roadSentence(problem, format);
      case 'level':
        return levelSentence(problem as About<'level'>, format);
      case 'plan':
        return planSentence(problem as About<'plan'>);
      case 'link':
        return linkSentence(problem as About<'link'>);
    }
  };
}

function levelSentence(problem: About<'level'>, format: Format): string {
  const { values } = problem;
  const code = problem.code as LevelProblemCode | WarningCode;
  const told = (name: Name, more: Values = {}): string =>
    say.coded(name, { ...valuesIn(values, format), ...more });
  const lowest = (): Values => ({ gear: format.gear(gearOfValues(values)) });
  switch (code) {
    case 'too-big':
      return values['most'] === undefined ? say('level-too-big') : shapeSentence(problem, code);
    case 'unknown-key':
      return told('level-unknown-key');
    case 'unknown-kind':
      if (values['part'] === 'cue') return say('level-unknown-cue');
      return text(values, 'found') === ''
        ? say('level-missing-kind')
        : say('level-unknown-kind', foundIn(values));
    case 'not-json':
      return say('not-json', faultPlace(values));
    case 'too-much':
      return say('level-too-deep');
    case 'cannot-climb':
      return `${told('level-cannot-climb', lowest())} ${whatItTakes(values, format)}`;
    case 'cannot-hold-cadence':
      return told('level-cannot-hold-cadence', lowest());
    case 'missing':
    case 'wrong-type':
    case 'not-allowed':
    case 'too-small':
    case 'bad-format':
    case 'invalid':
    case 'more':
      return shapeSentence(problem, code);
    default:
      return told(`level-${code}`);
  }
}

function planSentence(problem: About<'plan'>): string {
  const { values } = problem;
  const code = problem.code as PlanCode;
  switch (code) {
    case 'too-big':
      return values['most'] === undefined ? say('plan-too-big') : shapeSentence(problem, code);
    case 'not-json':
      return say('not-json', faultPlace(values));
    case 'too-much':
      return say('plan-too-deep');
    case 'unknown-bike':
      return say('plan-unknown-bike', firstAndOthers(values, 1));
    case 'unknown-rider':
      return say('plan-unknown-rider', firstAndOthers(values, 2));
    case 'missing':
    case 'wrong-type':
    case 'not-allowed':
    case 'too-small':
    case 'more':
      return shapeSentence(problem, code);
    default:
      return say.coded(`plan-${code}`, values as Values);
  }
}

function linkSentence({ code, values }: About<'link'>): string {
  const of = code as LinkCode;
  return say.coded(of === 'not-json' ? 'link-not-packed' : `link-${of}`, values as Values);
}

/** What schemas find, which levels and plans share. */
function shapeSentence(problem: Problem, code: Exclude<SchemaCode, 'unknown-key' | 'unknown-kind'>): string {
  const { values } = problem;
  switch (code) {
    case 'missing':
      return values['allowed'] === undefined
        ? say('schema-missing', neededIn(values))
        : say('schema-missing-allowed', allowedIn(values));
    case 'wrong-type':
      return /^-?Infinity$/.test(text(values, 'found'))
        ? say('schema-endless', neededIn(values))
        : say('schema-wrong-type', { ...foundIn(values), ...neededIn(values) });
    case 'not-allowed':
      return say('schema-not-allowed', { ...foundIn(values), ...allowedIn(values) });
    case 'too-big':
    case 'too-small':
      return limitSentence(problem);
    case 'more':
      return say('schema-more', { count: number(values, 'count') });
    default:
      return say(`schema-${code}`, foundIn(values));
  }
}

function limitSentence({ path, code, values }: Problem): string {
  const bound = code === 'too-big' ? 'most' : 'least';
  for (const what of ['characters', 'entries'] as const)
    if (values[what] !== undefined)
      return say.coded(`schema-${what}-${bound}`, {
        [bound]: number(values, bound),
        has: number(values, what),
      });
  const found = text(values, 'found');
  const sentence = say.coded(`schema-range-${bound}`, { found, [bound]: String(number(values, bound)) });
  const percent = Number(found);
  // People write gradients in percent.
  if (!path.endsWith('Ratio') || !(Math.abs(percent) >= 1 && Math.abs(percent) <= 100)) return sentence;
  const ratio = String(Number((percent / 100).toPrecision(6)));
  return `${sentence} ${say('slopes', { percent: String(percent), ratio })}`;
}

/** What stands there, as a person would recognise it. */
function foundIn(values: Problem['values']): { is: 'nothing' | 'list' | 'object' | 'value'; found: string } {
  const found = text(values, 'found');
  const is = found === '' ? 'nothing' : found === '[]' ? 'list' : found === '{}' ? 'object' : 'value';
  return { is, found };
}

const KINDS = ['number', 'int', 'string', 'boolean', 'array', 'object'] as const;

function neededIn(values: Problem['values']): { needed: (typeof KINDS)[number] | 'other' } {
  return { needed: KINDS.find((kind) => kind === values['needed']) ?? 'other' };
}

function allowedIn(values: Problem['values']): { count: number; allowed: string } {
  const allowed = texts(values, 'allowed');
  return { count: allowed.length, allowed: allowed.join(', ') };
}

/** The first few by name, the rest as a list. */
function firstAndOthers(values: Problem['values'], count: number): { first: string; others: string } {
  const allowed = texts(values, 'allowed');
  return { first: allowed.slice(0, count).join(', '), others: allowed.slice(count).join(', ') };
}

/** Where reading stopped, as far as that is known. */
function faultPlace(values: Problem['values']): { where: 'line' | 'end' | 'unknown'; line: string } {
  if (values['line'] !== undefined) return { where: 'line', line: String(number(values, 'line')) };
  return { where: values['endsEarly'] === undefined ? 'unknown' : 'end', line: '' };
}

/** As levels tell them: slopes without their sign, which the sentence says, and a seed as its digits. */
function valuesIn(values: Problem['values'], format: Format): Values {
  const plain = Object.entries(values).map(([name, value]): [string, Problem['values'][string]] => {
    if (typeof value !== 'number') return [name, value];
    if (name.endsWith('Ratio')) return [name, Math.abs(value)];
    if (name === 'seed') return [name, String(value)];
    if (name === 'walkS') return [name, Math.round(value / 10) * 10];
    return [name, name.endsWith('Rpm') ? Math.round(value) : value];
  });
  return written(Object.fromEntries(plain), format);
}

/** A gear where one helps, else power. */
function whatItTakes(values: Problem['values'], format: Format): string {
  const developmentM = number(values, 'neededDevelopmentM');
  return developmentM > 0
    ? say('takes-gear', { metres: format.metres(developmentM) })
    : say('takes-power', { watts: Math.round(number(values, 'neededPowerW') / 5) * 5 });
}
