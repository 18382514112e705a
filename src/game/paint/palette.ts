/**
 * The few tones a scene is cut from, per light and theme. Rider and attention colours are the only loud
 * ones; gradient is never told by colour, so no tone here depends on the road.
 */
import type { OutfitLook } from '../../core/settings/outfit.ts';
import type { Look, Scenery } from '../engine/types.ts';
import { mix } from './sheet.ts';

type Hills = readonly [string, string, string, string];

const DAY = {
  skyTop: '#dfe6dc',
  skyMiddle: '#f1e9d6',
  skyLow: '#f7dcb8',
  sun: '#fbf1d8',
  cloud: '#fbf5e6',
  /** From the farthest sheet to the nearest. */
  hills: ['#cdd4c4', '#aec2b3', '#86a698', '#5d8479'] as Hills,
  /** Haze over the lower part of a hill sheet, so the next one stands out. */
  haze: '#f3e6cd',
  verge: '#6f9480',
  vergeDark: '#3f6a60',
  earth: '#335b54',
  earthDeep: '#284a46',
  road: '#f4e9d3',
  roadEdge: '#fffaf0',
  sand: '#d9c8a8',
  hatch: '#22303a',
  paper: '#fff8ec',
  ink: '#22303a',
  inkSoft: '#3c4b54',
  attention: '#f0a51e',
  /** Colour of the shadow a sheet throws on the one behind it. */
  shadow: '#1d2f2f',
  /** How strong sheets shade each other, 0 to 1. */
  shadowAlpha: 0.34,
  grainAlpha: 0.11,
};

/** Tones of one scene. */
export type Palette = Readonly<typeof DAY>;

const EVENING: Palette = {
  ...DAY,
  skyTop: '#6f6880',
  skyMiddle: '#c98d78',
  skyLow: '#f2bd84',
  sun: '#fbdca4',
  cloud: '#d9a48c',
  hills: ['#b98a80', '#8d7079', '#685d70', '#4a4d64'],
  haze: '#dc9c7c',
  verge: '#566078',
  vergeDark: '#363f56',
  earth: '#2b3449',
  earthDeep: '#20283a',
  road: '#edd5b4',
  roadEdge: '#fbe8c9',
  sand: '#c7a988',
  hatch: '#1c2330',
  ink: '#1c2330',
  inkSoft: '#333a4a',
  shadow: '#1a1626',
  shadowAlpha: 0.42,
};

const MIST: Palette = {
  ...DAY,
  skyTop: '#e4e6e1',
  skyMiddle: '#ebeae3',
  skyLow: '#f1ece0',
  sun: '#f8f4e8',
  cloud: '#f3f1ea',
  hills: ['#dfe2db', '#d0d7d0', '#b9c6bf', '#9aafa7'],
  haze: '#eeece4',
  verge: '#8aa197',
  vergeDark: '#5f7c74',
  earth: '#4f6c67',
  earthDeep: '#425d59',
  sand: '#d6cbb5',
  shadow: '#3a4c4c',
  shadowAlpha: 0.22,
};

const FIELD: Palette = {
  ...DAY,
  skyTop: '#ffffff',
  skyMiddle: '#ffffff',
  skyLow: '#fbf8f0',
  sun: '#f3efe2',
  cloud: '#f1f1ec',
  hills: ['#eceeea', '#d8ded9', '#bcc9c3', '#96aaa3'],
  haze: '#ffffff',
  verge: '#5c7d72',
  vergeDark: '#2e4a46',
  earth: '#22373a',
  earthDeep: '#192a2d',
  road: '#ffffff',
  roadEdge: '#ffffff',
  sand: '#eadfc6',
  hatch: '#101a20',
  ink: '#101a20',
  inkSoft: '#2a363d',
  shadowAlpha: 0.26,
  grainAlpha: 0.05,
};

const FOREST: Palette = {
  ...DAY,
  skyTop: '#d3e2d2',
  skyMiddle: '#e9ecd0',
  skyLow: '#f6e2a6',
  sun: '#fff5d2',
  cloud: '#f2f2dd',
  hills: ['#b9c9a4', '#84a384', '#4d7a62', '#2c5546'],
  haze: '#e4e2b4',
  verge: '#5b7d4d',
  vergeDark: '#2f5139',
  earth: '#54402f',
  earthDeep: '#412f24',
};

const COAST: Palette = {
  ...DAY,
  skyTop: '#bfdff0',
  skyMiddle: '#e0f0f2',
  skyLow: '#fff0d2',
  sun: '#fff8e2',
  cloud: '#ffffff',
  hills: ['#a8c2bf', '#6fb0c6', '#d8c695', '#b9ae74'],
  haze: '#eef3e6',
  verge: '#b9b873',
  vergeDark: '#7c8a55',
  earth: '#a8824f',
  earthDeep: '#8a683e',
  sand: '#eddcb2',
};

const MOOR: Palette = {
  ...DAY,
  skyTop: '#c3cfdc',
  skyMiddle: '#e0e0de',
  skyLow: '#f2e2cc',
  sun: '#f8efd8',
  cloud: '#efeeea',
  hills: ['#c2bac6', '#a493ae', '#8a6c92', '#705478'],
  haze: '#ded2d2',
  verge: '#96855a',
  vergeDark: '#63505c',
  earth: '#47363f',
  earthDeep: '#36282f',
};

const PASS: Palette = {
  ...DAY,
  skyTop: '#9fc6e4',
  skyMiddle: '#d3e4ef',
  skyLow: '#f4efe6',
  sun: '#fffbe8',
  cloud: '#ffffff',
  hills: ['#a9bdd2', '#8299b3', '#667f98', '#8fa5b6'],
  haze: '#e4edf3',
  verge: '#eef4f7',
  vergeDark: '#b3c5d1',
  earth: '#6d7987',
  earthDeep: '#55606d',
  sand: '#e0d9ca',
};

const TOWN: Palette = {
  ...DAY,
  skyTop: '#d5dee6',
  skyMiddle: '#efe8dc',
  skyLow: '#f8ddbd',
  hills: ['#c9c4c8', '#b9a9a6', '#a8877d', '#8d9188'],
  haze: '#efe2d2',
  verge: '#8f9890',
  vergeDark: '#5f6a66',
  earth: '#5d5a5c',
  earthDeep: '#494649',
};

/** Town at dusk: the sky is the darkest there is, and the windows are lit. */
const TOWN_EVENING: Palette = {
  ...EVENING,
  skyTop: '#3b4168',
  skyMiddle: '#85688c',
  skyLow: '#f0a873',
  sun: '#fbe9bf',
  cloud: '#8d7896',
  hills: ['#7a6a8c', '#5f567c', '#484568', '#3a3a58'],
  haze: '#bb8890',
  verge: '#5c6076',
  vergeDark: '#3a3f58',
  earth: '#3b3d52',
  earthDeep: '#2c2e42',
};

const BY_DAY: Readonly<Record<Scenery['place'], Palette>> = {
  valley: DAY,
  forest: FOREST,
  coast: COAST,
  moor: MOOR,
  pass: PASS,
  town: TOWN,
};

/** How much of the land's own colour is left in the evening and in mist. */
const OWN_AT_EVENING = 0.42;
const OWN_IN_MIST = 0.45;

const OF_LAND = [
  'skyTop',
  'skyMiddle',
  'skyLow',
  'sun',
  'cloud',
  'haze',
  'verge',
  'vergeDark',
  'earth',
  'earthDeep',
  'sand',
] as const;

/** A land in another light: the light's tones with some of the land's own in them; ink, paper and road stay the light's. */
function underLight(land: Palette, light: Palette, own: number): Palette {
  const tones = Object.fromEntries(OF_LAND.map((name) => [name, mix(light[name], land[name], own)]));
  const hill = (depth: 0 | 1 | 2 | 3): string => mix(light.hills[depth], land.hills[depth], own);
  const hills = [hill(0), hill(1), hill(2), hill(3)] as const;
  return { ...light, ...tones, hills };
}

/** The tones of a land in its light; the field theme stays white whatever the hour, for the sake of sunlight. */
export function paletteFor(
  { place, light }: Pick<Scenery, 'place' | 'light'>,
  theme: Look['theme'],
): Palette {
  if (theme === 'field') return FIELD;
  const land = BY_DAY[place];
  if (light === 'day') return land;
  if (light === 'evening' && place === 'town') return TOWN_EVENING;
  if (place === 'valley') return light === 'evening' ? EVENING : MIST;
  return light === 'evening'
    ? underLight(land, EVENING, OWN_AT_EVENING)
    : underLight(land, MIST, OWN_IN_MIST);
}

const ADULT = {
  jersey: '#e2552c',
  jerseyDark: '#b93f1e',
  jerseyLight: '#f0764a',
  shorts: '#2a3741',
  shortsDark: '#1b262e',
  skin: '#d9a27c',
  skinDark: '#b37d5b',
  sock: '#fff8ec',
  shoe: '#f3e6cf',
  helmet: '#fff8ec',
  helmetBand: '#e2552c',
  hair: '#4a352b',
  frame: '#22303a',
  frameLight: '#51626d',
};

/** Tones of the person on the bike. */
export type RiderTones = Readonly<Record<keyof typeof ADULT, string>>;

const CHILD: RiderTones = {
  ...ADULT,
  shorts: '#3d6f8a',
  shortsDark: '#2c5268',
  skin: '#c78d66',
  skinDark: '#a06c4a',
  sock: '#f6cf6b',
  helmet: '#f6cf6b',
  helmetBand: '#2c5268',
  frame: '#2f6f78',
  frameLight: '#69a5a8',
};

/** Tones of the rider in their kit; the jersey stays the one strong accent, and the helmet takes it up. */
export function riderTones(child: boolean, { jersey, frame }: OutfitLook): RiderTones {
  const own = child ? CHILD : ADULT;
  return {
    ...own,
    jersey: jersey.tone,
    jerseyDark: jersey.dark,
    jerseyLight: jersey.light,
    helmetBand: child ? own.helmetBand : jersey.tone,
    frame: frame?.tone ?? own.frame,
    frameLight: frame?.light ?? own.frameLight,
  };
}

/**
 * Tones of the instruments' drawings: `--paper`, `--ink` and so on as they apply to `element`. The fallbacks are those of
 * `hud.css`.
 */
export function readTones(element: HTMLElement) {
  const style = getComputedStyle(element);
  const read = (name: string, fallback: string) => style.getPropertyValue(name).trim() || fallback;
  return {
    paper: read('--paper', '#fff8ec'),
    ink: read('--ink', '#22303a'),
    sand: read('--sand', '#d9ccb2'),
    sandDark: read('--sand-dark', '#8f8168'),
    rider: read('--rider', '#e2552c'),
    attention: read('--attention', '#f0a51e'),
  };
}

/** Tones of the instruments' drawings. */
export type MachineTones = Readonly<ReturnType<typeof readTones>>;
