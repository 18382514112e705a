/**
 * Leaves out of the engine what the canvas picture of a ride never calls: filters, WebGL, devices of input, packed
 * textures, animations and mathematics in space. That is a third of what a first ride waits for. Whoever calls a part
 * that was left out gets an error with its name.
 */
import type { Plugin } from 'vite';

/** Parts of `phaser/src` of which no function is called, by the beginning of their path. */
const LEFT_OUT: readonly RegExp[] = [
  /^filters\//,
  // What draws a tile is named in a table of its own, which is asked for and stays empty.
  /^renderer\/webgl\/(?!renderNodes\/defaults)/,
  /^renderer\/snapshot\//,
  /^input\/(?:mouse|touch|keyboard)\/\w+Manager/,
  /^textures\/DynamicTexture/,
  /^textures\/parsers\/(?!Image|index)/,
  /^animations\/Animation(?:Frame)?\.js/,
];

/** All of its mathematics is asked for by one file, which wants its dice. */
const MATH = 'math/index.js';
const DICE = 'random-data-generator/RandomDataGenerator';

export function enginePlugin(): Plugin {
  const unseen = new Set<string>([MATH, ...LEFT_OUT.map(String)]);
  return {
    name: 'before-the-hill-engine',
    apply: 'build',
    transform(_code, id) {
      const part = /[\\/]node_modules[\\/]phaser[\\/]src[\\/](.*)$/.exec(id)?.[1]?.replaceAll('\\', '/');
      if (part === undefined) return null;
      if (part === MATH) {
        unseen.delete(MATH);
        return { code: `exports.RandomDataGenerator = require('./${DICE}');`, map: null };
      }
      const pattern = LEFT_OUT.find((one) => one.test(part));
      if (pattern === undefined) return null;
      unseen.delete(String(pattern));
      return {
        code: `module.exports = function () { throw new Error('left out of the engine: ${part}'); };`,
        map: null,
      };
    },
    buildEnd(error) {
      if (error === undefined && unseen.size > 0)
        this.error(
          `The engine keeps these elsewhere now: ${[...unseen].join(' ')} (see .ci/enginePlugin.ts).`,
        );
    },
  };
}
