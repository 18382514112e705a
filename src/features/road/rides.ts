/** What is said of a whole ride, whether it was just brought or is kept. */
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { monthText } from './months.ts';

const say = words('road');

/** A ride by its month, where that is known, and its length as it is written. */
export function titleOf(month: string | null, length: string): string {
  return month === null
    ? say('ride-titleNoMonth', { length })
    : say('ride-title', { month: monthText(month), length });
}

/** How much of it could be read, as a share, and how many pitches were found. */
export function summaryText(readableShare: number, found: number, format: Format): string {
  return say('ride-summary', { readable: format.percent(readableShare), found });
}

/** Changes of gear a km, and the share of the pedalled time in the band; what is null is left out. */
export function habitsText(changesPerKm: number | null, shareInBand: number | null, format: Format): string {
  return [
    changesPerKm === null ? '' : say('ride-changes', { changes: format.number(changesPerKm, 1) }),
    shareInBand === null ? '' : say('ride-inBand', { share: format.percent(shareInBand) }),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}
