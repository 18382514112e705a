/**
 * Recipes of the sounds that happen once. The click of a clean shift is the best and the loudest of them;
 * every other one stays below it.
 */
import type { ShotName } from '../../src/audio/sounds.ts';
import {
  add,
  type Chance,
  createChance,
  fadeEnd,
  filter,
  type Mode,
  peakAt,
  puff,
  silence,
  soften,
  strike,
} from './synthesis.ts';

type Recipe = (chance: Chance) => Float64Array;

function modes(...list: readonly (readonly [number, number, number])[]): readonly Mode[] {
  return list.map(([frequencyHz, decayS, gain]) => ({ frequencyHz, decayS, gain }));
}

/** Steel on steel: a light first touch, then the chain settling, a short ring and a hint of the frame. */
const shiftClick: Recipe = (chance) => {
  const out = silence(0.2);
  add(out, strike(modes([2900, 0.012, 0.3], [4700, 0.008, 0.18]), 0.0004), 0.004);
  add(out, puff(2600, 7000, 0.0004, 0.006, chance), 0.004, 0.35);
  const bite = modes([1840, 0.04, 0.55], [2760, 0.055, 0.5], [4130, 0.045, 0.3], [6380, 0.02, 0.14]);
  add(out, strike(bite, 0.0004), 0.021);
  add(out, puff(1500, 6500, 0.0004, 0.012, chance), 0.021, 0.75);
  add(out, strike(modes([430, 0.06, 0.5], [680, 0.045, 0.3]), 0.001), 0.021);
  add(out, strike(modes([3120, 0.15, 0.1], [3127, 0.16, 0.08], [5240, 0.1, 0.04]), 0.001), 0.023);
  return soften(out, 1.1);
};

/** The chain lifted by the cage and seating on a ring: heavier, lower, with more frame in it. */
const frontClunk: Recipe = (chance) => {
  const out = silence(0.34);
  add(out, strike(modes([1350, 0.025, 0.25], [2400, 0.016, 0.14]), 0.0006), 0.004);
  add(out, puff(900, 3600, 0.0008, 0.016, chance), 0.004, 0.3);
  add(out, strike(modes([165, 0.16, 0.8], [318, 0.13, 0.6], [640, 0.08, 0.4]), 0.0014), 0.036);
  add(out, strike(modes([1140, 0.06, 0.3], [1930, 0.05, 0.22], [3050, 0.03, 0.1]), 0.0006), 0.036);
  add(out, puff(500, 3000, 0.0006, 0.03, chance), 0.036, 0.55);
  add(out, strike(modes([2210, 0.2, 0.05], [1480, 0.22, 0.06]), 0.001), 0.04);
  return soften(out, 1.2);
};

/** Teeth taking the chain under load: uneven bites that end in a thump. */
const shiftCrunch: Recipe = (chance) => {
  const out = silence(0.5);
  add(out, puff(380, 1900, 0.03, 0.34, chance), 0, 0.4);
  let atS = 0.004;
  for (let bite = 0; bite < 14; bite++) {
    const tone = 0.8 + 0.45 * chance();
    const steel = modes([520 * tone, 0.07, 0.5], [1270 * tone, 0.05, 0.4], [2240 * tone, 0.025, 0.16]);
    add(out, strike(steel, 0.0012), atS, 0.35 + 0.65 * chance());
    add(out, puff(450, 2600, 0.0015, 0.07, chance), atS, 0.4 + 0.4 * chance());
    atS += 0.012 + 0.02 * chance();
  }
  add(out, strike(modes([140, 0.14, 0.8], [290, 0.1, 0.5]), 0.002), atS, 0.9);
  add(out, puff(300, 1600, 0.002, 0.08, chance), atS, 0.7);
  return filter(soften(out, 1.4), 'low', 4200, 0.707, false);
};

/** The lever meets its stop: a short dull knock with no steel in it. */
const shiftStop: Recipe = (chance) => {
  const out = silence(0.16);
  add(out, strike(modes([210, 0.07, 0.8], [395, 0.045, 0.4], [720, 0.02, 0.15]), 0.0016), 0.004);
  add(out, puff(250, 1100, 0.0012, 0.03, chance), 0.004, 0.5);
  return filter(out, 'low', 1800, 0.707, false);
};

/** A chain link knocking on tube or cage. */
function link(tone: number, chance: Chance): Float64Array {
  const out = strike(
    modes(
      [720 * tone, 0.09, 0.5],
      [1610 * tone, 0.075, 0.4],
      [2680 * tone, 0.045, 0.2],
      [240 * tone, 0.08, 0.3],
    ),
    0.0009,
  );
  add(out, puff(900, 3800, 0.0008, 0.018, chance), 0, 0.4);
  return out;
}

/** The chain falling off: a slap and a rattle that runs out. */
const chainDrop: Recipe = (chance) => {
  const out = silence(0.95);
  add(out, strike(modes([150, 0.13, 0.8], [330, 0.1, 0.5]), 0.002), 0.004);
  let atS = 0.004;
  for (let knock = 0; knock < 15; knock++) {
    add(out, link(0.8 + 0.5 * chance(), chance), atS, (1 - knock / 15.5) * (0.45 + 0.55 * chance()));
    atS += 0.018 + 0.036 * chance() + 0.0022 * knock;
  }
  return filter(soften(out, 1), 'low', 5200, 0.707, false);
};

/** The chain coming back on: a few links, then the click. */
const chainBack: Recipe = (chance) => {
  const out = silence(0.56);
  for (let knock = 0; knock < 5; knock++) {
    const atS = 0.004 + 0.052 * knock + 0.012 * chance();
    add(out, link(0.85 + 0.08 * knock, chance), atS, 0.28 + 0.07 * knock);
  }
  add(out, shiftClick(chance), 0.29, 1.1);
  add(out, strike(modes([190, 0.12, 0.5]), 0.002), 0.311);
  return soften(out, 1);
};

/** A shoe set down and sliding to rest. */
const footDown: Recipe = (chance) => {
  const out = silence(0.48);
  add(out, strike(modes([95, 0.14, 0.9], [170, 0.09, 0.4]), 0.004), 0.01);
  add(out, puff(350, 1500, 0.012, 0.12, chance), 0.01, 0.8);
  add(out, puff(700, 3000, 0.06, 0.32, chance), 0.04, 0.5);
  for (let grain = 0; grain < 22; grain++) {
    const pitchHz = 900 + 1800 * chance();
    const sand = puff(pitchHz, pitchHz * 1.4, 0.001, 0.014, chance);
    const late = chance() * chance();
    add(out, sand, 0.04 + 0.26 * late, (0.25 + 0.25 * chance()) * (1 - 0.8 * late));
  }
  return filter(out, 'low', 3600, 0.707, false);
};

/** A bar of wood under a soft mallet. */
function bar(frequencyHz: number, decayS: number, chance: Chance): Float64Array {
  const wood = modes(
    [frequencyHz, decayS, 0.8],
    [frequencyHz * 2, decayS * 0.5, 0.06],
    [frequencyHz * 3.93, decayS * 0.28, 0.16],
    [frequencyHz * 9.4, decayS * 0.08, 0.03],
  );
  const out = strike(wood, 0.003);
  add(out, puff(250, 1400, 0.002, 0.03, chance), 0, 0.14);
  return out;
}

/** Three wooden notes: up a fifth, and down one step to rest. */
const finish: Recipe = (chance) => {
  const out = silence(1.8);
  add(out, bar(392, 1, chance), 0.004, 0.8);
  add(out, bar(587.33, 0.9, chance), 0.2, 0.7);
  add(out, bar(523.25, 1.35, chance), 0.42, 0.9);
  add(out, bar(261.63, 1.3, chance), 0.425, 0.35);
  return out;
};

/** A small hollow block. */
const cueTick: Recipe = (chance) => {
  const out = silence(0.12);
  add(out, strike(modes([880, 0.07, 0.8], [1420, 0.045, 0.3], [2310, 0.025, 0.1]), 0.0012), 0.004);
  add(out, puff(700, 2600, 0.001, 0.012, chance), 0.004, 0.2);
  return out;
};

/** Recipe and highest peak, the click's first. */
const RECIPES: Readonly<Record<ShotName, readonly [Recipe, number]>> = {
  'shift-click': [shiftClick, 0.84],
  'front-clunk': [frontClunk, 0.44],
  'shift-crunch': [shiftCrunch, 0.42],
  'shift-stop': [shiftStop, 0.36],
  'chain-drop': [chainDrop, 0.42],
  'chain-back': [chainBack, 0.5],
  'foot-down': [footDown, 0.4],
  finish: [finish, 0.3],
  'cue-tick': [cueTick, 0.34],
};

/** One sound from beginning to silence. */
export function renderShot(name: ShotName): Float64Array {
  const seed = [...name].reduce((sum, letter) => Math.imul(sum, 31) + letter.charCodeAt(0), 11);
  const [recipe, peak] = RECIPES[name];
  const out = fadeEnd(filter(recipe(createChance(seed)), 'high', 45, 0.707, false), 0.02);
  const mean = out.reduce((sum, value) => sum + value, 0) / out.length;
  return peakAt(
    fadeEnd(
      out.map((value) => value - mean),
      0.01,
    ),
    peak,
  );
}
