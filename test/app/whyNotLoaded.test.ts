/** Why a ride could not be loaded: only what did not come is blamed on the connection. */
import { expect, it } from 'vitest';
import { whyNotLoaded } from '../../src/app/ride/views.ts';

it.each([
  // Chromium 156, Firefox 140 and Safari 18, from memory; vite 8 for styles.
  ['not-fetched', new TypeError('Failed to fetch dynamically imported module: road.js')],
  ['not-fetched', new TypeError('error loading dynamically imported module: road.js')],
  ['not-fetched', new TypeError('Importing a module script failed.')],
  ['not-fetched', new Error('Unable to preload CSS for /assets/ride.css')],
  ['not-fetched', new TypeError("'text/html' is not a valid JavaScript MIME type.")],
  ['broken', new TypeError("Cannot read properties of null (reading 'canvas')")],
  ['broken', new Error('no picture')],
  ['broken', new DOMException('too big', 'InvalidStateError')],
  ['broken', undefined],
] as const)('%s: %s', (why, error) => {
  expect(whyNotLoaded(error)).toBe(why);
});
