/** The rider in their colours, for the page that chooses them: the drawing of the ride, fetched when it is wanted. */
import { courseOfLevel } from '../core/level/build.ts';
import { frameOf } from '../core/ride/frame.ts';
import { buildRideWorld, startState } from '../core/ride/world.ts';
import { bundledLevels } from './levels.ts';
import { outfitLook } from '../core/settings/outfit.ts';
import { isChild, type Settings } from '../core/settings/settings.ts';

/** The near foot low and forward, so that both legs are seen. */
const CRANK_TURNS = 0.36;

/** Paints into a canvas that has its size, unless others are wanted by now; rejects where it cannot be fetched. */
export async function paintRider(
  canvas: HTMLCanvasElement,
  settings: Settings,
  isWanted: () => boolean,
): Promise<void> {
  const { paintPortrait } = await import('../game/portrait.ts');
  if (!isWanted()) return;
  const { bike, rider, theme, kit } = settings;
  const [level] = bundledLevels();
  if (level === undefined) return;
  const world = buildRideWorld(courseOfLevel(level), bike, rider);
  const frame = { ...frameOf(world, startState(world)), crankTurns: CRANK_TURNS };
  paintPortrait(canvas, { bike, kit: outfitLook(kit), theme, childRider: isChild(rider), frame });
}
