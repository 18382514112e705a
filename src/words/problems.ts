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
import { gearName } from './gears.ts';
import { createFormat, type Format } from './format.ts';
import { roadSentence } from './roads.ts';
import { counted, number, percent, type Say, text, texts } from './values.ts';

const NEWER = ' Update the game; the file was left as it is.';
const CHECK_JSON = 'Check commas, quotes and brackets.';

const SCHEMA: Readonly<Record<SchemaCode, Say>> = {
  missing: ({ values }) => (values['allowed'] === undefined ? missing(values) : missingOneOf(values)),
  'wrong-type': ({ values }) => {
    const needed = kindOf(values);
    return /^-?Infinity$/.test(text(values, 'found'))
      ? `This number is too big to be read. Write ${needed}.`
      : `${found(values)} stands where ${needed} is needed.`;
  },
  'not-allowed': ({ values }) => {
    const allowed = texts(values, 'allowed');
    return allowed.length === 1
      ? `${found(values)} stands where ${allowed[0]} is needed.`
      : `${found(values)} is not known here. Use one of: ${allowed.join(', ')}.`;
  },
  'too-big': (problem) => limit(problem, 'may have', 'at most', number(problem.values, 'most')),
  'too-small': (problem) => limit(problem, 'needs', 'at least', number(problem.values, 'least')),
  'unknown-key': ({ values }) =>
    `"${text(values, 'key')}" is not a part of a level here. Remove it or check its spelling.`,
  'unknown-kind': ({ values }) => {
    if (values['part'] === 'cue')
      return 'This cue needs "atM" and either a known "cue" or a "text" of up to 76 characters.';
    const wrong = isNothing(values)
      ? 'The kind of this piece is missing.'
      : `${found(values)} is no kind of piece.`;
    return `${wrong} Use flat, climb, pitch, descent, rollers, random-pitches or recorded.`;
  },
  'bad-format': ({ values }) =>
    `${found(values)} does not fit. Use small letters, digits and dashes only, for example "two-pitches".`,
  invalid: ({ values }) => `${found(values)} does not fit here. Compare with a bundled level.`,
  more: ({ values }) =>
    `There ${number(values, 'count') === 1 ? 'is 1 more problem' : `are ${number(values, 'count')} more problems`}. Mend these first.`,
};

const LEVEL: Readonly<Record<LevelProblemCode | WarningCode, Say>> = {
  ...SCHEMA,
  'too-big': (problem) =>
    problem.values['most'] === undefined
      ? 'This is far too long to be a level. Choose a file that was saved on the bench.'
      : limit(problem, 'may have', 'at most', number(problem.values, 'most')),
  empty: 'This file is empty. A level file holds one object in braces { … }.',
  'not-json': ({ values }) => `This is not readable as JSON${faultPlace(values)}. ${CHECK_JSON}`,
  'not-a-level': 'A level file holds one object in braces { … }.',
  'too-deep': 'There is far more in this than any level has. Ask for it again, as a link or a file.',
  'too-much': 'There is far more in this than any level has. Ask for it again, as a link or a file.',
  'newer-schema': ({ values }) =>
    `This level was made by a newer version (format ${number(values, 'schema')}); this one reads up to ${number(values, 'readsUpTo')}.${NEWER}`,
  'no-weight': 'At least one mark needs a weight above 0.',
  'too-short': ({ values }) =>
    `The road is ${number(values, 'lengthM')} m long; it needs at least ${number(values, 'leastM')} m. Lengthen a piece or add one.`,
  'too-long': ({ values }) =>
    `The road is ${number(values, 'lengthM')} m long; at most ${number(values, 'mostM')} m can be ridden. Shorten or remove pieces.`,
  'gentler-than-steepest': 'The gentlest pitch is steeper than the steepest. Swap the two numbers.',
  'pitches-too-dense': ({ values }) =>
    `${number(values, 'pitchCount')} pitches need at least ${number(values, 'leastM')} m of road; this piece has ${number(values, 'lengthM')} m.`,
  'recorded-too-steep': ({ values }) =>
    `Here the recorded road is steeper than ${number(values, 'limitRatio') * 100} %. Smooth the heights first.`,
  backwards: 'This stretch ends before it begins. "toM" must be more than "fromM".',
  'beyond-end': ({ values }) =>
    `This ${values['part'] === 'cue' ? 'cue lies' : 'stretch ends'} beyond the road, which is ${number(values, 'lengthM')} m long.`,
  overlap: ({ values }) =>
    `This stretch overlaps with ${text(values, 'other')}. Let one end where the other begins.`,
  'stop-too-near': ({ values }) => `The stop line at ${number(values, 'atM')} m ${tooNear(values)}`,
  'cannot-climb': ({ values }) =>
    `This rider has to walk from ${Math.round(number(values, 'fromM'))} m to ${Math.round(number(values, 'toM'))} m (up to ${percent(values, 'slopeRatio')} %), even in ${lowestGear(values)}: some ${Math.round(number(values, 'walkS') / 10) * 10} s on foot. ${whatItTakes(values)}`,
  'cannot-hold-cadence': ({ values }) =>
    `This rider cannot hold ${number(values, 'heldRpm')} rpm on ${steepPlace(values)} in ${lowestGear(values)}; ${Math.round(number(values, 'cadenceRpm'))} rpm are left.`,
  'stop-uphill': ({ values }) =>
    `The stop line at ${Math.round(number(values, 'atM'))} m lies on ${percent(values, 'slopeRatio')} % uphill: starting again there is a struggle.`,
  'stop-downhill': ({ values }) =>
    `The stop line at ${Math.round(number(values, 'atM'))} m lies on ${percent(values, 'slopeRatio')} % downhill: nothing is learned from starting there.`,
  'hidden-long': ({ values }) =>
    `The road stays hidden for ${Math.round(number(values, 'lengthM'))} m with ${Math.round(number(values, 'sightM'))} m of sight: that is riding blind, not looking ahead.`,
  'hidden-pitch': ({ values }) =>
    `The ${percent(values, 'steepestRatio')} % pitch at ${number(values, 'footM')} m is seen only ${Math.round(number(values, 'sightM'))} m before; nobody can shift in time.`,
  'seed-unused':
    'Every ride of this level meets the same road, so it cannot show what was learned. Add rollers or random pitches.',
  'seed-moves-stop': ({ values }) =>
    `With another seed (${number(values, 'seed')}) this stop line comes to lie on ${percent(values, 'slopeRatio')} %.`,
};

const PLAN: Readonly<Record<PlanCode, Say>> = {
  ...SCHEMA,
  'too-big': (problem) =>
    problem.values['most'] === undefined
      ? 'This is far too long to be a plan. Ask the coach for it again.'
      : limit(problem, 'may have', 'at most', number(problem.values, 'most')),
  'not-json': `This is not readable as JSON. ${CHECK_JSON}`,
  'not-a-plan': 'A plan file holds one object in braces { … }.',
  'too-deep': 'There is far more in this than any plan has. Ask the coach for it again.',
  'too-much': 'There is far more in this than any plan has. Ask the coach for it again.',
  'newer-schema': ({ values }) =>
    `This plan was made by a newer version (format ${number(values, 'schema')}); this one reads up to ${number(values, 'readsUpTo')}.${NEWER}`,
  'unknown-key': ({ values }) =>
    `"${text(values, 'key')}" is not a part of a plan. Remove it or check its spelling.`,
  'unknown-kind': 'A ride of a plan has the kind bundled, own or check.',
  'bad-format': 'Use small letters, digits and dashes only, for example "first-evening".',
  invalid: 'This does not fit here. Compare with a ready plan.',
  'dirty-text': 'The title has invisible characters, or spaces at its ends. Type it again.',
  'unknown-bike': ({ values }) => `There is no such bike. Use ${oneOf(values, 1)}.`,
  'unknown-rider': ({ values }) => `There is no such rider. Use ${oneOf(values, 2)}.`,
  'unknown-level': ({ values }) =>
    `There is no level "${text(values, 'levelId')}" here. Choose another, or put the level itself in the plan.`,
};

const LINK: Readonly<Record<LinkCode, Say>> = {
  'too-big': 'The shared level is too big to be one.',
  'not-json': 'What was shared is no level. Share it again from the level bench.',
  'not-packed': 'What was shared is no level. Share it again from the level bench.',
  'not-shared': 'This is no shared level. Copy the whole link, from its first to its last letter.',
  'newer-version': ({ values }) =>
    `This level was shared by a newer version (format ${number(values, 'version')}); this one reads up to ${number(values, 'readsUpTo')}. Update the game.`,
  damaged: 'The shared level is incomplete or was changed on its way. Copy the whole link again.',
  'unknown-packing': 'The shared level is packed in a way that is not known here. Update the game.',
};

const WORDS: Readonly<Record<Exclude<ProblemAbout, 'road'>, Readonly<Record<string, Say>>>> = {
  level: LEVEL,
  plan: PLAN,
  link: LINK,
};

/** What is wrong, as a sentence. Throws for a code that the core does not have, which would be a fault of ours. */
export function sentenceOf(problem: Problem): string {
  return sentenceIn(createFormat('metric'))(problem);
}

/** The same in the units of whoever reads it. */
export function sentenceIn(format: Format): (problem: Problem) => string {
  return (problem) => (problem.about === 'road' ? roadSentence(problem, format) : otherSentence(problem));
}

function otherSentence(problem: Problem): string {
  if (problem.about === 'road') throw new Error('roads have words of their own');
  const say = WORDS[problem.about][problem.code];
  if (say === undefined) throw new Error(`no words for ${problem.about} ${problem.code}`);
  return typeof say === 'string' ? say : say(problem);
}

const PLAIN: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'text in quotes',
  boolean: 'true or false',
  array: 'a list in [ ]',
  object: 'an object in { }',
};

type Values = Problem['values'];

function kindOf(values: Values): string {
  const needed = text(values, 'needed');
  return PLAIN[needed] ?? needed;
}

function missing(values: Values): string {
  return `This is missing. Add ${kindOf(values)}.`;
}

function missingOneOf(values: Values): string {
  const allowed = texts(values, 'allowed');
  return allowed.length === 1
    ? `This is missing. Write ${allowed[0]}.`
    : `This is missing. Use one of: ${allowed.join(', ')}.`;
}

function isNothing(values: Values): boolean {
  return values['found'] === '';
}

/** What stands there, as a person would recognise it. */
function found(values: Values): string {
  const shown = text(values, 'found');
  if (shown === '') return 'Nothing';
  if (shown === '[]') return 'A list';
  return shown === '{}' ? 'An object' : shown;
}

function limit({ path, values }: Problem, may: string, word: string, bound: number): string {
  if (values['characters'] !== undefined)
    return `This text ${may} ${word} ${counted(bound, 'character')}; it has ${number(values, 'characters')}.`;
  if (values['entries'] !== undefined)
    return `This list ${may} ${word} ${counted(bound, 'entry', 'entries')}; it has ${number(values, 'entries')}.`;
  return `${found(values)} is out of range; it must be ${word} ${bound}.${percentHint(path, Number(values['found']))}`;
}

/** People write gradients in percent. */
function percentHint(path: string, value: number): string {
  if (!path.endsWith('Ratio') || !(Math.abs(value) >= 1 && Math.abs(value) <= 100)) return '';
  return ` Slopes are rise over run here: ${value} % is written ${Number((value / 100).toPrecision(6))}.`;
}

/** Where reading stopped, as far as that is known. */
function faultPlace(values: Values): string {
  if (values['line'] !== undefined) return `; the fault is near line ${number(values, 'line')}`;
  return values['endsEarly'] === undefined ? '' : '; it ends too early';
}

function tooNear(values: Values): string {
  const lengthM = values['lengthM'] === undefined ? 0 : number(values, 'lengthM');
  if (values['near'] === 'beyond-end') return `lies beyond the road, which is ${lengthM} m long.`;
  const leastM = number(values, 'leastM');
  if (values['near'] === 'end') return `needs ${leastM} m of road behind it; the road ends at ${lengthM} m.`;
  const from = values['near'] === 'start' ? 'the start' : `the stop line at ${number(values, 'lastM')} m`;
  return `needs ${leastM} m of road between it and ${from}.`;
}

/** A gear where one helps, else power. */
function whatItTakes(values: Values): string {
  const developmentM = number(values, 'neededDevelopmentM');
  return developmentM > 0
    ? `Riding it would take a gear of ${developmentM.toFixed(2)} m a turn.`
    : `No gear helps; riding it would take more than ${Math.round(number(values, 'neededPowerW') / 5) * 5} W.`;
}

function steepPlace(values: Values): string {
  return `the ${percent(values, 'slopeRatio')} % at ${number(values, 'atM')} m`;
}

function lowestGear(values: Values): string {
  return `the lowest gear (${gearName(gearOfValues(values))})`;
}

/** The first few by name, the rest as a list: `by-bike, by-feel, or one of: adult-new, …`. */
function oneOf(values: Values, first: number): string {
  const allowed = texts(values, 'allowed');
  return `${allowed.slice(0, first).join(', ')}, or one of: ${allowed.slice(first).join(', ')}`;
}
