/**
 * What leaves a device as an export comes back whole, twice is once, and the order in which devices meet makes
 * no difference. Broken pieces are named and cost nothing but themselves.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hashJson } from '../../src/core/math/hash.ts';
import { RIDE_SCHEMA } from '../../src/storage/shapes.ts';
import type { ExportFile, SavedRide } from '../../src/storage/types.ts';
import { openWithoutDatabase, rideLike, sample, without } from './given.ts';

const seeded = { seed: 20_261_125, numRuns: 60 };

/** A ride by its number: on every device the same one. */
function ride(number: number): SavedRide {
  const id = `ride-${number}`;
  return {
    ...rideLike(id, { total: number }),
    schema: RIDE_SCHEMA,
    savedAtMs: 1_795_000_000_000 + number * 17,
  };
}

/** What a device may hold. Levels, records and settings of one id differ between devices. */
const device = fc.record({
  rides: fc.uniqueArray(fc.nat(12)).map((numbers) => numbers.map(ride)),
  results: fc
    .uniqueArray(fc.nat(12))
    .map((numbers) => numbers.map((number) => without(ride(number), 'recording', 'level'))),
  levels: fc
    .array(
      fc.record({
        id: fc.constantFrom('loop', 'lane'),
        savedAtMs: fc.nat(3),
        deleted: fc.boolean(),
        title: fc.constantFrom('A', 'B'),
      }),
      { maxLength: 4 },
    )
    .map((levels) =>
      levels.map(({ id, title, ...rest }) => {
        const own = sample('levels') as { level: object };
        return { ...own, ...rest, id, level: { ...own.level, id, title } };
      }),
    ),
  settings: fc.option(
    fc.record({
      schema: fc.constant(1),
      savedAtMs: fc.nat(3),
      version: fc.nat(2).map((n) => n + 1),
      value: fc.jsonValue(),
    }),
  ),
  records: fc.array(
    fc.record({
      kind: fc.constantFrom('clinic', 'plan'),
      id: fc.constantFrom('a', 'b'),
      schema: fc.constantFrom(1, 2),
      savedAtMs: fc.nat(3),
      data: fc.jsonValue(),
    }),
    { maxLength: 4 },
  ),
});

type Device = typeof device extends fc.Arbitrary<infer T> ? T : never;

function fileOf(contents: Device): unknown {
  const rest = { schema: 1, exportedAtMs: 1, ...contents, leftOut: [], complete: true };
  return { ...rest, checksum: hashJson(rest) };
}

/** What is kept after these imports, without the time of the export. */
async function after(...imports: readonly unknown[]): Promise<Omit<ExportFile, 'exportedAtMs' | 'checksum'>> {
  const storage = await openWithoutDatabase();
  for (const one of imports) expect((await storage.importAll(one)).refused).toEqual([]);
  return without(await storage.exportAll(), 'exportedAtMs', 'checksum');
}

describe('devices that meet', () => {
  it('twice is once', async () => {
    await fc.assert(
      fc.asyncProperty(device, async (contents) => {
        const file = fileOf(contents);
        expect(await after(file, file)).toEqual(await after(file));
      }),
      seeded,
    );
  });

  it('the order makes no difference', async () => {
    await fc.assert(
      fc.asyncProperty(device, device, device, async (a, b, c) => {
        const [one, two, three] = [fileOf(a), fileOf(b), fileOf(c)];
        const there = await after(one, two, three);
        expect(await after(three, two, one)).toEqual(there);
        expect(await after(two, one, three, one)).toEqual(there);
      }),
      seeded,
    );
  });

  it('nothing is lost, and a whole ride is worth more than its result', async () => {
    await fc.assert(
      fc.asyncProperty(device, device, async (a, b) => {
        const kept = await after(fileOf(a), fileOf(b));
        const ids = (list: readonly unknown[]): string[] => list.map((one) => (one as { id: string }).id);
        const whole = new Set([...ids(a.rides), ...ids(b.rides)]);
        expect(new Set(ids(kept.rides))).toEqual(whole);
        const alone = [...ids(a.results), ...ids(b.results)].filter((id) => !whole.has(id));
        expect(new Set(ids(kept.results))).toEqual(new Set(alone));
      }),
      seeded,
    );
  });

  it('an export that went through a file gives everything back', async () => {
    await fc.assert(
      fc.asyncProperty(device, async (contents) => {
        const from = await openWithoutDatabase();
        await from.importAll(fileOf(contents));
        const file = await from.exportAll();
        const into = await openWithoutDatabase();
        expect((await into.importAll(JSON.parse(JSON.stringify(file)))).refused).toEqual([]);
        const there = await into.exportAll();
        expect(without(there, 'exportedAtMs', 'checksum')).toEqual(without(file, 'exportedAtMs', 'checksum'));
      }),
      seeded,
    );
  });
});

describe('an import', () => {
  it('reads the sample of an export and counts what is new and what is not', async () => {
    const storage = await openWithoutDatabase();
    const pieces = { refused: [], problem: 'private-window', clubStore: null };
    expect(await storage.importAll(sample('export'))).toEqual({
      added: 0,
      already: 0,
      unsaved: 6,
      ...pieces,
    });
    expect(await storage.importAll(sample('export'))).toEqual({
      added: 0,
      already: 6,
      unsaved: 0,
      ...pieces,
    });
    expect(await storage.listRides()).toHaveLength(3);
  });

  it('that was changed, once a person said so, names broken pieces and gives the good ones', async () => {
    const file = sample('export') as { rides: object[]; levels: unknown[]; records: unknown[] };
    const [first, second] = file.rides;
    const storage = await openWithoutDatabase();
    const changed = {
      ...file,
      rides: [first, { ...second, total: 101 }, { ...first, id: 'later', schema: 9 }],
      levels: 'none',
      records: [...file.records, 7],
    };
    const report = await storage.importAll(changed, { evenIfChanged: true });
    const id = (second as { id: string }).id;
    expect(report.refused).toEqual([
      { code: 'checksum' },
      { id: 'levels', code: 'corrupt' },
      { id, code: 'corrupt' },
      { id: 'later', code: 'newer-version' },
      { code: 'corrupt' },
    ]);
    expect(report.unsaved).toBe(4);
    expect(await storage.listRides()).toHaveLength(2);
  });

  it('of a newer version is refused whole', async () => {
    const storage = await openWithoutDatabase();
    const report = await storage.importAll({ ...(sample('export') as object), schema: 2 });
    expect(report).toEqual({
      added: 0,
      already: 0,
      unsaved: 0,
      refused: [{ code: 'newer-version' }],
      problem: null,
      clubStore: null,
    });
    expect(await storage.listRides()).toEqual([]);
  });

  it.each([[null], [7], ['text'], [[]], [{}], [{ schema: -1 }]])(
    'of %j is refused and changes nothing',
    async (value) => {
      const storage = await openWithoutDatabase();
      expect((await storage.importAll(value)).refused).toEqual([{ code: 'corrupt' }]);
      expect((await storage.exportAll()).rides).toEqual([]);
    },
  );

  it('never puts another ride in the place of one that is there', async () => {
    const storage = await openWithoutDatabase();
    await storage.saveRide(rideLike('one', { total: 10 }));
    const other = { schema: 1, rides: [{ ...ride(1), id: 'one', total: 99 }] };
    const report = await storage.importAll(other, { evenIfChanged: true });
    expect(report.refused).toContainEqual({ id: 'one', code: 'differs' });
    expect((await storage.listRides()).map(({ total }) => total)).toEqual([10]);
  });

  it('survives any JSON', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue(), fc.array(fc.jsonValue()), async (value, list) => {
        const storage = await openWithoutDatabase();
        const file = { schema: 1, rides: list, levels: value, settings: value, records: list };
        const report = await storage.importAll(file, { evenIfChanged: true });
        expect(report.added + report.already).toBe(0);
      }),
      seeded,
    );
  });
});
