/**
 * `npm run club`: serves the game and a store of the club's own on one port of the local network, until somebody stops
 * it. Rides lie in a folder; the password is made at the first start. `-- --data FOLDER` names another folder,
 * `--https` speaks https with a certificate of the computer's own, `--port` and `--name` are those of `npm start`.
 */
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { certificateOf } from './club/certificate.mjs';
import { ClubProblem, clubSettings, settingsLink, takeFolder } from './club/settings.mjs';
import { openStore } from './club/store.mjs';
import { builtFiles, codeOf, portOf } from './open.mjs';
import { listen, ownNames, siteServer, tabletAddresses } from './serve.mjs';

const { values } = parseArgs({
  options: {
    data: { type: 'string', default: join(homedir(), 'before-the-hill-club') },
    https: { type: 'boolean', default: false },
    name: { type: 'string', multiple: true, default: [] },
    port: { type: 'string', default: '4173' },
  },
});
const wished = portOf(values.port);
const folder = resolve(values.data);
const given = values.name.map((name) => name.toLowerCase());

try {
  await serve();
} catch (error) {
  const { code, message } = /** @type {NodeJS.ErrnoException} */ (error);
  console.error(
    error instanceof ClubProblem ? message : `The folder ${folder} cannot be used (${code ?? message}).`,
  );
  process.exit(2);
}

async function serve() {
  const { settings, isNew } = await clubSettings(folder);
  const letGo = await takeFolder(folder);
  const store = await openStore(folder, settings);
  const scheme = values.https ? 'https' : 'http';
  const hosts = tabletAddresses(1, scheme).map((address) => new URL(address).hostname);
  const tls = values.https
    ? await certificateOf(folder, ['localhost', '127.0.0.1', '[::1]', ...hosts, ...given], Date.now())
    : undefined;
  /** Known once it listens. @type {string[]} */
  let tablets = [];
  const server = siteServer(await builtFiles(), () => new Set([...ownNames(true), ...given]), {
    tablets: () => tablets,
    beside: store.answer,
    ...(tls === undefined ? {} : { tls: { key: tls.key, cert: tls.cert } }),
  });
  const port = await listen(server, wished, undefined);
  tablets = [...given.map((name) => `${scheme}://${name}:${port}/`), ...tabletAddresses(port, scheme)];
  const here = `${scheme}://localhost:${port}/`;
  tell({ here, tablets, settings, isNew, rides: store.database.size(), damaged: store.damaged, tls });
  for (const signal of ['SIGINT', 'SIGTERM'])
    process.on(signal, () => void letGo().finally(() => process.exit(0)));
}

/**
 * @param {object} told
 * @param {string} told.here
 * @param {readonly string[]} told.tablets
 * @param {import('./club/settings.mjs').ClubSettings} told.settings
 * @param {boolean} told.isNew
 * @param {number} told.rides
 * @param {number} told.damaged
 * @param {{ readonly isNew: boolean, readonly fingerprint: string } | undefined} told.tls
 */
function tell({ here, tablets, settings, isNew, rides, damaged, tls }) {
  const [surest] = tablets;
  const say = console.log;
  say(`\nBefore the Hill and the store of your club are ready until you press Ctrl+C.`);
  say(`  On this computer   ${here}`);
  say(
    `  On tablets         ${surest === undefined ? 'no network now, so none can open it' : tablets.join(' or ')}`,
  );
  say(`  Rides are kept in  ${folder} (${rides} pieces so far)`);
  if (damaged > 0)
    say(`  ${damaged} damaged pieces in it are left out. The tablets they came from still have them.`);
  say(
    `  Name and password  ${settings.name}   ${settings.password}${isNew ? '   (made just now, kept in the folder)' : ''}`,
  );
  say(`  Database           ${settings.database}`);
  say(`\nEvery device scans or opens this once. It asks before it sends anything.`);
  if (surest !== undefined) say(codeOf(settingsLink(surest, settings)));
  say(`  tablets        ${surest === undefined ? '-' : settingsLink(surest, settings)}`);
  say(`  this computer  ${settingsLink(here, settings)}`);
  say(`\nWhoever has this code can read all rides and add some. Show it to those who may.`);
  if (tls === undefined)
    say(
      'Over plain http everybody in this network can read along, and tablets have no camera page, no screen kept awake and no copy for offline. “npm run club -- --https” speaks https instead.',
    );
  else
    say(
      `The certificate is ${tls.isNew ? 'new' : 'the one from before'} and nobody else vouches for it, so each browser warns once. Look at the certificate there and go on only if its SHA-256 fingerprint is\n  ${tls.fingerprint}\nThen nobody can read along, and tablets have their camera page and a screen that stays awake. A copy for offline they have not: browsers keep none under a certificate nobody vouches for.`,
    );
}
