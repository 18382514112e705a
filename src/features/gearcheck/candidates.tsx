/** Other parts as a table, the own bike on top: what each would change, what it trades, and a way to try it. */
import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import {
  type GearCandidate,
  type GearOutcome,
  type GearParts,
  sortCandidates,
} from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import type { Format } from '../../words/format.ts';
import { SideBySide } from './sideBySide.tsx';
import type { GearCheckWords } from './words.ts';
import type { CheckState } from './state.ts';

/** More rows than this are folded away. */
const SHOWN = 5;

interface Speech {
  readonly words: GearCheckWords;
  readonly format: Format;
}

export type TakeParts = (parts: GearParts) => void;

/** The table with its head and the caution. */
export function Candidates(
  props: Speech & { readonly state: CheckState; readonly onTake: TakeParts },
): JSX.Element {
  const { state, words, format, onTake } = props;
  const id = useId();
  const [all, setAll] = useState(false);
  const sorted = useMemo(() => sortCandidates(state.candidates), [state.candidates]);
  const { candidates: say } = words;
  return (
    <section class="paper" aria-labelledby={id} data-gear-candidates>
      <h2 id={id}>{say.title}</h2>
      <p class="quiet">
        {say.hint} <output>{countText(state, words)}</output>
      </p>
      {state.own !== null && (
        <PartsTable
          own={state.own}
          candidates={sorted.slice(0, all ? undefined : SHOWN)}
          {...{ words, format, onTake }}
        />
      )}
      {sorted.length > SHOWN && (
        <Button small aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say.fewer : say.all(sorted.length)}
        </Button>
      )}
      <p class="gear-caution">{words.caution}</p>
    </section>
  );
}

function countText({ candidates, status }: CheckState, words: GearCheckWords): string {
  if (status === 'failed') return '';
  if (status === 'done' && candidates.length === 0) return words.candidates.none;
  return words.candidates.count(candidates.length, status === 'working');
}

/** The own bike and other parts below it, as they were given. */
export function PartsTable(
  props: Speech & {
    readonly own: GearOutcome;
    readonly candidates: readonly GearCandidate[];
    readonly onTake: TakeParts;
  },
): JSX.Element {
  const { own, candidates, words, format, onTake } = props;
  return (
    <table class="gear-candidates">
      <thead>
        <tr>
          {[words.candidates.parts, ...headsOf(words, format)].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody class="own" data-parts="own">
        <tr>
          <th scope="rowgroup">
            <span class="tag">{words.candidates.yours}</span>
            {format.parts(own)}
          </th>
          <Numbers outcome={own} words={words} format={format} />
        </tr>
      </tbody>
      {candidates.map((candidate) => (
        <CandidateRow key={partsKey(candidate.outcome)} {...{ own, candidate, words, format, onTake }} />
      ))}
    </table>
  );
}

function headsOf({ candidates: say }: GearCheckWords, format: Format): string[] {
  return [say.getsUp, say.minute, say.inBand, say.steady(format.distance(STEEPEST_MEAN_M))];
}

function CandidateRow(
  props: Speech & {
    readonly own: GearOutcome;
    readonly candidate: GearCandidate;
    readonly onTake: TakeParts;
  },
): JSX.Element {
  const { own, candidate, words, format, onTake } = props;
  const [open, setOpen] = useState(false);
  const { outcome, changed, tradeOffs, limits } = candidate;
  const { candidates: say, compare } = words;
  const parts = format.parts(outcome);
  return (
    <tbody data-parts={partsKey(outcome)}>
      <tr>
        <th scope="rowgroup">
          <span class="tag">{say.changed[changed]}</span>
          {parts}
        </th>
        <Numbers outcome={outcome} words={words} format={format} />
      </tr>
      <tr class="trade">
        <td colSpan={5}>
          <div class="gear-trade">
            <p>
              {say.trade(tradeOffs)}{' '}
              {outcome.hub === undefined && say.capacity(format.number(outcome.capacityTeeth))}
              {limits.map((limit) => (
                <b key={limit.what}> {say.limit(limit)}</b>
              ))}
            </p>
            <span class="buttons">
              <Button
                small
                aria-expanded={open}
                aria-label={open ? compare.closeThis(parts) : compare.openThis(parts)}
                onClick={() => setOpen(!open)}
              >
                {open ? compare.close : compare.open}
              </Button>
              <Button small aria-label={say.takeThis(parts)} onClick={() => onTake(outcome)}>
                {say.take}
              </Button>
            </span>
          </div>
          {open && <SideBySide {...{ own, other: outcome, parts, words, format }} />}
        </td>
      </tr>
    </tbody>
  );
}

function Numbers({ outcome, words, format }: Speech & { readonly outcome: GearOutcome }): JSX.Element {
  const { candidates: say } = words;
  const [up, minute, band, steady] = headsOf(words, format);
  const missing = Math.round(outcome.hardest.missingRpm);
  return (
    <>
      <td data-label={up}>{outcome.mustWalk ? say.walking(format.time(outcome.walkedS)) : say.riding}</td>
      <td data-label={minute}>
        <span>{say.perMinute(format.number(outcome.hardest.meanRpm))}</span>
        <small>{missing === 0 ? say.inBandNow : say.missing(format.number(missing))}</small>
      </td>
      <td data-label={band}>
        <span>{format.percent(outcome.shareInBand)}</span>
        <svg class="share" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
          <rect width="100" height="10" fill="var(--sand)" />
          <rect width={Math.round(outcome.shareInBand * 100)} height="10" fill="var(--leaf-deep)" />
        </svg>
      </td>
      <td data-label={steady}>{say.perMinute(format.number(outcome.steady.cadenceRpm))}</td>
    </>
  );
}

function partsKey(of: GearParts): string {
  return `${of.chainringsTeeth.join('/')} ${of.sprocketsTeeth.join('-')}`;
}
