/**
 * Leaves out of the engine what the canvas picture of a ride never calls: filters, WebGL, devices of input, packed
 * textures, animations, effects of cameras, images and mathematics in space: half of the bytes on the way. Whoever
 * calls a part that was left out gets an error with its name.
 */
import type { Plugin } from 'vite';

const leftOut = (part: string): string =>
  `module.exports = function () { throw new Error('left out of the engine: ${part}'); };`;

const IDLE = 'module.exports = function () {};';

/** An object that is made once for all textures, and destroyed with them. */
const PUT_BY = 'module.exports = class { setOrigin() { return this; } destroy() {} };';

const stillEffect = (part: string): string => `module.exports = class {
  start() { throw new Error('left out of the engine: ${part}'); }
  preRender() {}
  update() {}
  postRenderCanvas() {}
  reset() {}
  destroy() {}
};`;

/** What stands in place of parts of `phaser/src`, by the beginning of their path. */
const INSTEAD: readonly (readonly [RegExp, (part: string) => string])[] = [
  [/^filters\//, leftOut],
  // Tables of names are asked for, though nothing of what they name is.
  [/^renderer\/webgl\/(?!renderNodes\/defaults)/, leftOut],
  [/^renderer\/snapshot\//, leftOut],
  [/^textures\/DynamicTexture/, leftOut],
  [/^textures\/parsers\/(?!Image|index)/, leftOut],
  [/^utils\/array\/matrix\/index\.js/, leftOut],
  // The one thing this game draws has no place, colour or turn of its own.
  [/^gameobjects\/components\/(?!index|AlphaSingle|Filter|RenderSteps|TransformMatrix|Visible)/, leftOut],
  // The game makes one for itself and asks nothing of it.
  [/^(?:animations\/AnimationManager|core\/DebugHeader|input\/InputManager)\.js/, () => IDLE],
  [/^gameobjects\/(?:image\/Image|tilesprite\/TileSprite)\.js/, () => PUT_BY],
  // Every camera has them, and here none ever begins.
  [/^cameras\/2d\/effects\/(?!index)/, stillEffect],
  // What a device can play is found out when the engine is read, and asked by nobody.
  [/^device\/(?:Audio|Video)\.js/, () => 'module.exports = {};'],
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
