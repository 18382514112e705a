/**
 * Leaves out of the engine what the canvas picture of a ride never calls: filters, WebGL, devices of input, packed
 * textures, animations and mathematics in space: two fifths of the bytes on the way. Whoever calls a part
 * that was left out gets an error with its name.
 */
import type { Plugin } from 'vite';

const leftOut = (part: string): string =>
  `module.exports = function () { throw new Error('left out of the engine: ${part}'); };`;

/** What stands in place of parts of `phaser/src`, by the beginning of their path. */
const INSTEAD: readonly (readonly [RegExp, (part: string) => string])[] = [
  [/^filters\//, leftOut],
  // Tables of names are asked for, though nothing of what they name is.
  [/^renderer\/webgl\/(?!renderNodes\/defaults)/, leftOut],
  [/^renderer\/snapshot\//, leftOut],
  [/^textures\/DynamicTexture/, leftOut],
  [/^textures\/parsers\/(?!Image|index)/, leftOut],
  [/^animations\/Animation(?:Frame)?\.js/, leftOut],
  // The game makes one for itself and asks nothing of it.
  [/^input\/InputManager\.js/, () => 'module.exports = function () {};'],
  // One file asks for all mathematics, and wants its dice.
  [
    /^math\/index\.js/,
    () => "exports.RandomDataGenerator = require('./random-data-generator/RandomDataGenerator');",
  ],
];

export function enginePlugin(): Plugin {
  const unseen = new Set(INSTEAD.map(([pattern]) => pattern));
  return {
    name: 'before-the-hill-engine',
    apply: 'build',
    transform(_code, id) {
      const part = /[\\/]node_modules[\\/]phaser[\\/]src[\\/](.*)$/.exec(id)?.[1]?.replaceAll('\\', '/');
      const found = part === undefined ? undefined : INSTEAD.find(([pattern]) => pattern.test(part));
      if (part === undefined || found === undefined) return null;
      const [pattern, codeFor] = found;
      unseen.delete(pattern);
      return { code: codeFor(part), map: null };
    },
    buildEnd(error) {
      if (error === undefined && unseen.size > 0)
        this.error(`The engine keeps these elsewhere now: ${[...unseen].join(' ')} (.ci/enginePlugin.ts).`);
    },
  };
}
