/**
 * `npm start`: builds the site and serves it until somebody stops it, saying where in one sentence.
 * Only this computer can open it, unless `-- --host` asks for the local network;
 * `-- --port 5000` asks for another port, and the next free one is taken if that is busy.
 */
import { parseArgs } from 'node:util';
import { build, preview } from 'vite';

const { values } = parseArgs({
  options: { host: { type: 'boolean', default: false }, port: { type: 'string', default: '4173' } },
});
const port = Number(values.port);
if (!Number.isInteger(port) || port < 1 || port > 65_535) {
  console.error(`A port is a whole number from 1 to 65535, not ${values.port}.`);
  process.exit(2);
}

await build({ logLevel: 'warn' });
const server = await preview({
  logLevel: 'warn',
  preview: { host: values.host ? true : '127.0.0.1', port, strictPort: false },
});

const network = server.resolvedUrls?.network ?? [];
const addresses = [...(server.resolvedUrls?.local ?? []), ...network];
console.log(`Before the Hill is ready at ${addresses.join(' and ')} until you press Ctrl+C.`);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));
