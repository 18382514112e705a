/** Numbers as people of a place read them: decimal comma or point, km/h or mph, metres or feet. */
import type { Bike } from '../core/model/types.ts';
import { common } from './common.ts';
import { numberWriter } from './fill.ts';
import { gearName, gearWanted } from './gears.ts';
import { spokenLocale } from './words.ts';

const FEET_PER_M = 3.28084;
export const MPH_PER_MPS = 2.236936;
const KMH_PER_MPS = 3.6;
export const MILES_PER_M = 0.000621371;

type Unit = 'kmh' | 'mph' | 'm' | 'ft' | 'km' | 'mi' | 'percent';

/** Formats for units and a language tag such as `de-CH`; without a tag as it is spoken now. */
export function createFormat(units: 'metric' | 'imperial', locale = spokenLocale()) {
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
    speed: (mps: number, decimals?: number): string =>
      metric ? unit('kmh', mps * KMH_PER_MPS, decimals) : unit('mph', mps * MPH_PER_MPS, decimals),
    /** Short distances in m or ft. */
    distance: (m: number, decimals?: number): string =>
      metric ? unit('m', m, decimals) : unit('ft', m * FEET_PER_M, decimals),
    /** What is measured in metres everywhere, to a centimetre: how far a turn of the pedals carries. */
    metres: (m: number): string => unit('m', m, 2),
    /** One m or one ft, in which round distances are round (m). */
    unitM: metric ? 1 : 1 / FEET_PER_M,
    /** Long distances in km or miles. */
    road: (m: number, decimals = 1): string =>
      metric ? unit('km', m / 1000, decimals) : unit('mi', m * MILES_PER_M, decimals),
    /** 0.08 is 8 %. */
    percent: (ratio: number, decimals?: number): string => unit('percent', ratio * 100, decimals),
    /** 95 s is 1:35. */
    time: (timeS: number): string => {
      const whole = Math.max(0, Math.round(timeS));
      return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
    },
    gear: gearName,
    /** The gear on the way to which the shifters are, as short as can be. */
    gearWanted,
    teeth: (teeth: readonly number[]): string =>
      teeth.length > 4 ? `${teeth[0]}–${teeth.at(-1)}` : teeth.join(' / '),
    /** `50 / 34 · 11–34`, as it stands on the box. */
    parts: ({
      chainringsTeeth,
      sprocketsTeeth: teeth,
    }: Pick<Bike, 'chainringsTeeth' | 'sprocketsTeeth'>): string => {
      const range = [...new Set([teeth[0] ?? 0, teeth.at(-1) ?? 0])].join('–');
      return `${chainringsTeeth.toReversed().join(' / ')} · ${range}`;
    },
    tyre: (bike: Pick<Bike, 'tyreWidthMm' | 'beadSeatMm'>): string =>
      `${bike.tyreWidthMm}-${bike.beadSeatMm}`,
  };
}
export type Format = ReturnType<typeof createFormat>;

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
