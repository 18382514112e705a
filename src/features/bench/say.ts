/** Short words for pieces of road, for what lies on it, and for places; made of the bench's words and numbers. */
import type { LevelPiece, PlacedList } from '../../core/level/edit.ts';
import type { Level } from '../../core/level/schema.ts';
import { gearOf } from '../../core/model/transmission.ts';
import type { GearPlace, Machine } from '../../core/model/types.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { benchWords } from './words.ts';
import type { LevelField } from './fields.ts';
import { cueText } from '../../words/cues.ts';

/** Level files are in metres, so the bench is too. */
export const metric: Format = createFormat('metric');

/** `80 m, 7 %`. */
export function pieceNumbers(piece: LevelPiece): string {
  const percent = (ratio: number): string => {
    // A hundred times 0.07 is a little more than 7.
    const value = Number((ratio * 100).toFixed(1));
    return `${metric.number(value, decimals(value))} %`;
  };
  switch (piece.kind) {
    case 'flat':
      return metric.distance(piece.lengthM);
    case 'climb':
    case 'pitch':
      return `${metric.distance(piece.lengthM)}, ${percent(piece.slopeRatio)}`;
    case 'descent':
      return `${metric.distance(piece.lengthM)}, −${percent(Math.abs(piece.slopeRatio))}`;
    case 'rollers':
      return `${metric.distance(piece.lengthM)}, ≤ ${percent(piece.steepestRatio)}`;
    case 'random-pitches':
      return `${metric.distance(piece.lengthM)}, ${piece.pitchCount} × ≤ ${percent(piece.steepestRatio)}`;
    case 'recorded':
      return metric.road(piece.stepM * (piece.heightsM.length - 1));
  }
}

/** `120 m` or `120 to 180 m, gravel`. */
export function placedNumbers(level: Level, list: PlacedList, index: number): string {
  switch (list) {
    case 'stopLinesM':
      return metric.distance(level.stopLinesM[index] ?? 0);
    case 'winds': {
      const wind = level.winds[index];
      return wind === undefined ? '' : `${stretch(wind)}, ${windWords(wind.windMps)}`;
    }
    case 'surfaces': {
      const one = level.surfaces[index];
      return one === undefined ? '' : `${stretch(one)}, ${benchWords.surfaces[one.surface]}`;
    }
    case 'hidden': {
      const one = level.hidden[index];
      return one === undefined ? '' : `${stretch(one)}, ${metric.distance(one.sightM)}`;
    }
    case 'cues': {
      const cue = level.cues[index];
      if (cue === undefined) return '';
      return `${metric.distance(cue.atM)}: ${'cue' in cue ? cueText(cue.cue) : cue.text}`;
    }
  }
}

/** `head wind 5 m/s`. */
export function windWords(windMps: number): string {
  const name = windMps >= 0 ? benchWords.headWind : benchWords.tailWind;
  return `${name} ${metric.number(Math.abs(windMps), decimals(windMps))} ${benchWords.units.mps}`;
}

/** A field's value with its unit. */
export function fieldValue({ unit, value }: Pick<LevelField, 'unit' | 'value'>): string {
  return `${metric.number(value, decimals(value))} ${benchWords.units[unit]}`.trim();
}

/** The gear of a place. */
export function gearWords(machine: Machine, place: GearPlace): string {
  return metric.gear(gearOf(machine, place));
}

function stretch({ fromM, toM }: { readonly fromM: number; readonly toM: number }): string {
  return benchWords.edit.range(metric.number(Math.round(fromM)), metric.distance(toM));
}

function decimals(value: number): number {
  return Number.isInteger(value) ? 0 : 1;
}
