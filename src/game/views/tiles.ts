/**
 * Arithmetic of things that repeat: where a seamless tile starts, the outline of a hill that closes on
 * itself, and which slot of a ring of textures belongs to which stretch of road. Pure numbers.
 */
import { CHUNK_M } from './layout.ts';

/** Width of the seamless tiles that scenery is painted on (CSS px). */
export const TILE_PX = 1792;

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

/** Height of an outline made of waves, in pixels above its base; repeats every tile. */
export function outlineAt(waves: readonly Wave[], x: number): number {
  let height = 0;
  for (const wave of waves) {
    height += Math.sin(((x / TILE_PX) * wave.turnsPerTile + wave.startTurns) * Math.PI * 2) * wave.heightPx;
  }
  return height;
}

/** The same with pointed tops and straight flanks, in pixels above its base; repeats every tile. */
export function peaksAt(waves: readonly Wave[], x: number): number {
  let height = 0;
  for (const wave of waves) {
    const turns = (x / TILE_PX) * wave.turnsPerTile + wave.startTurns;
    height += (1 - 4 * Math.abs(turns - Math.floor(turns) - 0.5)) * wave.heightPx;
  }
  return height;
}

/** Slot of a ring of `slotCount` textures for chunk number `chunk` (may be negative). */
export function slotOf(chunk: number, slotCount: number): number {
  return ((chunk % slotCount) + slotCount) % slotCount;
}

/** Number of the chunk that a place of the road lies on. */
export function chunkAt(distanceM: number): number {
  return Math.floor(distanceM / CHUNK_M);
}

/** Textures needed so that every visible chunk and one ahead have a slot. */
export function slotsNeeded(visibleM: number): number {
  return Math.ceil(visibleM / CHUNK_M) + 2;
}
