/**
 * The store of `npm run club` without the game, as a program that can be killed: `node child.mjs FOLDER PORT`. Says
 * `ready PORT PIECES DAMAGED` once it listens, and its memory whenever it gets a line.
 */
import { clubSettings, takeFolder } from '../../../.ci/club/settings.mjs';
import { openStore } from '../../../.ci/club/store.mjs';
import { siteServer } from '../../../.ci/serve.mjs';

const [folder = '', port = '0'] = process.argv.slice(2);
const { settings } = await clubSettings(folder);
await takeFolder(folder);
const store = await openStore(folder, settings);
const server = siteServer(new Map(), () => new Set(['127.0.0.1']), { beside: store.answer });
server.listen(Number(port), '127.0.0.1', () => {
  const address = /** @type {import('node:net').AddressInfo} */ (server.address());
  console.log(`ready ${address.port} ${store.database.size()} ${store.damaged}`);
});
process.stdin.on('data', () => {
  const { user, system } = process.cpuUsage();
  console.log(`uses ${process.memoryUsage().rss} ${user + system}`);
});
