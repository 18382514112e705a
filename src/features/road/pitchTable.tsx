/** The pitches of one ride in a table: what came where, beside the best ride, and a way to ride each of them again. */
import type { JSX } from 'preact';
import type { KeptResult } from '../../core/coach/results.ts';
import type { KeptPitch } from '../../core/recorded/kept.ts';
import { Button } from '../../ui/controls.tsx';
import { ScrollBox, TableHead } from '../../ui/tables.tsx';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { useId } from 'preact/hooks';
import { px } from '../../charts/paths.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('road');

interface Props {
  readonly pitches: readonly KeptPitch[];
  readonly results: readonly KeptResult[];
  /** Rides a pitch again, by its number; null where its road is not at hand. */
  readonly onAgain: ((index: number) => void) | null;
  readonly label: string;
  readonly format: Format;
}

const HEADS = ['pitch', 'first', 'atFoot', 'cadence', 'best'] as const;

/** The table, with a small picture of each foot. */
export function PitchTable({ pitches, results, onAgain, label, format }: Props): JSX.Element {
  const heads = HEADS.map((head) => say(`table-${head}`));
  return (
    <ScrollBox class="scroll-table road-scroll" label={label}>
      <table class="card-table">
        <TableHead names={heads}>{onAgain !== null && <th scope="col">{say('table-again')}</th>}</TableHead>
        <tbody>
          {pitches.map((pitch, i) => (
            <tr
              // Two pitches of a ride may be alike to the last number.
              // oxlint-disable-next-line react/no-array-index-key
              key={i}
              data-pitch={i}
            >
              <PitchCells {...{ pitch, format }} game={gameText(pitch, results, format)} />
              {onAgain !== null && (
                <td>
                  <Button
                    aria-label={say('table-rideThis', { pitch: pitchNameOf(pitch, format) })}
                    onClick={() => onAgain(i)}
                  >
                    {say('table-ride')}
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
  readonly format: Format;
}): JSX.Element {
  const { pitch, game, format } = props;
  const { best, firstEasierM, plusMinusM } = pitch;
  const unread = pitch.atFootPercent === null && firstEasierM === null && pitch.plusMinusM === null;
  const number = (value: number | null): string => (value === null ? say('unknown') : format.number(value));
  const own = placeText(firstEasierM, plusMinusM, format);
  const bestPlace = best === null ? null : placeText(best.firstEasierM, null, format);
  return (
    <>
      <th scope="row">{pitchNameOf(pitch, format)}</th>
      <td data-label={say('table-first')}>
        <FootPicture
          firstEasierM={firstEasierM}
          plusMinusM={plusMinusM}
          bestM={best?.firstEasierM ?? null}
          said={pictureText(own, bestPlace)}
        />
        <span>{unread && best?.firstEasierM !== null ? say('table-unread') : own}</span>
      </td>
      <td data-label={say('table-atFoot')}>
        {pitch.atFootPercent === null ? say('unknown') : format.percent(pitch.atFootPercent / 100)}
      </td>
      <td data-label={say('table-cadence')}>
        {[pitch.beforeRpm, pitch.footRpm, pitch.lowestRpm].map(number).join(' · ')}
      </td>
      <td data-label={say('table-best')}>
        {best === null || bestPlace === null
          ? say('unknown')
          : best.atFootPercent === null
            ? bestPlace
            : say('table-bestDone', {
                place: bestPlace,
                share: format.percent(best.atFootPercent / 100),
              })}
        {game !== null && <b class="road-game"> {game}</b>}
      </td>
    </>
  );
}

/** `8 %, 120 m`. */
export function pitchNameOf(pitch: KeptPitch, format: Format): string {
  return say('table-name', {
    slope: format.percent(pitch.slopePercent / 100),
    length: format.distance(pitch.lengthM),
  });
}

/** Where a first easier gear lies, in words. */
export function placeText(atM: number | null, plusMinusM: number | null, format: Format): string {
  if (atM === null) return say('place-none');
  const place = atM <= 0 ? 'place-before' : 'place-after';
  const metres = format.distance(Math.abs(atM));
  return plusMinusM === null
    ? say(place, { metres })
    : say(`${place}Pm`, { metres, pm: format.distance(plusMinusM) });
}

/** What the small picture of a pitch shows, of two places in words. */
export const pictureText = (own: string, best: string | null): string =>
  best === null ? say('picture-desc', { own }) : say('picture-descBest', { own, best });

/** The marks of the last ride over the level that was made of a pitch. */
function gameText({ levelId }: KeptPitch, results: readonly KeptResult[], format: Format): string | null {
  const last = results
    .filter((result) => levelId !== null && result.levelId === levelId)
    .toSorted((a, b) => b.atMs - a.atMs)[0];
  if (last === undefined) return null;
  const { foresight } = last.marks;
  return say('table-inGame', {
    foresight: foresight === null ? say('unknown') : format.number(foresight),
    total: format.number(last.total),
  });
}

/** The paper of a foot (units of its drawing). */
const PAPER = { width: 240, height: 44, ground: 34, edge: 8 };

/** One pitch as a small cut-paper hill: where the first easier gear came, how surely, and where that of the best ride lies. */
export function FootPicture(props: {
  readonly firstEasierM: number | null;
  readonly plusMinusM: number | null;
  readonly bestM: number | null;
  readonly said: string;
}): JSX.Element {
  const { firstEasierM, plusMinusM, bestM, said } = props;
  const id = useId();
  const x = (m: number): number => footX(m, PAPER.width, PAPER.edge);
  const foot = x(0);
  return (
    <svg class="foot-picture" viewBox={`0 0 ${PAPER.width} ${PAPER.height}`} role="img" aria-labelledby={id}>
      <title id={id}>{said}</title>
      <path d={`M0 ${PAPER.ground}H${px(foot)}L${PAPER.width} 12V${PAPER.height}H0Z`} fill="var(--sand)" />
      <Stroke d={`M0 ${PAPER.ground}H${px(foot)}L${PAPER.width} 12`} width={2.4} />
      <path d={`M${px(foot)} ${PAPER.ground + 2}v8`} stroke="var(--ink)" stroke-width="2.4" />
      {bestM !== null && (
        <Stroke
          data-best
          d={`M${px(x(bestM))} ${PAPER.ground - 2}l-6 -12h12Z`}
          colour="var(--ink-soft)"
          width={1.8}
        />
      )}
      {firstEasierM !== null && (
        <g data-own>
          {plusMinusM !== null && (
            <path
              d={`M${px(x(firstEasierM - plusMinusM))} 10H${px(x(firstEasierM + plusMinusM))}`}
              stroke="var(--rider-deep)"
              stroke-width="2"
            />
          )}
          <path d={`M${px(x(firstEasierM))} ${PAPER.ground - 2}l-7 -18h14Z`} fill="var(--rider-deep)" />
        </g>
      )}
    </svg>
  );
}

/** From so far before the foot to so far behind it (m). */
const FROM_M = -100;
const TO_M = 60;

/** A place on the picture, held inside its edges. */
function footX(atM: number, width: number, edge: number): number {
  const held = Math.min(TO_M, Math.max(FROM_M, atM));
  return edge + ((held - FROM_M) / (TO_M - FROM_M)) * (width - 2 * edge);
}
