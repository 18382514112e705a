/**
 * Arithmetic of things that repeat: where a seamless tile starts, the outline of a hill that closes on
 * itself, and which slot of a ring of textures belongs to which stretch of road. Pure numbers.
 */

/** Left edge of the first tile, from `-tilePx` (exclusive) to 0, after scrolling `scrollPx` to the right. */
export function wrapOffset(scrollPx: number, tilePx: number): number {
  const into = scrollPx % tilePx;
  return into === 0 ? 0 : -(into < 0 ? into + tilePx : into);
}

/** One wave of a hill outline: whole turns per tile, so the outline closes on itself. */
export interface Wave {
  readonly turnsPerTile: number;
  readonly heightPx: number;
  readonly startTurns: number;
}

/** Height of an outline made of waves, in pixels above its base; repeats every `tilePx`. */
export function outlineAt(waves: readonly Wave[], x: number, tilePx: number): number {
  let height = 0;
  for (const wave of waves) {
    height += Math.sin(((x / tilePx) * wave.turnsPerTile + wave.startTurns) * Math.PI * 2) * wave.heightPx;
  }
  return height;
}

/** The same with pointed tops and straight flanks, in pixels above its base; repeats every `tilePx`. */
export function peaksAt(waves: readonly Wave[], x: number, tilePx: number): number {
  let height = 0;
  for (const wave of waves) {
    const turns = (x / tilePx) * wave.turnsPerTile + wave.startTurns;
    height += (1 - 4 * Math.abs(turns - Math.floor(turns) - 0.5)) * wave.heightPx;
  }
  return height;
}

/** Slot of a ring of `slotCount` textures for chunk number `chunk` (may be negative). */
export function slotOf(chunk: number, slotCount: number): number {
  return ((chunk % slotCount) + slotCount) % slotCount;
}

/** Numbers of the first and last chunk that touch a stretch of road (m). */
export function firstChunk(fromM: number, chunkM: number): number {
  return Math.floor(fromM / chunkM);
}

/** Textures needed so that every visible chunk and one ahead have a slot. */
export function slotsNeeded(visibleM: number, chunkM: number): number {
  return Math.ceil(visibleM / chunkM) + 2;
}
