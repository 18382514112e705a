/** Numbers as people of a place read them: decimal comma or point, km/h or mph, metres or feet. */
import type { GearTold } from '../core/model/transmission.ts';
import type { Bike } from '../core/model/types.ts';
import { common } from './common.ts';
import { numberWriter } from './fill.ts';
import { gearName, gearWanted } from './gears.ts';
import { spokenLocale } from './words.ts';

const FEET_PER_M = 3.28084;
export const MPH_PER_MPS = 2.236936;
const KMH_PER_MPS = 3.6;
export const MILES_PER_M = 0.000621371;

/** Ways to write numbers. */
export interface Format {
  readonly number: (value: number, decimals?: number) => string;
  readonly speed: (speedMps: number, decimals?: number) => string;
  /** Short distances in m or ft. */
  readonly distance: (distanceM: number, decimals?: number) => string;
  /** What is measured in metres everywhere, to a centimetre: how far a turn of the pedals carries. */
  readonly metres: (metres: number) => string;
  /** One m or one ft, in which round distances are round (m). */
  readonly unitM: number;
  /** Long distances in km or miles. */
  readonly road: (distanceM: number, decimals?: number) => string;
  /** 0.08 is 8 %. */
  readonly percent: (ratio: number, decimals?: number) => string;
  /** 95 s is 1:35. */
  readonly time: (timeS: number) => string;
  readonly gear: (gear: GearTold) => string;
  /** The gear on the way to which the shifters are, as short as can be. */
  readonly gearWanted: (from: GearTold, to: GearTold) => string;
  readonly teeth: (teeth: readonly number[]) => string;
  /** `50 / 34 · 11–34`, as it stands on the box. */
  readonly parts: (bike: Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>) => string;
  readonly tyre: (bike: Pick<Bike, 'tyreWidthMm' | 'beadSeatMm'>) => string;
}

type Unit = 'kmh' | 'mph' | 'm' | 'ft' | 'km' | 'mi' | 'percent';

/** Formats for units and a language tag such as `de-CH`; without a tag as it is spoken now. */
export function createFormat(units: 'metric' | 'imperial', locale = spokenLocale()): Format {
  const metric = units === 'metric';
  // What is written as nought has no sign: −0.3 m is 0 m. Most languages give a hyphen where a minus belongs.
  const write = (value: number, decimals = 0): string =>
    numberWriter(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals })
      .format(Math.abs(value) * 10 ** decimals < 0.5 ? 0 : value)
      .replace('-', '−');
  const unit = (name: Unit, value: number, decimals = 0): string =>
    common(`unit-${name}`, { value: write(value, decimals) });
  return {
    number: write,
    speed: (mps, decimals) =>
      metric ? unit('kmh', mps * KMH_PER_MPS, decimals) : unit('mph', mps * MPH_PER_MPS, decimals),
    distance: (m, decimals) => (metric ? unit('m', m, decimals) : unit('ft', m * FEET_PER_M, decimals)),
    metres: (m) => unit('m', m, 2),
    unitM: metric ? 1 : 1 / FEET_PER_M,
    road: (m, decimals = 1) =>
      metric ? unit('km', m / 1000, decimals) : unit('mi', m * MILES_PER_M, decimals),
    percent: (ratio, decimals) => unit('percent', ratio * 100, decimals),
    time: (timeS) => {
      const whole = Math.max(0, Math.round(timeS));
      return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
    },
    gear: gearName,
    gearWanted,
    teeth: (teeth) => (teeth.length > 4 ? `${teeth[0]}–${teeth.at(-1)}` : teeth.join(' / ')),
    parts: ({ chainringsTeeth, sprocketsTeeth: teeth }) => {
      const range = [...new Set([teeth[0] ?? 0, teeth.at(-1) ?? 0])].join('–');
      return `${chainringsTeeth.toReversed().join(' / ')} · ${range}`;
    },
    tyre: (bike) => `${bike.tyreWidthMm}-${bike.beadSeatMm}`,
  };
}

/** Regions whose road signs count in miles. */
const MILES_IN = ['GB', 'LR', 'MM', 'US'];

/** Units people of a language tag such as `en-US` read on their roads; metric where the tag names none. */
export function unitsOf(locale: string): 'metric' | 'imperial' {
  try {
    const { region } = new Intl.Locale(locale);
    return region !== undefined && MILES_IN.includes(region) ? 'imperial' : 'metric';
  } catch {
    return 'metric';
  }
}
