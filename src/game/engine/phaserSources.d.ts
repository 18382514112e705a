/** Phaser's single source files have no types; `engine.ts` gives each its published one. */
declare module 'phaser/src/*' {
  const part: unknown;
  export default part;
}
