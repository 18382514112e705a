/**
 * What never travels in a copy of everything: where a club's own store is, its password, and how far this device has
 * come with it. And a copy that was changed after it was saved: nothing of it gets in before a person says so.
 */
import { describe, expect, it } from 'vitest';
import { hashJson } from '../../src/core/math/hash.ts';
import type { ExportFile } from '../../src/storage/types.ts';
import { openWithoutDatabase, sample, without } from './given.ts';

const STRANGER = { url: 'https://stranger.example', database: 'rides', name: 'club', password: 'hill-42' };
const anything = { schema: 1, steps: [], read: (value: unknown) => value };
const storeRecord = (data: unknown, kind = 'clinic-store') => ({
  kind,
  id: 'one',
  schema: 1,
  savedAtMs: 9_000_000_000_000,
  data,
});

/** The sample of a copy with more records, sealed as a copy is. */
function copyWith(...records: readonly unknown[]): ExportFile {
  const whole = sample('export') as ExportFile;
  const rest = { ...without(whole, 'checksum'), records: [...whole.records, ...records] };
  return { ...rest, checksum: hashJson(rest) };
}

describe('a club’s own store in a copy', () => {
  it('is never taken over, only named; its password is read by nobody', async () => {
    const storage = await openWithoutDatabase();
    const progress = {
      schema: 1,
      store: 'https://stranger.example/rides',
      there: [],
      refused: [],
      since: {},
    };
    const report = await storage.importAll(
      copyWith(storeRecord(STRANGER), storeRecord(progress, 'clinic-store-progress')),
    );
    expect(await storage.listRecords({ kind: 'clinic-store', ...anything })).toEqual([]);
    expect(await storage.listRecords({ kind: 'clinic-store-progress', ...anything })).toEqual([]);
    expect(report).toMatchObject({ unsaved: 6, refused: [] });
    expect(report.clubStore).toEqual({ ...STRANGER, password: '' });
  });

  it.each([
    ['no address', { ...STRANGER, url: 'javascript:alert(1)' }],
    ['a name inside it', { ...STRANGER, url: 'https://a:b@stranger.example' }],
    ['another shape', { ...STRANGER, more: 1 }],
    ['nothing', null],
  ])('with %s is not even named', async (_name, data) => {
    const report = await (await openWithoutDatabase()).importAll(copyWith(storeRecord(data)));
    expect(report.clubStore).toBeNull();
  });

  it('does not go into a copy, and neither does its password', async () => {
    const storage = await openWithoutDatabase();
    await storage.putRecord({ kind: 'clinic-store', id: 'one', schema: 1, data: STRANGER });
    await storage.putRecord({ kind: 'clinic-store-progress', id: 'one', schema: 1, data: { there: ['x'] } });
    await storage.putRecord({ kind: 'clinic-plan', id: 'tuesday', schema: 1, data: { a: 1 } });
    const file = await storage.exportAll();
    expect(file.records).toMatchObject([{ kind: 'clinic-plan' }]);
    expect(JSON.stringify(file)).not.toMatch(/hill-42|stranger/);
  });
});

describe('a copy that was changed after it was saved', () => {
  const changed = (): unknown => ({ ...(sample('export') as object), exportedAtMs: 7 });

  it('changes nothing here, and says so', async () => {
    const storage = await openWithoutDatabase();
    expect(await storage.importAll(changed())).toEqual({
      added: 0,
      already: 0,
      unsaved: 0,
      refused: [{ code: 'checksum' }],
      problem: null,
      clubStore: null,
    });
    expect((await storage.exportAll()).rides).toEqual([]);
    expect((await storage.exportAll()).records).toEqual([]);
  });

  it('gives what can be read once a person has said so, so that nothing is lost', async () => {
    const storage = await openWithoutDatabase();
    const report = await storage.importAll(changed(), { evenIfChanged: true });
    expect(report).toMatchObject({ unsaved: 6, refused: [{ code: 'checksum' }] });
    expect(await storage.listRides()).toHaveLength(3);
  });
});
