/**
 * The answer of the close-up to a clean shift: a ring that opens from the sprocket that took the chain, and puffs of
 * paper that fly off it.
 */
import { type Context, disc, hoop } from '../paint/pen.ts';
import type { MachineTones } from '../paint/palette.ts';
import type { Wheel } from './chainPath.ts';

const PUFFS = 9;

/** Draws it; `fresh` 1 is just now, 0 gone. Sizes in millimetres of the machine. */
export function drawSeated(
  context: Context,
  on: Readonly<Wheel>,
  { ink, paper }: Pick<MachineTones, 'ink' | 'paper'>,
  fresh: number,
): void {
  const gone = 1 - fresh;
  context.globalAlpha = Math.min(1, fresh * 1.6);
  hoop(context, ink, 2 + 7 * fresh, on.x, on.y, on.radiusOn + 8 + gone * 18);
  for (let i = 0; i < PUFFS; i += 1) {
    const turn = (i / PUFFS) * Math.PI * 2 + 0.3;
    const away = on.radiusOn + 18 + gone * (26 + (i % 3) * 10);
    const x = on.x + Math.cos(turn) * away;
    const y = on.y + Math.sin(turn) * away;
    const radius = (5 + (i % 3) * 2) * (0.4 + fresh);
    disc(context, paper, x, y, radius);
    hoop(context, ink, 2.5, x, y, radius);
  }
  context.globalAlpha = 1;
}
