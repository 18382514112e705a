/**
 * `npm start`: builds the site and serves it until somebody stops it, saying where in one sentence.
 * Only this computer can open it, unless `-- --host` asks for the local network: then it says what tablets open, with a
 * code to scan, and `--name hall.example` adds a name this computer has there;
 * `-- --port 5000` asks for another port, and the next free one is taken if that is busy.
 */
import { parseArgs } from 'node:util';
import { generate } from 'lean-qr';
import { build } from 'vite';
import { listen, ownNames, siteServer, tabletAddresses } from './serve.mjs';

const { values } = parseArgs({
  options: {
    host: { type: 'boolean', default: false },
    name: { type: 'string', multiple: true, default: [] },
    port: { type: 'string', default: '4173' },
  },
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
/** Known once it listens. @type {string[]} */
let tablets = [];
const names = () => new Set([...ownNames(values.host), ...values.name.map((name) => name.toLowerCase())]);
const server = siteServer(files, names, undefined, () => tablets);
const port = await listen(server, wished, values.host ? undefined : '127.0.0.1');
tablets = values.host ? tabletAddresses(port) : [];

console.log(`Before the Hill is ready at http://localhost:${port}/ until you press Ctrl+C.`);
const [surest] = tablets;
if (surest !== undefined) {
  console.log(`Tablets on this network open ${tablets.join(' or ')}`);
  console.log(codeOf(surest));
} else if (values.host) console.log('This computer is on no network now, so no tablet can open it.');
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(0));

/**
 * A code to scan, two rows of squares a line, light on the dark of a terminal.
 * @param {string} text
 */
function codeOf(text) {
  const code = generate(text);
  const margin = 2;
  const rows = [];
  for (let y = -margin; y < code.size + margin; y += 2) {
    let row = '';
    for (let x = -margin; x < code.size + margin; x += 1)
      row += [' ', '▄', '▀', '█'][(code.get(x, y) ? 0 : 2) + (code.get(x, y + 1) ? 0 : 1)];
    rows.push(row);
  }
  return rows.join('\n');
}
