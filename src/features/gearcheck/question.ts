/** Reads what a person asks about parts, "34 at the back?" or "46/30 and 11-34", against their own bike. */
import { readChainrings, readSprockets } from '../../core/model/bikeInput.ts';
import type { GearParts } from '../../core/coach/gearCheck.ts';

/** Parts to try, or why none were understood. */
export type GearAsked =
  | { readonly ok: true; readonly parts: GearParts }
  | { readonly ok: false; readonly why: 'nothing' | 'which-end' | 'impossible' | 'same' };

const NUMBERS = /\d+(?:\s*(?:[/–-]|to)\s*\d+)*/g;
const BACK = /\b(back|rear|behind|cassette|sprockets?|cogs?)\b/;
const FRONT = /\b(front|rings?|chainrings?|crank(?:set)?)\b/;

/** Understands rings from "front" or a stroke, sprockets from "back" or a dash; a single number changes one end. */
export function readGearQuestion(text: string, bike: GearParts): GearAsked {
  const clauses = text
    .toLowerCase()
    .split(/,|;|\?|&|\+|\band\b|\bwith\b/)
    .filter((clause) => /\d/.test(clause));
  if (clauses.length === 0) return { ok: false, why: 'nothing' };
  let parts: GearParts = {
    chainringsTeeth: bike.chainringsTeeth,
    sprocketsTeeth: bike.sprocketsTeeth,
  };
  for (const clause of clauses) {
    const groups = clause.match(NUMBERS) ?? [];
    const [group] = groups;
    if (group === undefined || groups.length > 1) return { ok: false, why: 'nothing' };
    const end = endOf(clause, group);
    if (end === null) return { ok: false, why: 'which-end' };
    const teeth = (group.match(/\d+/g) ?? []).map(Number);
    const changed = end === 'front' ? newRings(teeth, parts) : newSprockets(teeth, parts);
    if (changed === null) return { ok: false, why: 'impossible' };
    parts = { ...parts, ...changed };
  }
  return isSame(parts, bike) ? { ok: false, why: 'same' } : { ok: true, parts };
}

function endOf(clause: string, group: string): 'front' | 'back' | null {
  const front = FRONT.test(clause);
  const back = BACK.test(clause);
  if (front !== back) return front ? 'front' : 'back';
  if (group.includes('/')) return 'front';
  return /\d\s*(?:[–-]|to)\s*\d/.test(group) ? 'back' : null;
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
