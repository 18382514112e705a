/**
 * The small answer of the close-up to a clean shift: a ring that opens from the sprocket that took the chain.
 */
import type { Wheel } from './chainPath.ts';

/** Draws the ring; `fresh` 1 is just now, 0 gone. Sizes in millimetres of the machine. */
export function drawSeated(
  context: CanvasRenderingContext2D,
  on: Readonly<Wheel>,
  ink: string,
  fresh: number,
): void {
  context.globalAlpha = Math.min(1, fresh * 1.4);
  context.strokeStyle = ink;
  context.lineWidth = 2 + 6 * fresh;
  context.beginPath();
  context.arc(on.x, on.y, on.radiusOn + 8 + (1 - fresh) * 15, 0, Math.PI * 2);
  context.stroke();
  context.globalAlpha = 1;
}
