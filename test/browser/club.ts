/** Game and store of a club on one port, as `npm run club` serves them, under names of the local network. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join, relative, sep } from 'node:path';
import { clubSettings, settingsLink } from '../../.ci/club/settings.mjs';
import { openStore } from '../../.ci/club/store.mjs';
import { siteServer } from '../../.ci/serve.mjs';
import type { Browser } from 'playwright-core';
import { hurry } from './clinicVisit.ts';
import { builtSiteFolder, openPage, type OpenPage, type Screen } from './site.ts';

/** A name that is no browser's own computer, so that plain http under it is no secure place. */
export const HALL = 'hall.example';

/** A running club. */
export interface Club {
  /** Address of the game, with a slash at the end. */
  readonly url: string;
  /** The link with the settings of the store. */
  readonly link: string;
  /** Ids of all pieces in the store. */
  readonly ids: () => readonly string[];
  /** Stops answering at once; what is in the folder stays. */
  readonly kill: () => Promise<void>;
  /** Opens the same folder again under the same address. */
  readonly restart: () => Promise<void>;
  readonly close: () => Promise<void>;
}

function builtFiles(): Map<string, Uint8Array> {
  const files = readdirSync(builtSiteFolder, { recursive: true, withFileTypes: true }).filter((one) =>
    one.isFile(),
  );
  return new Map(
    files.map((one) => {
      const path = join(one.parentPath, one.name);
      return [relative(builtSiteFolder, path).split(sep).join('/'), readFileSync(path)];
    }),
  );
}

/** Starts it on a folder of its own; `tls` makes it speak https. */
export async function openClub(tls?: { readonly key: string; readonly cert: string }): Promise<Club> {
  const folder = mkdtempSync(join(tmpdir(), 'club-'));
  const { settings } = await clubSettings(folder);
  const files = builtFiles();
  let url = '';
  const start = async (port: number) => {
    const store = await openStore(folder, settings);
    const server = siteServer(files, () => new Set(['127.0.0.1', HALL]), {
      beside: store.answer,
      tablets: () => [url],
      ...(tls === undefined ? {} : { tls }),
    });
    await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
    return { server, store };
  };
  let now = await start(0);
  const { port } = now.server.address() as AddressInfo;
  url = `${tls === undefined ? 'http' : 'https'}://${HALL}:${port}/`;
  const kill = async (): Promise<void> => {
    now.server.closeAllConnections();
    await new Promise((resolve) => now.server.close(resolve));
    await now.store.close();
  };
  return {
    url,
    link: settingsLink(url, settings),
    ids: () => now.store.database.documents().map((doc) => String(doc['_id'])),
    kill,
    restart: async () => {
      now = await start(port);
    },
    close: async () => {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Another device of the club, on which rides take a fortieth of their time. */
export async function openDevice(
  browser: Browser,
  { url }: Club,
  screen: Partial<Screen> = {},
): Promise<OpenPage> {
  const open = await openPage(browser, url, { width: 1024, height: 768, ...screen });
  await hurry(open.page, 40);
  await open.page.goto(`${url}#about`);
  await open.page.locator('[data-save-everything]').waitFor();
  return open;
}
