/**
 * Arithmetic of things that repeat: where a seamless tile starts, the outline of a hill that closes on
 * itself, and which slot of a ring of textures belongs to which stretch of road. Pure numbers.
 */
import { CHUNK_M } from './layout.ts';

/** Width of the seamless tiles that scenery is painted on (CSS px). */
export const TILE_PX = 1792;

/** What is left of `value` after whole spans, from 0 to below `span`. */
export function remainder(value: number, span: number): number {
  const into = value % span;
  return into < 0 ? into + span : into;
}

/** Left edge of the first tile, from `-tilePx` (exclusive) to 0, after scrolling `scrollPx` to the right. */
export function wrapOffset(scrollPx: number, tilePx: number): number {
  return 0 - remainder(scrollPx, tilePx);
}

/** One wave of a hill outline: whole turns per tile, so the outline closes on itself. */
export interface Wave {
  readonly turnsPerTile: number;
  readonly heightPx: number;
  readonly startTurns: number;
}

function heightOf(waves: readonly Wave[], x: number, shape: (turns: number) => number): number {
  let height = 0;
  for (const wave of waves)
    height += shape((x / TILE_PX) * wave.turnsPerTile + wave.startTurns) * wave.heightPx;
  return height;
}

/** Height of an outline made of waves, in pixels above its base; repeats every tile. */
export function outlineAt(waves: readonly Wave[], x: number): number {
  return heightOf(waves, x, (turns) => Math.sin(turns * Math.PI * 2));
}

/** The same with pointed tops and straight flanks. */
export function peaksAt(waves: readonly Wave[], x: number): number {
  return heightOf(waves, x, (turns) => 1 - 4 * Math.abs(turns - Math.floor(turns) - 0.5));
}

/** Number of the chunk that a place of the road lies on. */
export function chunkAt(distanceM: number): number {
  return Math.floor(distanceM / CHUNK_M);
}

/** Textures needed so that every visible chunk and one ahead have a slot. */
export function slotsNeeded(visibleM: number): number {
  return Math.ceil(visibleM / CHUNK_M) + 2;
}
