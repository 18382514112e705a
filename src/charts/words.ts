/** Words in, under and beside the strip and in its tables. */
import type { ShiftDirection } from '../core/ride/types.ts';
import { count, type FootPlace, near, pitch } from '../words/counting.ts';

/** English; the same for grown-ups and children unless overridden. */
export const stripWords = {
  pitch,
  strip: {
    title: 'The ride along the road',
    desc: (length: string, shifts: number): string =>
      `Four tracks over ${length} of road: height and gradient, gear, cadence with its band, pedal pressure; ${count(shifts)} shifts.`,
    descClosed: (length: string): string =>
      `Four tracks over ${length} of road: height and gradient, gear, cadence with its band, pedal pressure.`,
    road: 'Road',
    gear: 'Gear',
    harder: 'harder',
    easier: 'easier',
    cadence: 'Cadence',
    pressure: 'Pressure',
    press: 'push',
    steady: 'steady',
    ease: 'soft',
    coast: 'coast',
    you: 'you',
    best: 'best ride',
    band: 'your band',
    marks: { clean: 'clean shift', fair: 'a bit heavy', heavy: 'heavy shift' },
    whole: 'Whole road',
    zoom: 'Show',
    zoomTo: (index: number): string => `Pitch ${index + 1}`,
    footDown: 'foot down',
    chainDropped: 'chain off',
    place: 'Place on the road',
    nextShift: 'Next shift',
    lastShift: 'Shift before',
    watchHere: 'Watch from here',
    shifts: 'Shifts',
    drag: 'Drag or tap.',
    keys: (step: string): string => `Or use ← → (Page keys: ${step}).`,
    jumps: 'N and P jump from shift to shift.',
  },
  read: {
    at: 'At',
    slope: (percent: string, up: 'up' | 'down' | 'flat'): string =>
      up === 'flat' ? 'flat' : `${percent} ${up}`,
    near: (name: string, place: FootPlace): string =>
      `${near(place).replace('the foot', `the foot of ${name}`)}`,
    gear: 'Gear',
    cadence: 'Cadence',
    rpm: (value: string): string => `${value} rpm`,
    coasting: 'coasting',
    standing: 'standing',
    band: (low: string, high: string): string => `band ${low}–${high}`,
    pressure: 'Pressure',
    best: 'Best ride',
    bestHere: (gear: string, cadence: string): string => `${gear}, ${cadence}`,
    shift: 'Shift',
    shiftSays: (
      kind: 'clean' | 'fair' | 'heavy',
      direction: ShiftDirection,
      from: string,
      to: string,
    ): string =>
      `${{ clean: 'clean', fair: 'a bit heavy', heavy: 'heavy' }[kind]}, ${direction}: ${from} to ${to}`,
  },
  table: {
    summary: 'The same in numbers',
    places: (step: string): string => `The ride every ${step}`,
    shifts: 'All shifts',
    place: 'Place',
    slope: 'Gradient',
    gear: 'Gear',
    cadence: 'Cadence (rpm)',
    band: 'Band (rpm)',
    pressure: 'Pressure (%)',
    bestGear: 'Best ride: gear',
    bestCadence: 'Best ride: cadence (rpm)',
    begins: 'Begins at',
    change: 'Change',
    took: 'Took (s)',
    load: 'Load (%)',
    feel: 'Feel',
    kinds: { clean: 'clean', fair: 'a bit heavy', heavy: 'heavy' },
    none: '–',
  },
};

export type StripWords = typeof stripWords;
