/** Short words for pieces of road, for what lies on it, and for places; and the units all of the bench is written in. */
import { createContext } from 'preact';
import { useContext, useState } from 'preact/hooks';
import { HARDEST_M } from '../../core/gpx/hardest.ts';
import type { LevelPiece, PlacedList } from '../../core/level/edit.ts';
import type { Level } from '../../core/level/schema.ts';
import { gearOf } from '../../core/model/transmission.ts';
import type { GearPlace, Machine } from '../../core/model/types.ts';
import { common } from '../../words/common.ts';
import { cueText } from '../../words/cues.ts';
import { createFormat, type Format, MPH_PER_MPS } from '../../words/format.ts';
import { gearName } from '../../words/gears.ts';
import { words } from '../../words/words.ts';
import type { LevelField } from './fields.ts';

const say = words('bench');

/** Units of the person at the bench; levels themselves are in metres. */
export const Units = createContext<'metric' | 'imperial'>('metric');
/** How numbers are written at the bench. */
export const useFormat = (): Format => createFormat(useContext(Units));

/** What was told last, said anew whenever it is drawn, and how to tell something else. */
export function useTold(first = (): string => '') {
  const [told, setTold] = useState(() => first);
  return [told(), (next: () => string): void => setTold(() => next)] as const;
}

/** Why something was not saved, by the code of the keeping. */
export function notKept(code: string): string {
  const name = `keep-${code}`;
  return say.has(name) ? say(name) : say('keep-failed');
}

/** A gradient as it is set: to a tenth where it has one. */
function slopeText(format: Format, ratio: number): string {
  // A hundred times 0.07 is a little more than 7.
  return format.percent(ratio, decimals(Number((ratio * 100).toFixed(1))));
}

/** The gradient of a piece that has one for all of it: `−7 %`. */
export function pieceSlope(piece: Extract<LevelPiece, { slopeRatio: number }>, format: Format): string {
  const { kind, slopeRatio } = piece;
  return slopeText(format, kind === 'descent' ? -Math.abs(slopeRatio) : slopeRatio);
}

/** `80 m, 7 %`. */
export function pieceNumbers(piece: LevelPiece, format: Format): string {
  switch (piece.kind) {
    case 'flat':
      return format.distance(piece.lengthM);
    case 'climb':
    case 'pitch':
    case 'descent':
      return say('facts-sloped', {
        length: format.distance(piece.lengthM),
        slope: pieceSlope(piece, format),
      });
    case 'rollers':
      return say('facts-rollers', {
        length: format.distance(piece.lengthM),
        slope: slopeText(format, piece.steepestRatio),
      });
    case 'random-pitches':
      return say('facts-random-pitches', {
        length: format.distance(piece.lengthM),
        count: piece.pitchCount,
        slope: slopeText(format, piece.steepestRatio),
      });
    case 'recorded':
      return format.road(piece.stepM * (piece.heightsM.length - 1));
  }
}

/** `120 m`, `120 to 180 m, gravel` or `120 to 180 m, sight 30 m`. */
export function placedNumbers(level: Level, list: PlacedList, index: number, format: Format): string {
  const on = (one: { readonly fromM: number; readonly toM: number } | undefined, what: string): string =>
    one === undefined ? '' : say('placed-stretch', { stretch: rangeText(format, one.fromM, one.toM), what });
  switch (list) {
    case 'stopLinesM':
      return format.distance(level.stopLinesM[index] ?? 0);
    case 'winds':
      return on(level.winds[index], windWords(format, level.winds[index]?.windMps ?? 0));
    case 'surfaces':
      return on(level.surfaces[index], say(`surface-${level.surfaces[index]?.surface ?? 'gravel'}`));
    case 'hidden':
      return on(
        level.hidden[index],
        say('placed-sight', { sight: format.distance(level.hidden[index]?.sightM ?? 0) }),
      );
    case 'cues': {
      const cue = level.cues[index];
      if (cue === undefined) return '';
      const text = 'cue' in cue ? cueText(cue.cue) : cue.text;
      return say('placed-cue', { at: format.distance(cue.atM), cue: text });
    }
  }
}

/** `head wind 5 m/s`. */
export function windWords(format: Format, windMps: number): string {
  const value = Math.abs(windMps);
  return say('wind', {
    way: windMps >= 0 ? 'head' : 'tail',
    speed: fieldValue(format, { unit: 'mps', value }),
  });
}

/** `120 to 180 m`. */
function rangeText(format: Format, fromM: number, toM: number): string {
  return say('range', { low: bareLength(format, fromM), high: format.distance(toM) });
}

/** A length in whole units without their name, where the name follows behind. */
export const bareLength = (format: Format, lengthM: number): string => format.number(lengthM / format.unitM);

/** How long the hardest stretch of a recorded road is: a round number of kilometres, and so none of miles. */
export const hardestLength = (format: Format): string => format.road(HARDEST_M, format.unitM === 1 ? 0 : 1);

/** What a field is typed in. */
interface TypedIn {
  readonly name: string;
  /** So many of it are one of what levels are kept in. */
  readonly perOne: number;
  readonly decimals: number;
  /** The arrows of the field go so many of it for one of what levels are kept in: a round number, unlike `perOne`. */
  readonly stepPerOne: number;
}

/** In what a number of a level is typed and read. */
export function typedIn(format: Format, unit: LevelField['unit']): TypedIn {
  const nameOf = (name: 'm' | 'ft' | 'mph' | 'percent'): string =>
    common(`unit-${name}`, { value: '' }).trim();
  const same = { perOne: 1, decimals: 1, stepPerOne: 1 };
  const isMetric = format.unitM === 1;
  switch (unit) {
    case 'm':
      return isMetric
        ? { ...same, name: nameOf('m') }
        : { name: nameOf('ft'), perOne: 1 / format.unitM, decimals: 0, stepPerOne: 4 };
    case 'mps':
      return isMetric
        ? { ...same, name: say('wind-mps', { value: '' }).trim() }
        : { name: nameOf('mph'), perOne: MPH_PER_MPS, decimals: 1, stepPerOne: 2 };
    case 'percent':
      return { ...same, name: nameOf('percent') };
    case 'count':
      return { ...same, name: '' };
  }
}

/** A field's value with its unit. */
export function fieldValue(format: Format, { unit, value }: Pick<LevelField, 'unit' | 'value'>): string {
  switch (unit) {
    case 'm':
      return format.distance(value, format.unitM === 1 ? decimals(value) : 0);
    case 'mps': {
      if (format.unitM !== 1) return format.speed(value);
      return say('wind-mps', { value: format.number(value, decimals(value)) });
    }
    case 'percent':
      return format.percent(value / 100, decimals(value));
    case 'count':
      return format.number(value);
  }
}

/** The gear of a place. */
export function gearWords(machine: Machine, place: GearPlace): string {
  return gearName(gearOf(machine, place));
}

function decimals(value: number): number {
  return Number.isInteger(value) ? 0 : 1;
}
