/** Reading GPX files through the desk and the client: progress, cancel, questions, and nothing personal that comes out. */
import { describe, expect, it } from 'vitest';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { createGpxImporter } from '../../src/worker/gpxClient.ts';
import { createGpxDesk } from '../../src/worker/gpxDesk.ts';
import { workplaceOf } from './nearWorker.ts';
import { gpxText, northward, trackText } from '../core/gpx/files.ts';

const points = northward(1_001, 10, (x) => 300 + 20 * Math.sin(x / 160)).map((point, i) => ({
  ...point,
  time: new Date(Date.UTC(2021, 4, 16, 9, 0, i * 2)).toISOString(),
  inside: `<extensions><cad>${71 + (i % 2)}</cad></extensions>`,
}));
const file = (text: string): Blob => new Blob([text]);
const ride = file(gpxText(`<metadata><name>Zora</name></metadata>${trackText(points)}`));
const ignore = (): void => undefined;
/** No worker here: everything happens in this thread. */
const importer = () => createGpxImporter(workplaceOf(createGpxDesk));

describe('reading a recorded road', () => {
  it('tells how far it is, then sums the road up without saying where it is', async () => {
    const shares: number[] = [];
    const outcome = await importer().read(ride, (share) => shares.push(share)).outcome;
    expect(shares.length).toBeGreaterThan(1);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    if (outcome.kind !== 'road') throw new Error('a road was expected');
    expect(outcome.road.lengthM).toBeCloseTo(10_000, -2);
    expect(outcome.road).toMatchObject({ timed: true, pointCount: 1_001 });
    const said = JSON.stringify(outcome);
    const personal = ['Zora', '2021-05', 'cadence', ...points.slice(1).map(({ lat }) => `${lat}`)];
    expect(personal.filter((value) => said.includes(value))).toEqual([]);
  });

  it('cuts a level of heights and distances, and tells of speed and cadence only when asked', async () => {
    const desk = importer();
    await desk.read(ride, ignore).outcome;
    const made = await desk.cut({ fromM: 1_000, toM: 3_000, title: 'T', sentence: 'S', id: 'mine' });
    if (!made.ok) throw new Error('a level was expected');
    expect(courseOfLevel(made.level).lengthM).toBe(2_000);
    expect(made.level.pieces.map(({ kind }) => kind)).toEqual(['recorded']);
    const samples = await desk.recorded({ fromM: 1_000, toM: 3_000 });
    expect(samples?.[0]?.cadenceRpm).toBe(71);
    expect(samples?.[5]?.speedMps).toBeCloseTo(5, 1);
  });

  it('answers a cancel at once and keeps nothing', async () => {
    const desk = importer();
    const shares: number[] = [];
    const reading = desk.read(ride, (share) => shares.push(share));
    reading.cancel();
    expect(await reading.outcome).toEqual({ kind: 'cancelled' });
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(shares).toEqual([]);
    const made = await desk.cut({ fromM: 0, toM: 1_000, title: 'T', sentence: 'S' });
    expect(made.ok ? [] : made.problems.map(({ code }) => code)).toEqual(['no-road']);
    expect(await desk.recorded({ fromM: 0, toM: 1_000 })).toBeNull();
  });

  it('a newer file takes the place of an older one', async () => {
    const desk = importer();
    const first = desk.read(ride, ignore);
    const short = northward(21, 10, (x) => 100 + x * 0.02);
    const second = desk.read(file(gpxText(trackText(short))), ignore);
    expect((await first.outcome).kind).toBe('cancelled');
    expect(await second.outcome).toMatchObject({ kind: 'road', road: { pointCount: 21, timed: false } });
  });

  it('asks about two tracks and goes by the answer', async () => {
    const desk = importer();
    const far = northward(101, 10, (x) => 300 + 0.05 * x, { lat: 47, lon: 10 });
    const two = file(gpxText(trackText(points.slice(0, 60)) + trackText(far)));
    const outcome = await desk.read(two, ignore).outcome;
    expect(outcome).toMatchObject({ kind: 'road', road: { questions: [{ path: 'tracks', taken: '2' }] } });
    const answered = await desk.answer({ tracks: 1 });
    expect(answered).toMatchObject({ kind: 'road', road: { questions: [] } });
    if (answered.kind === 'road') expect(answered.road.lengthM).toBeLessThan(600);
  });

  it('says in a sentence why there is no road', async () => {
    const outcome = await importer().read(file('<html>sign in</html>'), ignore).outcome;
    expect(outcome).toMatchObject({ kind: 'refused', problems: [{ code: 'not-gpx' }] });
    const empty = await importer().read(file(''), ignore).outcome;
    expect(empty).toMatchObject({ kind: 'refused', problems: [{ code: 'empty' }] });
  });
});
