/** Other parts as a table, the own bike on top: what each would change, what it trades, and a way to try it. */
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import {
  asksFirst,
  type GearCandidate,
  type GearOutcome,
  type GearParts,
  sortCandidates,
} from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import type { PassedLimit } from '../../core/model/gearLimits.ts';
import type { TradeOff } from '../../core/model/gearParts.ts';
import { TableHead } from '../../ui/tables.tsx';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { type CheckState, findHelp } from './answerText.tsx';
import { SideBySide } from './sideBySide.tsx';

const say = words('gearcheck');

/** More rows than this are folded away. */
const SHOWN = 5;

interface Speech {
  readonly format: Format;
}

export type TakeParts = (parts: GearParts) => void;

/** The table with its head and the caution. */
export function Candidates(
  props: Speech & { readonly state: CheckState; readonly onTake: TakeParts },
): JSX.Element {
  const { state, format, onTake } = props;
  const [all, setAll] = useState(false);
  const sorted = useMemo(() => sortCandidates(state.candidates), [state.candidates]);
  // What the answer above names stands in the table, also where only the best are shown.
  const named = useMemo(
    () => new Set(state.own === null ? [] : Object.values(findHelp(state.own, state.candidates))),
    [state.own, state.candidates],
  );
  const shown = sorted.filter((one, i) => all || i < SHOWN || named.has(one));
  return (
    <Paper title={say('others')} data-gear-candidates>
      <p class="quiet">
        {say('others-hint')} <output>{countText(state)}</output>
      </p>
      {state.own !== null && <PartsTable own={state.own} candidates={shown} {...{ format, onTake }} />}
      {(all ? sorted.length > SHOWN : shown.length < sorted.length) && (
        <Button small aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say('others-fewer') : say('others-all', { count: sorted.length })}
        </Button>
      )}
      <p class="gear-caution">
        {say('caution', { rear: state.own?.hub === undefined ? 'sprockets' : 'hub' })}
      </p>
    </Paper>
  );
}

function countText({ candidates, status }: CheckState): string {
  if (status === 'failed') return '';
  if (status === 'done' && candidates.length === 0) return say('others-none');
  return say(status === 'working' ? 'others-trying' : 'others-tried', { count: candidates.length });
}

/** The own bike, and other parts below it as they were given: those to ask about first below all others. */
export function PartsTable(
  props: Speech & {
    readonly own: GearOutcome;
    readonly candidates: readonly GearCandidate[];
    readonly onTake: TakeParts;
  },
): JSX.Element {
  const { own, candidates, format, onTake } = props;
  const within = candidates.filter((one) => !asksFirst(one));
  const toAsk = candidates.filter(asksFirst);
  return (
    <table class="card-table gear-candidates">
      <TableHead names={[say('parts'), ...headsOf(format)]} />
      <tbody class="own" data-parts="own">
        <tr>
          <th scope="rowgroup">
            <span class="tag">{say('yours')}</span>
            {format.parts(own)}
          </th>
          <Numbers outcome={own} format={format} />
        </tr>
      </tbody>
      {within.map((candidate) => (
        <CandidateRow key={partsKey(candidate.outcome)} {...{ own, candidate, format, onTake }} />
      ))}
      {toAsk.length > 0 && (
        <tbody>
          <tr class="ask-first">
            <th scope="rowgroup" colSpan={5}>
              {say('askFirst')}
            </th>
          </tr>
        </tbody>
      )}
      {toAsk.map((candidate) => (
        <CandidateRow key={partsKey(candidate.outcome)} {...{ own, candidate, format, onTake }} />
      ))}
    </table>
  );
}

function headsOf(format: Format): string[] {
  const length = format.distance(STEEPEST_MEAN_M);
  return [say('getsUp'), say('minute'), say('inBand'), say('steepest', { length })];
}

function CandidateRow(
  props: Speech & {
    readonly own: GearOutcome;
    readonly candidate: GearCandidate;
    readonly onTake: TakeParts;
  },
): JSX.Element {
  const { own, candidate, format, onTake } = props;
  const [open, setOpen] = useState(false);
  const { outcome, changed, tradeOffs, limits } = candidate;
  const parts = format.parts(outcome);
  return (
    <tbody data-parts={partsKey(outcome)}>
      <tr>
        <th scope="rowgroup">
          <span class="tag">{say(`changed-${changed}`)}</span>
          {parts}
        </th>
        <Numbers outcome={outcome} format={format} />
      </tr>
      <tr class="trade">
        <td colSpan={5}>
          <div class="row gear-trade">
            <p>
              {tradeText(tradeOffs)}{' '}
              {outcome.hub === undefined && say('capacity', { teeth: outcome.capacityTeeth })}
              {limits.map((limit) => (
                <b key={limit.what}> {limitText(limit)}</b>
              ))}
            </p>
            <span class="buttons">
              <Button
                small
                aria-expanded={open}
                aria-label={open ? say('compare-closeThis', { parts }) : say('compare-this', { parts })}
                onClick={() => setOpen(!open)}
              >
                {open ? say('compare-close') : say('compare')}
              </Button>
              <Button small aria-label={say('take-this', { parts })} onClick={() => onTake(outcome)}>
                {say('take')}
              </Button>
            </span>
          </div>
          {open && <SideBySide {...{ own, other: outcome, parts, format }} />}
        </td>
      </tr>
    </tbody>
  );
}

function Numbers({ outcome, format }: Speech & { readonly outcome: GearOutcome }): JSX.Element {
  const [up, minute, band, steady] = headsOf(format);
  const missing = Math.round(outcome.hardest.missingRpm);
  return (
    <>
      <td data-label={up}>
        {outcome.mustWalk
          ? say('getsUp-walking', { time: format.time(outcome.walkedS) })
          : say('getsUp-riding')}
      </td>
      <td data-label={minute}>
        <span>{say('perMinute', { rpm: Math.round(outcome.hardest.meanRpm) })}</span>
        <small>{missing === 0 ? say('minute-kept') : say('minute-missing', { rpm: missing })}</small>
      </td>
      <td data-label={band}>
        <span>{format.percent(outcome.shareInBand)}</span>
        <svg class="share" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
          <rect width="100" height="10" fill="var(--sand)" />
          <rect width={Math.round(outcome.shareInBand * 100)} height="10" fill="var(--leaf-deep)" />
        </svg>
      </td>
      <td data-label={steady}>{say('perMinute', { rpm: Math.round(outcome.steady.cadenceRpm) })}</td>
    </>
  );
}

const GAINS: ReadonlySet<TradeOff> = new Set<TradeOff>([
  'easier-lowest',
  'harder-highest',
  'smaller-steps',
  'fewer-twins',
  'fewer-shifts',
  'less-capacity',
]);

/** What is gained and lost, gains first. */
export function tradeText(codes: readonly TradeOff[]): string {
  if (codes.length === 0) return say('trade-none');
  const gains = codes.filter((code) => GAINS.has(code));
  const costs = codes.filter((code) => !GAINS.has(code));
  return [...gains, ...costs].map((code) => say(`trade-${code}`)).join(' ');
}

function limitText({ what, haveTeeth: have, mostTeeth: most, derailleur, source }: PassedLimit): string {
  return say(`limit-${what}`, { have, most, derailleur, source });
}

function partsKey(of: GearParts): string {
  return `${of.chainringsTeeth.join('/')} ${of.sprocketsTeeth.join('-')}`;
}
