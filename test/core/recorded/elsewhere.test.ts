/**
 * Nothing of place or time of day in anything that is kept or sent: the same ride at another place, on another day and at
 * another hour of the same month leaves the very same bytes.
 */
import { expect, it } from 'vitest';
import { readGpx } from '../../../src/core/gpx/file.ts';
import { hardestStretch } from '../../../src/core/gpx/hardest.ts';
import { levelFromRoad } from '../../../src/core/gpx/level.ts';
import { recordedRide } from '../../../src/core/gpx/recorded.ts';
import { importRoad } from '../../../src/core/gpx/road.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import { levelOfPitch } from '../../../src/core/recorded/again.ts';
import { keptRide } from '../../../src/core/recorded/kept.ts';
import { roadRide } from '../../../src/core/recorded/rideFigures.ts';
import { levelToBytes, packBytes } from '../../../src/core/transfer/share.ts';
import { NAMED_HABITS } from '../../../src/core/virtual/riders.ts';
import { madeRide, roadOfPitches } from './made.ts';

const who = { bike: bikeById('trekking-3x8')!, rider: riderById('adult-weekly')!, teethKnown: true };
const words = { id: 'again', title: 'Again', sentence: 'Once more.' };

/** Everything that leaves a recorded ride: what is kept of it, levels of it, their link, what was ridden beside them. */
function leftOf(text: string) {
  const read = readGpx(new TextEncoder().encode(text), (label) => new TextDecoder(label));
  const made = read.ok ? importRoad(read.file) : read;
  if (!read.ok || !made.ok) throw new Error('no road');
  const stretch = hardestStretch(made.road, 1_000);
  const level = levelFromRoad(made.road, { ...stretch, title: 'A road', sentence: 'Up.' });
  const ridden = roadRide(made.road, read.file.month, who);
  if (!level.ok || !ridden.ok) throw new Error('no level, or no ride');
  const pitch = ridden.figures.pitches[0];
  const again = pitch === undefined ? null : levelOfPitch(made.road, ridden.seconds, pitch, words);
  const samples = (recordedRide(made.road, stretch) ?? []).map((one) =>
    Object.values(one).map((value: number | null) => value?.toFixed(3)),
  );
  return {
    level: JSON.stringify(level.level),
    link: packBytes(levelToBytes(level.level), 'plain'),
    kept: JSON.stringify(keptRide(ridden.figures, who.bike, true)),
    again: JSON.stringify(again),
    samples: JSON.stringify(samples),
  };
}

it('the same ride elsewhere, on another day and at another hour leaves the very same bytes', () => {
  const { text } = madeRide(roadOfPitches(4, 5), 'trekking-3x8', 'adult-weekly', NAMED_HABITS.late, 5);
  const moved = text
    .replace(/lon="([^"]+)"/g, (_, lon: string) => `lon="${(Number(lon) + 41).toFixed(7)}"`)
    .replace(/<time>([^<]+)<\/time>/g, (_, time: string) => {
      const shiftedMs = Date.parse(time) - (3 * 24 + 5.3) * 3_600_000;
      return `<time>${new Date(shiftedMs).toISOString()}</time>`;
    })
    .replace('Sunday at the lake', 'Thursday by the mill');
  expect(moved).not.toBe(text);
  const [here, there] = [leftOf(text), leftOf(moved)];
  expect(there).toEqual(here);
  // And what is left is not nothing.
  for (const one of Object.values(here)) expect(one.length).toBeGreaterThan(100);
});
