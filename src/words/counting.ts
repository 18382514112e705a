/**
 * Small English phrases round numbers, shared by the sentences of the debrief. Another language brings its own.
 */

const COUNTS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
const ORDERS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/** A small count as a word, a bigger one in digits. */
export const count = (n: number): string => COUNTS[n] ?? String(n);
/** "one gear", "two gears". */
export const gears = (n: number): string => (n === 1 ? 'one gear' : `${count(n)} gears`);
/** "one second", "four seconds". */
export const seconds = (n: number): string => (n === 1 ? 'one second' : `${count(n)} seconds`);
/** "once", "twice", "four times". */
export const times = (n: number): string => (n === 1 ? 'once' : n === 2 ? 'twice' : `${count(n)} times`);
/** "the first pitch", or "the pitch" where there is only one. */
export const pitch = (index: number, all: number): string =>
  all === 1 ? 'the pitch' : index < ORDERS.length ? `the ${ORDERS[index]} pitch` : `pitch ${index + 1}`;
/** With a capital at its beginning. */
export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A place near a foot: `metres` is written, `side` says on which side. */
export interface FootPlace {
  readonly metres: string;
  readonly side: 'before' | 'at' | 'after';
}

/** "12 m before the foot". */
export const near = ({ metres, side }: FootPlace): string =>
  side === 'at' ? 'right at the foot' : `${metres} ${side} the foot`;
