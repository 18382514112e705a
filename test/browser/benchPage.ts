/** The level bench as the browser tests use it: a made-up ride, what is kept, rides to the end. No expectation of the bench lives here. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { setSpeed, stored, view } from './gamePage.ts';
import { gpxText, northward, trackText } from '../core/gpx/files.ts';

const SPEED = 12;

/** A ride with everything personal a device writes. */
export const points = northward(601, 10, (x) => 300 + 12 * Math.sin(x / 120)).map((point, i) => ({
  ...point,
  time: new Date(Date.UTC(2021, 4, 16, 9, 0, i * 2)).toISOString(),
  inside: `<extensions><hr>143</hr><cad>${i % 10 === 0 ? 72 : 71}</cad></extensions>`,
}));
export const PERSONAL = ['Zora', '46.', '10.0', '2021-05', '"hr"', '143', '"cad"', 'lat', 'lon'];
export const rideText = gpxText(`<metadata><name>Zora at home</name></metadata>${trackText(points)}`);
export const gpx = (text: string, name = 'zora.gpx') => ({
  name,
  mimeType: 'application/gpx+xml',
  buffer: Buffer.from(text),
});

/** Rides of this page are faster than life. */
export async function hurry(page: Page): Promise<void> {
  await setSpeed(page, SPEED);
}

/** Rides to the end and waits until the ride is kept; answers with the fingerprint of its road. */
export async function rideToTheEnd(page: Page): Promise<unknown> {
  await expect.poll(() => view(page), { timeout: 90_000, interval: 100 }).toBe('debrief');
  await expect.poll(() => page.locator('[data-saved="saved"]').count()).toBe(1);
  return (await stored(page, 'rides')).at(-1)?.['levelHash'];
}
