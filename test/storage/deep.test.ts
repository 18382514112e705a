/**
 * Things whose parts lie too deep inside each other are refused at every door of the storage, and one that was let
 * in by an earlier version neither breaks a file of everything nor is lost without a word.
 */
import { describe, expect, it } from 'vitest';
import { LIMITS } from '../../src/core/math/limits.ts';
import { buildExport } from '../../src/storage/exchange.ts';
import { READERS } from '../../src/storage/shapes.ts';
import type { KeptRecord, StoreName } from '../../src/storage/types.ts';
import type { Contents } from '../../src/storage/vault.ts';
import { openWithoutDatabase, rideLike, sample, simpleStore } from './given.ts';

const most = LIMITS.copy.deep.most;

/** Lists in lists; `count` of them. */
function nest(count: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < count; i += 1) value = [value];
  return value;
}

const record = (data: unknown): KeptRecord => ({ ...(sample('records') as KeptRecord), data });
const NOTHING: Contents = {
  rides: new Map(),
  results: new Map(),
  levels: new Map(),
  settings: new Map(),
  records: new Map(),
};

describe('what lies too deep inside itself', () => {
  it('is refused by the reader of records and settings, what is just deep enough is not', () => {
    // The record itself is one deep.
    expect(READERS.records(record(nest(most - 1))).ok).toBe(true);
    for (const deep of [most, 3_000, 100_000]) {
      expect(READERS.records(record(nest(deep)))).toEqual({ ok: false, code: 'corrupt' });
      const settings = { ...(sample('settings') as object), value: nest(deep) };
      expect(READERS.settings(settings)).toEqual({ ok: false, code: 'corrupt' });
    }
  });

  it('is not kept, and keeping it does not throw', async () => {
    const storage = await openWithoutDatabase();
    const { kind, id, schema } = record(null);
    expect((await storage.putRecord({ kind, id, schema, data: nest(50_000) })).saved).toBe(false);
    expect((await storage.saveSettings(nest(50_000), 1)).saved).toBe(false);
    expect((await storage.exportAll()).records).toEqual([]);
  });

  it('is named and left out of a file of everything when it is already there', () => {
    const newer = { ...rideLike('ride-9'), schema: 99, savedAtMs: 1, recording: nest(20_000) };
    const good = record({ fine: true });
    const contents: Contents = {
      ...NOTHING,
      rides: new Map([['ride-9', newer]]),
      records: new Map<string, unknown>([
        ['clinic bad', record(nest(3_000))],
        ['clinic good', good],
      ]),
    };
    const file = buildExport(contents, 1, true);
    expect(file.records).toEqual([good]);
    expect(file.leftOut).toEqual<typeof file.leftOut>([
      { store: 'rides' satisfies StoreName, id: 'ride-9', code: 'corrupt' },
      { store: 'records', id: 'clinic bad', code: 'corrupt' },
    ]);
    expect(() => JSON.stringify(file)).not.toThrow();
  });

  it('costs a copy that is taken back nothing but itself', async () => {
    const storage = await openWithoutDatabase();
    const rest = { schema: 1, exportedAtMs: 1, records: [record({ fine: true }), record(nest(20_000))] };
    const report = await storage.importAll({ ...rest, checksum: 'gone' }, { evenIfChanged: true });
    expect(report.refused.map(({ code }) => code)).toContain('corrupt');
    expect(report.added + report.unsaved).toBe(1);
  });

  it('in the small copy is put aside, and the small copy goes on', async () => {
    const store = simpleStore();
    const deep = `${'['.repeat(20_000)}${']'.repeat(20_000)}`;
    store.setItem(
      'before-the-hill.small-copy',
      `{"schema":1,"results":[],"newest":null,"settings":${deep},"checksum":"x"}`,
    );
    const storage = await openWithoutDatabase(store);
    await storage.saveRide(rideLike('ride-1'));
    expect(store.getItem('before-the-hill.small-copy')).toContain('ride-1');
  });
});
