/** What is said of a whole ride, whether it was just brought or is kept. */
import { writeMonth } from '../../words/dates.ts';
import { MILES_PER_M, type Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';

const say = words('road');

/** A ride by its month, where that is known, and its length in whole units: that is all that is kept of it. */
export function titleOf(month: string | null, lengthKm: number, format: Format): string {
  const length = format.road(lengthKm * 1000, 0);
  return month === null
    ? say('ride-titleNoMonth', { length })
    : say('ride-title', { month: writeMonth(month), length });
}

/** How much of it could be read, as a share, and how many pitches were found. */
export function summaryText(readableShare: number, found: number, format: Format): string {
  return say('ride-summary', { readable: format.percent(readableShare), found });
}

/** Changes of gear a km, and the share of the pedalled time in the band; what is null is left out. */
export function habitsText(changesPerKm: number | null, shareInBand: number | null, format: Format): string {
  return [
    changesPerKm === null ? '' : changesText(changesPerKm, format),
    shareInBand === null ? '' : say('ride-inBand', { share: format.percent(shareInBand) }),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function changesText(perKm: number, format: Format): string {
  return format.unitM === 1
    ? say('ride-changes', { per: 'km', changes: format.number(perKm, 1) })
    : say('ride-changes', { per: 'mile', changes: format.number(perKm / (1000 * MILES_PER_M), 1) });
}
