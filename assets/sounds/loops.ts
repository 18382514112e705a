/**
 * Recipes of the sounds that go on: one turn of each circle. How loud and how fast they play is up to
 * the ride; here they are only made even, soft and free of a seam.
 */
import {
  FREEWHEEL_TICKS_PER_S,
  HUM_CADENCE_RPM,
  LOOPS,
  type LoopName,
  RUB_CADENCE_RPM,
} from '../../src/audio/sounds.ts';
import {
  add,
  bandNoise,
  type Chance,
  createChance,
  filter,
  normalise,
  puff,
  SAMPLE_RATE_HZ,
  shape,
  silence,
  soften,
  strike,
  sway,
} from './synthesis.ts';

type Recipe = (seconds: number, chance: Chance) => Float64Array;

/** Rubber on asphalt: a low purr with a little grain, swelling faintly as the wheel goes round. */
const tyreRoll: Recipe = (seconds, chance) => {
  const out = shape(bandNoise(seconds, 130, 420, chance), sway(seconds, 5, 0.85, 1.05));
  add(out, shape(bandNoise(seconds, 500, 1300, chance), sway(seconds, 11, 0.7, 1)), 0, 0.42);
  add(out, bandNoise(seconds, 1500, 3200, chance), 0, 0.1);
  return normalise(filter(out, 'low', 2600), 0.13);
};

/** Air past the ears: three bands that swell at their own pace. */
const wind: Recipe = (seconds, chance) => {
  const out = shape(bandNoise(seconds, 110, 260, chance), sway(seconds, 1, 0.55, 1));
  add(out, shape(bandNoise(seconds, 260, 620, chance), sway(seconds, 2, 0.4, 1, 0.3)), 0, 0.75);
  add(out, shape(bandNoise(seconds, 700, 1500, chance), sway(seconds, 3, 0.2, 1, 0.6)), 0, 0.22);
  return normalise(filter(out, 'low', 1700), 0.12);
};

/** Loose stones: a soft bed and many small knocks of different size. */
const gravel: Recipe = (seconds, chance) => {
  const out = normalise(bandNoise(seconds, 180, 900, chance), 0.11);
  const stones = Math.round(seconds * 85);
  for (let i = 0; i < stones; i++) {
    const size = chance();
    const pitchHz = 650 + 2300 * (1 - size) * (0.6 + 0.8 * chance());
    const stone = puff(pitchHz * 0.8, pitchHz * 1.3, 0.0012, 0.012 + 0.03 * size, chance);
    const loudness = 0.12 + 0.5 * chance() * chance();
    add(out, stone, ((i + chance()) / stones) * seconds, loudness, true);
  }
  return normalise(soften(filter(out, 'low', 4200), 1.2), 0.11);
};

/** Chain over teeth: a warm tone on the links, leaning a little with each push of a pedal. */
const drivetrainHum: Recipe = (seconds, chance) => {
  const turns = (HUM_CADENCE_RPM / 60) * seconds;
  const linksHz = (34 * HUM_CADENCE_RPM) / 60;
  const partials: readonly (readonly [number, number])[] = [
    [2, 0.5],
    [3, 0.16],
    [4, 0.3],
    [6, 0.1],
    [8, 0.05],
  ];
  const out = silence(seconds).map((_, i) => {
    const timeS = i / SAMPLE_RATE_HZ;
    return partials.reduce(
      (sum, [n, gain]) => sum + gain * Math.sin(2 * Math.PI * linksHz * n * timeS + n * n),
      0,
    );
  });
  const whirr = shape(bandNoise(seconds, 700, 1900, chance), sway(seconds, linksHz * seconds, 0.5, 1));
  add(out, whirr, 0, 0.35);
  add(out, bandNoise(seconds, 220, 480, chance), 0, 0.3);
  return normalise(shape(out, sway(seconds, 2 * turns, 0.75, 1)), 0.09);
};

/** One pawl falling into its notch. */
function pawl(tone: number, chance: Chance): Float64Array {
  const out = strike(
    [
      { frequencyHz: 1150 * tone, decayS: 0.01, gain: 0.35 },
      { frequencyHz: 2350 * tone, decayS: 0.012, gain: 0.4 },
      { frequencyHz: 3620 * tone, decayS: 0.009, gain: 0.24 },
      { frequencyHz: 5400 * tone, decayS: 0.005, gain: 0.1 },
    ],
    0.0005,
  );
  add(out, puff(1800, 5200, 0.0006, 0.005, chance), 0, 0.25);
  return out;
}

/** Ticks of a freewheel, even in time, each a little different as pawls and notches are. */
function freewheel(ticksPerS: number, tone: number, rms: number): Recipe {
  return (seconds, chance) => {
    const out = silence(seconds);
    const count = Math.round(ticksPerS * seconds);
    for (let i = 0; i < count; i++) {
      const own = pawl(tone * (1 + 0.03 * (i % 2) + 0.025 * (chance() - 0.5)), chance);
      const wobbleS = 0.0008 * chance();
      add(out, own, i / ticksPerS + wobbleS, (i % 2 === 0 ? 1 : 0.8) * (0.85 + 0.15 * chance()), true);
    }
    return normalise(out, rms);
  };
}

/** The chain climbing and falling back: dull teeth over a rasp. */
const shiftGrind: Recipe = (seconds, chance) => {
  const out = shape(bandNoise(seconds, 380, 1500, chance), sway(seconds, 26, 0.25, 1));
  const teeth = Math.round(seconds * 22);
  for (let i = 0; i < teeth; i++) {
    const tone = 0.9 + 0.25 * chance();
    const tooth = strike(
      [
        { frequencyHz: 340 * tone, decayS: 0.035, gain: 0.7 },
        { frequencyHz: 910 * tone, decayS: 0.025, gain: 0.5 },
        { frequencyHz: 1730 * tone, decayS: 0.014, gain: 0.25 },
      ],
      0.0015,
    );
    add(out, tooth, ((i + 0.35 * chance()) / teeth) * seconds, 0.5 + 0.5 * chance(), true);
  }
  return normalise(soften(filter(out, 'low', 2800), 0.9), 0.1);
};

/** A plate brushing the cage: a dry breath, once for each half turn of the cranks. */
const chainRub: Recipe = (seconds, chance) => {
  const halves = 2 * (RUB_CADENCE_RPM / 60) * seconds;
  const links = Math.round(51 * seconds);
  const breath = shape(bandNoise(seconds, 1300, 3000, chance), sway(seconds, halves, 0.25, 1));
  const out = shape(breath, sway(seconds, links, 0.55, 1));
  const edge = filter(bandNoise(seconds, 600, 4000, chance), 'band', 2150, 7);
  add(out, shape(normalise(edge, 0.25), sway(seconds, halves, 0.1, 1, 0.1)), 0, 0.35);
  return normalise(filter(out, 'low', 3800), 0.075);
};

/** Pads on a rim: a soft hush that comes round with the wheel, no squeal. */
const brake: Recipe = (seconds, chance) => {
  const out = shape(bandNoise(seconds, 480, 1500, chance), sway(seconds, 6, 0.7, 1));
  add(out, normalise(filter(bandNoise(seconds, 300, 1200, chance), 'band', 620, 5), 0.25), 0, 0.3);
  add(out, bandNoise(seconds, 1700, 3300, chance), 0, 0.16);
  return normalise(out, 0.085);
};

const RECIPES: Readonly<Record<LoopName, Recipe>> = {
  'tyre-roll': tyreRoll,
  wind,
  gravel,
  'drivetrain-hum': drivetrainHum,
  'freewheel-slow': freewheel(FREEWHEEL_TICKS_PER_S['freewheel-slow'], 1, 0.022),
  'freewheel-medium': freewheel(FREEWHEEL_TICKS_PER_S['freewheel-medium'], 1, 0.034),
  'freewheel-fast': freewheel(FREEWHEEL_TICKS_PER_S['freewheel-fast'], 1, 0.048),
  'shift-grind': shiftGrind,
  'chain-rub': chainRub,
  brake,
};

/** One period of a loop: its last sample is followed by its first. */
export function renderLoop(name: LoopName): Float64Array {
  const seed = [...name].reduce((sum, letter) => Math.imul(sum, 31) + letter.charCodeAt(0), 7);
  const period = RECIPES[name](LOOPS[name].periodMs / 1000, createChance(seed));
  const mean = period.reduce((sum, value) => sum + value, 0) / period.length;
  return period.map((value) => value - mean);
}
