/** What is said of a whole ride, in the units of whoever reads it. */
import { expect, it } from 'vitest';
import { habitsText } from '../../../src/features/road/allRides.tsx';
import { createFormat } from '../../../src/words/format.ts';

it('counts changes of gear a kilometre, or a mile for who reads miles (1.609344 km, exact)', () => {
  expect(habitsText(5, null, createFormat('metric', 'en'))).toBe('5.0 changes of gear a km.');
  expect(habitsText(5, null, createFormat('imperial', 'en'))).toBe('8.0 changes of gear a mile.');
});
