/**
 * `npm start`: builds the site and serves it until somebody stops it, saying where in one sentence.
 * Only this computer can open it, unless `-- --host` asks for the local network;
 * `-- --port 5000` asks for another port, and the next free one is taken if that is busy.
 */
import { parseArgs } from 'node:util';
import { build } from 'vite';
import { listen, ownNames, siteServer } from './serve.mjs';

const { values } = parseArgs({
  options: { host: { type: 'boolean', default: false }, port: { type: 'string', default: '4173' } },
});
const wished = Number(values.port);
if (!Number.isInteger(wished) || wished < 1 || wished > 65_535) {
  console.error(`A port is a whole number from 1 to 65535, not ${values.port}.`);
  process.exit(2);
}

const built = /** @type {import('vite').Rolldown.RolldownOutput} */ (await build({ logLevel: 'warn' }));
const files = new Map(
  built.output.map((file) => [file.fileName, file.type === 'chunk' ? file.code : file.source]),
);
const server = siteServer(files, () => ownNames(values.host));
const port = await listen(server, wished, values.host ? undefined : '127.0.0.1');

// A link of the network card itself needs its name behind it, which no address bar takes.
const named = [...ownNames(values.host)].filter((name) => /^[\d.]+$/.test(name) && name !== '127.0.0.1');
const addresses = ['127.0.0.1', ...named].map((name) => `http://${name}:${port}/`);
console.log(`Before the Hill is ready at ${addresses.join(' and ')} until you press Ctrl+C.`);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));
