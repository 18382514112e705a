/** What the scripts that serve the game have in common: the built files, the port, and codes to scan in a terminal. */
import { generate } from 'lean-qr';
import { build } from 'vite';

/**
 * Builds the site.
 * @returns {Promise<ReadonlyMap<string, string | Uint8Array>>} name below the address and content of every file
 */
export async function builtFiles() {
  const built = /** @type {import('vite').Rolldown.RolldownOutput} */ (await build({ logLevel: 'warn' }));
  return new Map(
    built.output.map((file) => [file.fileName, file.type === 'chunk' ? file.code : file.source]),
  );
}

/**
 * A port as somebody typed it; what is none ends the program with a sentence.
 * @param {string} text
 */
export function portOf(text) {
  const wished = Number(text);
  if (Number.isInteger(wished) && wished >= 1 && wished <= 65_535) return wished;
  console.error(`A port is a whole number from 1 to 65535, not ${text}.`);
  return process.exit(2);
}

/**
 * A code to scan, two rows of squares a line, light on the dark of a terminal.
 * @param {string} text
 */
export function codeOf(text) {
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
