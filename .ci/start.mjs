/**
 * `npm start`: builds the site and serves it until somebody stops it, saying where in one sentence.
 * Only this computer can open it, unless `-- --host` asks for the local network: then it says what tablets open, with a
 * code to scan, and `--name hall.example` adds a name this computer has there;
 * `-- --port 5000` asks for another port, and the next free one is taken if that is busy.
 */
import { parseArgs } from 'node:util';
import { builtFiles, codeOf, portOf } from './open.mjs';
import { listen, ownNames, siteServer, tabletAddresses } from './serve.mjs';

const { values } = parseArgs({
  options: {
    host: { type: 'boolean', default: false },
    name: { type: 'string', multiple: true, default: [] },
    port: { type: 'string', default: '4173' },
  },
});
const wished = portOf(values.port);
/** Known once it listens. @type {string[]} */
let tablets = [];
const names = () => new Set([...ownNames(values.host), ...values.name.map((name) => name.toLowerCase())]);
const server = siteServer(await builtFiles(), names, { tablets: () => tablets });
const port = await listen(server, wished, values.host ? undefined : '127.0.0.1');
tablets = values.host ? tabletAddresses(port) : [];

console.log(`Before the Hill is ready at http://localhost:${port}/ until you press Ctrl+C.`);
const [surest] = tablets;
if (surest !== undefined) {
  console.log(`Tablets on this network open ${tablets.join(' or ')}`);
  console.log(codeOf(surest));
} else if (values.host) console.log('This computer is on no network now, so no tablet can open it.');
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));
