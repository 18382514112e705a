/** The pitches of one ride in a table: what came where, beside the best ride, and a way to ride each of them again. */
import type { JSX } from 'preact';
import type { KeptResult } from '../../core/coach/results.ts';
import type { KeptPitch } from '../../core/recorded/kept.ts';
import { Button } from '../../ui/controls.tsx';
import { ScrollBox } from '../../ui/scrollBox.tsx';
import type { Format } from '../../words/format.ts';
import { FootPicture } from './footPicture.tsx';
import type { RoadWords } from './words.ts';

interface Props {
  readonly pitches: readonly KeptPitch[];
  readonly results: readonly KeptResult[];
  /** Rides a pitch again, by its number; null where its road is not at hand. */
  readonly onAgain: ((index: number) => void) | null;
  readonly label: string;
  readonly words: RoadWords;
  readonly format: Format;
}

/** The table. */
export function PitchTable({ pitches, results, onAgain, label, words, format }: Props): JSX.Element {
  const { table } = words;
  const heads = [table.pitch, table.first, table.atFoot, table.cadence, table.best];
  return (
    <ScrollBox class="scroll-table road-scroll" label={label}>
      <table class="road-pitches">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
            {onAgain !== null && <th scope="col">{table.again}</th>}
          </tr>
        </thead>
        <tbody>
          {pitches.map((pitch, i) => (
            <tr
              // Two pitches of a ride may be alike to the last number.
              // oxlint-disable-next-line react/no-array-index-key
              key={i}
              data-pitch={i}
            >
              <PitchCells {...{ pitch, words, format }} game={gameText(pitch, results, words, format)} />
              {onAgain !== null && (
                <td>
                  <Button
                    small
                    aria-label={table.rideThis(nameOf(pitch, words, format))}
                    onClick={() => onAgain(i)}
                  >
                    {table.ride}
                  </Button>
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollBox>
  );
}

function PitchCells(props: {
  readonly pitch: KeptPitch;
  readonly game: string | null;
  readonly words: RoadWords;
  readonly format: Format;
}): JSX.Element {
  const { pitch, game, words, format } = props;
  const { table, picture } = words;
  const { best, firstEasierM, plusMinusM } = pitch;
  const unread = pitch.atFootPercent === null && firstEasierM === null && pitch.plusMinusM === null;
  const number = (value: number | null): string => (value === null ? table.unknown : format.number(value));
  const own = placeText(firstEasierM, plusMinusM, words, format);
  const bestPlace = best === null ? null : placeText(best.firstEasierM, null, words, format);
  return (
    <>
      <th scope="row">{nameOf(pitch, words, format)}</th>
      <td data-label={table.first}>
        <FootPicture
          firstEasierM={firstEasierM}
          plusMinusM={plusMinusM}
          bestM={best?.firstEasierM ?? null}
          said={picture.desc(own, bestPlace)}
        />
        <span>{unread && best?.firstEasierM !== null ? table.unread : own}</span>
      </td>
      <td data-label={table.atFoot}>
        {pitch.atFootPercent === null ? table.unknown : format.percent(pitch.atFootPercent / 100)}
      </td>
      <td data-label={table.cadence}>
        {[pitch.beforeRpm, pitch.footRpm, pitch.lowestRpm].map(number).join(' · ')}
      </td>
      <td data-label={table.best}>
        {best === null || bestPlace === null
          ? table.unknown
          : table.best2(
              bestPlace,
              best.atFootPercent === null ? null : format.percent(best.atFootPercent / 100),
            )}
        {game !== null && <b class="road-game"> {game}</b>}
      </td>
    </>
  );
}

/** `8 %, 120 m`. */
export function nameOf(pitch: KeptPitch, words: RoadWords, format: Format): string {
  return words.table.name(format.percent(pitch.slopePercent / 100), format.distance(pitch.lengthM));
}

/** Where a first easier gear lies, in words. */
export function placeText(
  atM: number | null,
  plusMinusM: number | null,
  { table }: RoadWords,
  format: Format,
): string {
  if (atM === null) return table.none;
  const pm = plusMinusM === null ? null : format.distance(plusMinusM);
  return atM <= 0 ? table.before(format.distance(-atM), pm) : table.after(format.distance(atM), pm);
}

/** The marks of the last ride over the level that was made of a pitch. */
function gameText(
  { levelId }: KeptPitch,
  results: readonly KeptResult[],
  { table }: RoadWords,
  format: Format,
): string | null {
  const last = results
    .filter((result) => levelId !== null && result.levelId === levelId)
    .toSorted((a, b) => b.atMs - a.atMs)[0];
  if (last === undefined) return null;
  const { foresight } = last.marks;
  return table.inGame(
    foresight === null ? table.unknown : format.number(foresight),
    format.number(last.total),
  );
}
