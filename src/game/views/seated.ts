/**
 * The answer of the close-up to a clean shift: a ring that opens from the sprocket that took the chain, and puffs of
 * paper that fly off it.
 */
import type { MachineTones } from '../paint/palette.ts';
import type { Wheel } from './chainPath.ts';

const PUFFS = 9;
const WHOLE = Math.PI * 2;

/** Draws it; `fresh` 1 is just now, 0 gone. Sizes in millimetres of the machine. */
export function drawSeated(
  context: CanvasRenderingContext2D,
  on: Readonly<Wheel>,
  { ink, paper }: Pick<MachineTones, 'ink' | 'paper'>,
  fresh: number,
): void {
  const gone = 1 - fresh;
  context.globalAlpha = Math.min(1, fresh * 1.6);
  context.strokeStyle = ink;
  context.lineWidth = 2 + 7 * fresh;
  context.beginPath();
  context.arc(on.x, on.y, on.radiusOn + 8 + gone * 18, 0, WHOLE);
  context.stroke();
  context.fillStyle = paper;
  context.lineWidth = 2.5;
  for (let i = 0; i < PUFFS; i += 1) {
    const turn = (i / PUFFS) * WHOLE + 0.3;
    const away = on.radiusOn + 18 + gone * (26 + (i % 3) * 10);
    context.beginPath();
    context.arc(
      on.x + Math.cos(turn) * away,
      on.y + Math.sin(turn) * away,
      (5 + (i % 3) * 2) * (0.4 + fresh),
      0,
      WHOLE,
    );
    context.fill();
    context.stroke();
  }
  context.globalAlpha = 1;
}
