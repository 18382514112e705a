/** The sentences about tooth counts and tyres that no bike has. */
import type { BikeCode, BikeProblem } from '../core/model/bikeInput.ts';

type Values = BikeProblem['values'];

const sized =
  (part: string) =>
  ({ teeth, leastTeeth, mostTeeth }: Values): string =>
    `A ${part} of ${teeth} teeth is not made. Usual ones have ${leastTeeth} to ${mostTeeth}; count again or look for the number stamped on it.`;

const BIKE: Readonly<Record<BikeCode, (values: Values) => string>> = {
  'rings-unreadable': () => 'Write the teeth of the chainrings, for example 50/34 or 32.',
  'too-many-rings': ({ count }) =>
    `${count} chainrings are more than a bike has. Write one to three numbers, like 48/36/26.`,
  'ring-size': sized('chainring'),
  'rings-order': () =>
    'The chainrings are out of order. Write them from big to small or from small to big, each only once.',
  'sprockets-unreadable': () =>
    'Write the teeth of the sprockets, for example 11-32, or each one: 11 13 15 18 21 24 28 32.',
  'sprocket-size': sized('sprocket'),
  'too-many-sprockets': ({ count, most }) =>
    `${count} sprockets are more than a cassette has. Write at most ${most}.`,
  'sprocket-twice': () => 'One number stands twice. Every sprocket of a cassette is different.',
  'sprockets-order': () => 'The sprockets are out of order. Write them from small to big.',
  'sprocket-count': ({ least, most }) => `Say how many sprockets there are, from ${least} to ${most}.`,
  'too-narrow': ({ count, leastTeeth, mostTeeth }) =>
    `${count} sprockets do not fit between ${leastTeeth} and ${mostTeeth} teeth. Write each one, or fewer.`,
  'tyre-unreadable': () => 'Write the ISO mark from the side of the tyre, for example 28-622 or 47-406.',
  'tyre-size': ({ tyreWidthMm, beadSeatMm }) =>
    `${tyreWidthMm}-${beadSeatMm} is no bicycle tyre. The first number is the width (18 to 125 mm), the second the rim (200 to 700 mm).`,
};

/** Why what was typed is no part of a bike, as a sentence. */
export function bikeSentence({ code, values }: BikeProblem): string {
  return BIKE[code](values);
}
