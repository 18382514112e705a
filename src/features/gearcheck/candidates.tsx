/** Other parts as a table, the own bike on top: what each would change, what it trades, and a way to try it. */
import type { JSX } from 'preact';
import { useId, useMemo, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { type GearCandidate, type GearOutcome, sortCandidates } from '../../core/coach/gearCheck.ts';
import { USUAL_CAPACITY_TEETH } from '../../core/model/bikeInput.ts';
import type { Format } from '../../words/format.ts';
import type { GearCheckWords } from './words.ts';
import type { CheckState } from './state.ts';

/** More rows than this are folded away. */
const SHOWN = 5;

interface Speech {
  readonly words: GearCheckWords;
  readonly format: Format;
}

type Parts = Pick<GearOutcome, 'chainringsTeeth' | 'sprocketsTeeth'>;

export type TakeParts = (parts: Parts) => void;

/** The table with its head and the caution. */
export function Candidates(
  props: Speech & { readonly state: CheckState; readonly onTake: TakeParts },
): JSX.Element {
  const { state, words, format, onTake } = props;
  const id = useId();
  const [all, setAll] = useState(false);
  const sorted = useMemo(() => sortCandidates(state.candidates), [state.candidates]);
  const { candidates: say } = words;
  const heads = [say.parts, say.inBand, say.slowest, say.shifts, say.capacity];
  return (
    <section class="paper" aria-labelledby={id} data-gear-candidates>
      <h2 id={id}>{say.title}</h2>
      <p class="quiet">
        {say.hint} <output>{countText(state, words)}</output>
      </p>
      <table class="gear-candidates">
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        {state.own !== null && <OwnRow own={state.own} words={words} format={format} />}
        {sorted.slice(0, all ? undefined : SHOWN).map((candidate) => (
          <CandidateRow key={partsKey(candidate.outcome)} {...{ candidate, words, format, onTake }} />
        ))}
      </table>
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

function OwnRow({ own, words, format }: Speech & { readonly own: GearOutcome }): JSX.Element {
  return (
    <tbody class="own" data-parts="own">
      <tr>
        <th scope="rowgroup">
          <span class="tag">{words.candidates.yours}</span>
          {partsText(own, format)}
        </th>
        <Numbers outcome={own} words={words} format={format} />
      </tr>
    </tbody>
  );
}

function CandidateRow(
  props: Speech & { readonly candidate: GearCandidate; readonly onTake: TakeParts },
): JSX.Element {
  const { candidate, words, format, onTake } = props;
  const { outcome, changed, tradeOffs } = candidate;
  const { candidates: say } = words;
  const parts = partsText(outcome, format);
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
        <td colSpan={4}>
          {say.trade(tradeOffs)}
          {outcome.capacityTeeth > USUAL_CAPACITY_TEETH && (
            <b> {say.unusual(format.number(USUAL_CAPACITY_TEETH))}</b>
          )}
        </td>
        <td>
          <Button small aria-label={say.takeThis(parts)} onClick={() => onTake(outcome)}>
            {say.take}
          </Button>
        </td>
      </tr>
    </tbody>
  );
}

function Numbers({ outcome, words, format }: Speech & { readonly outcome: GearOutcome }): JSX.Element {
  const { candidates: say } = words;
  return (
    <>
      <td data-label={say.inBand}>
        <span>{format.percent(outcome.shareInBand)}</span>
        <svg class="share" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
          <rect width="100" height="10" fill="var(--sand)" />
          <rect width={Math.round(outcome.shareInBand * 100)} height="10" fill="var(--leaf-deep)" />
        </svg>
      </td>
      <td data-label={say.slowest}>{say.perMinute(format.number(outcome.lowestCadenceRpm))}</td>
      <td data-label={say.shifts}>{format.number(outcome.shifts)}</td>
      <td data-label={say.capacity}>{say.teeth(format.number(outcome.capacityTeeth))}</td>
    </>
  );
}

/** `50 / 34 · 11–34`, as it stands on the box. */
export function partsText(of: Parts, format: Format): string {
  const { sprocketsTeeth: teeth } = of;
  const range = [teeth[0] ?? 0, teeth.at(-1) ?? 0].map((n) => format.number(n)).join('–');
  return `${of.chainringsTeeth.toReversed().join(' / ')} · ${range}`;
}

function partsKey(of: Parts): string {
  return `${of.chainringsTeeth.join('/')} ${of.sprocketsTeeth.join('-')}`;
}
