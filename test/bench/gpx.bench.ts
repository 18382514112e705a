/** How long a GPX file takes: reading alone, and all the way to a road. Sixty thousand points, as on a very long ride. */
import { bench, describe } from 'vitest';
import { readGpx } from '../../src/core/gpx/file.ts';
import { importRoad } from '../../src/core/gpx/road.ts';
import { gpxText, northward, openDecoder, trackText } from '../core/gpx/files.ts';

const points = northward(60_000, 1.5, (x) => 300 + 20 * Math.sin(x / 160)).map((point, i) => ({
  ...point,
  time: `2020-01-01T${String(Math.floor(i / 3_600) % 24).padStart(2, '0')}:${String(Math.floor(i / 60) % 60).padStart(2, '0')}:${String(i % 60).padStart(2, '0')}Z`,
}));
const bytes = new TextEncoder().encode(gpxText(trackText(points)));
const read = readGpx(bytes, openDecoder);
if (!read.ok) throw new Error('the made-up file can be read');

describe(`60,000 points in ${(bytes.length / 1e6).toFixed(1)} MB`, () => {
  bench('reading the file', () => {
    readGpx(bytes, openDecoder);
  });

  bench('making the road', () => {
    importRoad(read.file);
  });
});
