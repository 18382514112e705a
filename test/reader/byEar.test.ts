/**
 * Rides by ear with a real screen reader and its settings as they come (Orca and Firefox): whoever obeys what is spoken
 * and has nothing else passes, is told in time and nothing twice, and hears afterwards where they are and what came of it.
 */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { siteHeaders } from '../../.ci/policy.mjs';
import { serveFolder, type Server } from '../browser/server.ts';
import { builtSiteFolder } from '../browser/site.ts';
import { type HeardRide, ridesByEar } from './heardRide.ts';
import { missingReader, readAloud } from './screenReader.ts';

const missing = missingReader();

describe.skipIf(missing !== null)(
  `a ride by ear with a screen reader${missing === null ? '' : `: ${missing}`}`,
  () => {
    let server: Server;
    let rides: readonly HeardRide[] = [];

    beforeAll(async () => {
      server = await serveFolder(builtSiteFolder, '/', siteHeaders);
      const site = await readAloud(server.url);
      try {
        rides = await ridesByEar(site);
      } finally {
        await site.close();
      }
    });

    afterAll(async () => {
      await server?.close();
    });

    it('passes the first level and the announced pitch', () => {
      expect(rides.map(({ passed, total }) => [passed, total >= 70])).toEqual([
        [true, true],
        [true, true],
      ]);
    });

    it('begins to speak soon, is never late and says nothing twice', () => {
      for (const { lines, twice } of rides) {
        expect(lines.length).toBeGreaterThan(3);
        expect(lines.filter(({ lateS }) => lateS > 1.5)).toEqual([]);
        expect(twice).toEqual([]);
      }
    });

    it('is told first where it is, then what is asked, then what came of it', () => {
      for (const { after } of rides) {
        const of = (wanted: RegExp): number => after.findIndex((text) => wanted.test(text));
        expect(after[0]).toMatch(/^Your ride/);
        expect(of(/your shifting was/)).toBeGreaterThan(0);
        expect(of(/You made it\. \w+/)).toBeGreaterThan(of(/your shifting was/));
      }
    });
  },
);
