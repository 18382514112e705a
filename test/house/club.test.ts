/**
 * The store of `npm run club`: what it says is kept lies on the disk, whatever happens; nothing is there twice; who
 * has no password gets nothing; and the settings it prints are those the game reads.
 */
import { X509Certificate } from 'node:crypto';
import {
  appendFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { request as secureRequest } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { certificateOf, makeCertificate } from '../../.ci/club/certificate.mjs';
import { openDatabase } from '../../.ci/club/database.mjs';
import { memoryJournal, openJournal } from '../../.ci/club/journal.mjs';
import { clubSettings, settingsLink, takeFolder } from '../../.ci/club/settings.mjs';
import { openStore, storeAnswers } from '../../.ci/club/store.mjs';
import { listen, siteServer } from '../../.ci/serve.mjs';
import { readStoreLink } from '../../src/features/handover/storeCode.ts';

const SETTINGS = { database: 'rides-abcde', name: 'club', password: 'abcd-efgh-jkmn-pqrs' };
const FILE = `${SETTINGS.database}.log`;
let folder: string;
const stops: (() => void)[] = [];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'club-'));
});

afterEach(() => {
  for (const stop of stops.splice(0)) stop();
  rmSync(folder, { recursive: true, force: true });
});

const docs = (from: number, count: number) =>
  Array.from({ length: count }, (_, i) => ({
    _id: `ride:${from + i}`,
    record: { seq: from + i, name: 'ü ☃ 𝄞\n' },
  }));

type Store = Awaited<ReturnType<typeof openStore>>;
const openIt = async (): Promise<Store> => {
  const store = await openStore(folder, SETTINGS);
  stops.push(() => void store.close().catch(() => undefined));
  return store;
};
const bulk = (store: Pick<Store, 'database'>, list: readonly object[]) =>
  store.database.ask('POST', `/${SETTINGS.database}/_bulk_docs`, JSON.stringify({ docs: list }));
const changes = (store: Pick<Store, 'database'>, since = 0) =>
  store.database.ask('GET', `/${SETTINGS.database}/_changes?since=${since}&include_docs=true`, '');
const idsOf = (store: Store): unknown[] => store.database.documents().map((doc) => doc['_id']);

describe('what was said to be kept', () => {
  it('is there after a restart, in the same order and under the same numbers', async () => {
    const store = await openIt();
    await bulk(store, docs(1, 3));
    await bulk(store, docs(3, 3));
    const before = await changes(store);
    await store.close();
    const again = await openIt();
    expect(await changes(again)).toEqual(before);
    expect(again.damaged).toBe(0);
    await bulk(again, docs(6, 1));
    expect(await changes(again, 5)).toMatchObject({
      body: { last_seq: 6, results: [{ id: 'ride:6', seq: 6 }] },
    });
  });

  it('is there whole wherever the file is cut; half a line is cut off and its place used again', async () => {
    const store = await openIt();
    await bulk(store, docs(1, 4));
    await store.close();
    const whole = readFileSync(join(folder, FILE));
    const ends = [...whole.keys()].filter((i) => whole[i] === 0x0a).map((i) => i + 1);
    for (const cut of [1, 20, ends[0]! - 1, ends[0]!, ends[0]! + 23, ends[2]! + 40, ends[3]! - 1]) {
      writeFileSync(join(folder, FILE), whole.subarray(0, cut));
      const cutStore = await openIt();
      const left = ends.filter((end) => end <= cut).length;
      expect([cut, idsOf(cutStore)]).toEqual([cut, docs(1, left).map(({ _id }) => _id)]);
      await bulk(cutStore, docs(1, 4));
      await cutStore.close();
      const after = await openIt();
      expect([idsOf(after).length, after.damaged]).toEqual([4, 0]);
      await after.close();
    }
  });

  it('stays though a line before it is damaged; that one is left out and counted, and can be sent again', async () => {
    const store = await openIt();
    await bulk(store, docs(1, 3));
    await store.close();
    const text = readFileSync(join(folder, FILE), 'utf8').replace('"seq":2,"name"', '"seq":7,"name"');
    writeFileSync(join(folder, FILE), text);
    const damaged = await openIt();
    expect([idsOf(damaged), damaged.damaged]).toEqual([['ride:1', 'ride:3'], 1]);
    await bulk(damaged, docs(1, 3));
    expect(idsOf(damaged)).toEqual(['ride:1', 'ride:2', 'ride:3']);
    await damaged.close();
    expect(idsOf(await openIt())).toEqual(['ride:1', 'ride:2', 'ride:3']);
  });

  it('is not there twice where a line was left behind by a write that failed', async () => {
    const store = await openIt();
    await bulk(store, docs(1, 2));
    await store.close();
    const lines = readFileSync(join(folder, FILE), 'utf8');
    appendFileSync(join(folder, FILE), lines);
    const again = await openIt();
    expect(await changes(again)).toMatchObject({ body: { last_seq: 2 } });
    expect(idsOf(again)).toEqual(['ride:1', 'ride:2']);
  });
});

describe('what is not on the disk yet', () => {
  it('is said to be there to nobody, also not to a second sender of the same', async () => {
    const journal = memoryJournal();
    let arrive: () => void = () => undefined;
    const slow = {
      ...journal,
      append: async (texts: readonly string[]) => {
        await new Promise<void>((resolve) => {
          arrive = resolve;
        });
        return journal.append(texts);
      },
    };
    const database = openDatabase(SETTINGS.database, slow);
    const told: unknown[] = [];
    for (const [i, list] of [docs(1, 2), docs(1, 2), docs(2, 2)].entries())
      void bulk({ database }, list).then(({ body }) => told.push([i, body]));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect([told, database.size()]).toEqual([[], 0]);
    arrive();
    await expect.poll(() => told.length).toBe(1);
    await new Promise((resolve) => setTimeout(resolve, 20));
    arrive();
    await expect.poll(() => told.length).toBe(3);
    expect(database.size()).toBe(3);
    expect(told[1]).toMatchObject([1, [{ error: 'conflict' }, { error: 'conflict' }]]);
    expect(told[2]).toMatchObject([2, [{ error: 'conflict' }, { ok: true }]]);
  });

  it('does not count where the disk is full, and is taken once there is room', async () => {
    const journal = memoryJournal();
    let full = true;
    const database = openDatabase(SETTINGS.database, {
      ...journal,
      append: async (texts: readonly string[]) => {
        if (full) throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
        return journal.append(texts);
      },
    });
    await expect(bulk({ database }, docs(1, 2))).rejects.toThrow('no space');
    expect(database.size()).toBe(0);
    full = false;
    expect(await bulk({ database }, docs(1, 2))).toMatchObject({
      status: 201,
      body: [{ ok: true }, { ok: true }],
    });
  });

  it('leaves nothing behind in the file where the write broke off', async () => {
    const file = join(folder, 'some.log');
    const { journal } = await openJournal(file, () => undefined);
    await journal.append(['one']);
    const size = statSync(file).size;
    await journal.close();
    await expect(journal.append(['two'])).rejects.toThrow();
    expect(statSync(file).size).toBe(size);
  });
});

describe('over the network', () => {
  const AUTHORIZATION = `Basic ${Buffer.from(`${SETTINGS.name}:${SETTINGS.password}`).toString('base64')}`;
  const files = new Map([['index.html', '<!doctype html><title>Page</title>']]);

  async function start(store: Store, tls?: { key: string; cert: string }): Promise<number> {
    const server = siteServer(files, () => new Set(['127.0.0.1', 'localhost']), {
      beside: store.answer,
      ...(tls === undefined ? {} : { tls }),
    });
    await listen(server, 0, '127.0.0.1');
    stops.push(() => {
      server.close();
      server.closeAllConnections();
    });
    return (server.address() as AddressInfo).port;
  }

  it('game and store answer on one port; without the password there is nothing', async () => {
    const port = await start(await openIt());
    const at = (path: string): string => `http://127.0.0.1:${port}${path}`;
    expect(await (await fetch(at('/'))).text()).toContain('<title>Page</title>');
    for (const authorization of [
      undefined,
      'Basic ',
      AUTHORIZATION.slice(0, -2),
      `${AUTHORIZATION}x`,
      `Basic ${Buffer.from('club:abcd-efgh-jkmn-pqrt').toString('base64')}`,
    ]) {
      const headers = authorization === undefined ? {} : { authorization };
      for (const [method, path] of [
        ['GET', '/_all_docs'],
        ['GET', '/_changes'],
        ['GET', ''],
        ['POST', '/_bulk_docs'],
        ['PUT', '/a'],
      ] as const) {
        const body = method === 'GET' ? {} : { body: '{"docs":[]}' };
        const answer = await fetch(at(`/${SETTINGS.database}${path}`), { method, headers, ...body });
        expect([path, answer.status]).toEqual([path, 401]);
        // No window of the browser's own that asks for a password.
        expect(answer.headers.get('www-authenticate')).toBeNull();
      }
    }
    const good = await fetch(at(`/${SETTINGS.database}/a`), {
      method: 'PUT',
      body: '{"record":1}',
      headers: { authorization: AUTHORIZATION },
    });
    expect(good.status).toBe(201);
    expect((await fetch(at('/other/_all_docs'), { headers: { authorization: AUTHORIZATION } })).status).toBe(
      404,
    );
    for (const odd of ['/%', '/a/%ff/b', '/..%2f..', '/_all_docs?startkey=%22', '/_changes?since=x&limit=-1'])
      expect(
        (await fetch(at(`/${SETTINGS.database}${odd}`), { headers: { authorization: AUTHORIZATION } }))
          .status,
      ).toBeLessThan(502);
  });

  it('more than one piece can be is not taken in, and the next sender is answered', async () => {
    const store = await openIt();
    const port = await start(store);
    const put = (name: string, length: number) =>
      fetch(`http://127.0.0.1:${port}/${SETTINGS.database}/${name}`, {
        method: 'PUT',
        body: JSON.stringify({ record: 'x'.repeat(length) }),
        headers: { authorization: AUTHORIZATION },
      }).then(
        ({ status }) => status,
        // The connection may be gone before all was sent.
        () => 413,
      );
    expect(await put('big', 9_000_000)).toBe(413);
    expect(await put('long', 3_000_000)).toBe(201);
    expect(idsOf(store)).toEqual(['long']);
  });

  it.each([
    ['ENOSPC', 507],
    ['EDQUOT', 507],
    ['EIO', 500],
  ])('a disk that says %s is told as %i', async (code, status) => {
    const fails = async (): Promise<never> => {
      throw Object.assign(new Error('cannot'), { code });
    };
    const database = openDatabase(SETTINGS.database, { ...memoryJournal(), append: fails });
    const port = await start({ ...(await openIt()), answer: storeAnswers(database, SETTINGS) });
    const answer = await fetch(`http://127.0.0.1:${port}/${SETTINGS.database}/a`, {
      method: 'PUT',
      body: '{}',
      headers: { authorization: AUTHORIZATION },
    });
    expect(answer.status).toBe(status);
  });

  it('https: a browser that trusts the certificate is let in under the names it is for, and under no other', async () => {
    const tls = makeCertificate(['localhost', '127.0.0.1'], Date.now());
    const port = await start(await openIt(), tls);
    const get = (servername: string, ca: string[]) =>
      new Promise<number | string>((resolve) => {
        const asked = secureRequest(
          { host: '127.0.0.1', port, path: '/', servername, ca, headers: { host: 'localhost' } },
          (answer) => resolve(answer.resume().statusCode ?? 0),
        );
        asked.on('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message));
        asked.end();
      });
    expect(await get('localhost', [tls.cert])).toBe(200);
    expect(await get('elsewhere.example', [tls.cert])).toBe('ERR_TLS_CERT_ALTNAME_INVALID');
    expect(await get('localhost', [])).toBe('DEPTH_ZERO_SELF_SIGNED_CERT');
  });
});

describe('a folder', () => {
  it('gets a database and a password of its own, once', async () => {
    const made = await clubSettings(join(folder, 'new'));
    expect(made.isNew).toBe(true);
    expect(made.settings.password).toMatch(/^([a-z2-9]{4}-){3}[a-z2-9]{4}$/);
    expect(await clubSettings(join(folder, 'new'))).toEqual({ settings: made.settings, isNew: false });
    const other = await clubSettings(join(folder, 'other'));
    expect(other.settings.password).not.toBe(made.settings.password);
    expect(other.settings.database).not.toBe(made.settings.database);
    if (process.platform !== 'win32') expect(statSync(join(folder, 'new', 'club.json')).mode & 0o077).toBe(0);
  });

  it('whose settings were spoilt is refused with a sentence, and nothing is made anew', async () => {
    const { settings } = await clubSettings(folder);
    for (const text of [
      '',
      '{',
      '{"schema":2}',
      JSON.stringify({ schema: 1, ...settings, database: '../x' }),
    ]) {
      writeFileSync(join(folder, 'club.json'), text);
      await expect(clubSettings(folder)).rejects.toThrow('Put it back as it was');
      expect(readFileSync(join(folder, 'club.json'), 'utf8')).toBe(text);
    }
  });

  it('is had by one program at a time; one that was killed does not keep it', async () => {
    const letGo = await takeFolder(folder);
    writeFileSync(join(folder, 'in-use.txt'), `${process.ppid}\n`);
    await expect(takeFolder(folder)).rejects.toThrow('Stop that one first');
    // No process has so high a number.
    writeFileSync(join(folder, 'in-use.txt'), '99999999\n');
    await takeFolder(folder);
    expect(readFileSync(join(folder, 'in-use.txt'), 'utf8')).toBe(`${process.pid}\n`);
    await letGo();
    expect(readdirSync(folder)).toEqual([]);
  });
});

describe('a certificate', () => {
  const names = ['localhost', 'hall.local', '192.168.1.5', '[::1]', '[fd00::12:5]'];

  it('is for just these names, for little more than a year, signs itself and no other', () => {
    const now = Date.UTC(2026, 10, 27, 2);
    const { cert } = makeCertificate(names, now);
    const read = new X509Certificate(cert);
    expect(
      ['localhost', 'hall.local', 'other.local', 'local'].map((name) => read.checkHost(name) !== undefined),
    ).toEqual([true, true, false, false]);
    expect(
      ['192.168.1.5', '::1', 'fd00::12:5', '192.168.1.6', 'fd00::12:6'].map(
        (ip) => read.checkIP(ip) !== undefined,
      ),
    ).toEqual([true, true, true, false, false]);
    expect([read.ca, read.verify(read.publicKey), read.issuer === read.subject]).toEqual([false, true, true]);
    // It may not vouch for anybody, not even for itself as another one's issuer.
    expect(read.checkIssued(read)).toBe(false);
    const days = (Date.parse(read.validTo) - Date.parse(read.validFrom)) / 86_400_000;
    expect([days, Date.parse(read.validFrom) < now]).toEqual([397, true]);
    expect(read.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
  });

  it('is kept; another address, an end that is near or a spoilt file gives a new one', async () => {
    const now = Date.now();
    const first = await certificateOf(folder, names, now);
    expect(first.isNew).toBe(true);
    expect(first.fingerprint).toBe(new X509Certificate(first.cert).fingerprint256);
    expect(await certificateOf(folder, names.slice(1), now)).toEqual({ ...first, isNew: false });
    expect((await certificateOf(folder, [...names, '192.168.1.9'], now)).isNew).toBe(true);
    expect((await certificateOf(folder, names, now + 391 * 86_400_000)).isNew).toBe(true);
    writeFileSync(join(folder, 'https.json'), '{"key":"x","cert":"y"}');
    expect((await certificateOf(folder, names, now)).isNew).toBe(true);
  });
});

describe('the settings as a link', () => {
  it('are what the game reads; the store is where the game came from', () => {
    const link = settingsLink('http://192.168.1.5:4173/', SETTINGS);
    const expected = { ...SETTINGS, url: 'http://192.168.1.5:4173' };
    expect(readStoreLink(link, 'http://elsewhere.example/')).toEqual(expected);
    expect(readStoreLink(link.slice(link.indexOf('#')), 'http://192.168.1.5:4173/')).toEqual(expected);
    expect(link.length).toBeLessThan(160);
  });
});
