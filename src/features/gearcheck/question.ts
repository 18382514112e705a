/** Reads what a person asks about parts, "34 at the back?" or "46/30 and 11-34", against their own bike. */
import { readChainrings, readSprockets } from '../../core/model/bikeInput.ts';
import type { GearParts } from '../../core/coach/gearCheck.ts';
import { words } from '../../words/words.ts';

const say = words('gearcheck');

/** Parts to try, or why none were understood. */
export type GearAsked =
  | { readonly ok: true; readonly parts: GearParts }
  | { readonly ok: false; readonly why: 'nothing' | 'which-end' | 'impossible' | 'same' };

/** What a question is taken apart by, in the words people use where this language is spoken. */
interface Ears {
  readonly back: RegExp;
  readonly front: RegExp;
  readonly between: RegExp;
  readonly range: RegExp;
  readonly numbers: RegExp;
}

/** Any of the words of a list with commas, as a pattern. */
const anyOf = (list: string): string =>
  list
    .split(',')
    .map((word) => word.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('|');
const whole = (list: string): string => `(?<!\\p{L})(?:${anyOf(list)})(?!\\p{L})`;

function earsNow(): Ears {
  const to = `\\s*(?:[/–-]|${whole(say('hear-to'))})\\s*`;
  return {
    back: new RegExp(whole(say('hear-back')), 'u'),
    front: new RegExp(whole(say('hear-front')), 'u'),
    between: new RegExp(`[,;?&+]|${whole(say('hear-and'))}`, 'u'),
    range: new RegExp(`\\d\\s*(?:[–-]|${whole(say('hear-to'))})\\s*\\d`, 'u'),
    numbers: new RegExp(`\\d+(?:${to}\\d+)*`, 'gu'),
  };
}

/** Understands rings from "front" or a stroke, sprockets from "back" or a dash; a single number changes one end. */
export function readGearQuestion(text: string, bike: GearParts): GearAsked {
  const ears = earsNow();
  const clauses = text
    .toLowerCase()
    .split(ears.between)
    .filter((clause) => /\d/.test(clause));
  if (clauses.length === 0) return { ok: false, why: 'nothing' };
  let parts: GearParts = {
    chainringsTeeth: bike.chainringsTeeth,
    sprocketsTeeth: bike.sprocketsTeeth,
  };
  for (const clause of clauses) {
    const groups = clause.match(ears.numbers) ?? [];
    const [group] = groups;
    if (group === undefined || groups.length > 1) return { ok: false, why: 'nothing' };
    const end = endOf(clause, group, ears);
    if (end === null) return { ok: false, why: 'which-end' };
    const teeth = (group.match(/\d+/g) ?? []).map(Number);
    const changed = end === 'front' ? newRings(teeth, parts) : newSprockets(teeth, parts);
    if (changed === null) return { ok: false, why: 'impossible' };
    parts = { ...parts, ...changed };
  }
  return isSame(parts, bike) ? { ok: false, why: 'same' } : { ok: true, parts };
}

function endOf(clause: string, group: string, ears: Ears): 'front' | 'back' | null {
  const front = ears.front.test(clause);
  const back = ears.back.test(clause);
  if (front !== back) return front ? 'front' : 'back';
  if (group.includes('/')) return 'front';
  return ears.range.test(group) ? 'back' : null;
}

function newRings(teeth: readonly number[], { chainringsTeeth }: GearParts): Partial<GearParts> | null {
  const [one] = teeth;
  const wanted =
    teeth.length > 1 || one === undefined
      ? teeth
      : chainringsTeeth.with(nearestIndex(chainringsTeeth, one), one);
  const read = readChainrings(wanted.toSorted((a, b) => a - b).join('/'));
  return read.ok ? { chainringsTeeth: read.value } : null;
}

/** A single number is the new biggest sprocket, or the new smallest where it is nearer to that. */
function newSprockets(teeth: readonly number[], { sprocketsTeeth }: GearParts): Partial<GearParts> | null {
  const small = sprocketsTeeth[0] ?? 0;
  const big = sprocketsTeeth.at(-1) ?? 0;
  const [one = 0] = teeth;
  if (teeth.length === 1 && sprocketsTeeth.length === 1) return { sprocketsTeeth: [one] };
  const ends = teeth.length > 1 ? teeth : nearestIndex([small, big], one) === 0 ? [one, big] : [small, one];
  const read = readSprockets(ends.toSorted((a, b) => a - b).join('-'), sprocketsTeeth.length);
  return read.ok ? { sprocketsTeeth: read.value } : null;
}

/** The index of the value that is nearest in proportion. */
function nearestIndex(values: readonly number[], to: number): number {
  const apart = (value: number): number => Math.max(value / to, to / value);
  return values.reduce((best, value, i) => (apart(value) < apart(values[best] ?? 0) ? i : best), 0);
}

function isSame(a: GearParts, b: GearParts): boolean {
  return (
    a.chainringsTeeth.join() === b.chainringsTeeth.join() &&
    a.sprocketsTeeth.join() === b.sprocketsTeeth.join()
  );
}
