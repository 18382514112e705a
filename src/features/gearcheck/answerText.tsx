/** The answer in sentences: the lowest gear, what would help, the highest gear. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { type GearOutcome, STEEPEST_MEAN_M } from '../../core/coach/gearCheck.ts';
import type { Format } from '../../words/format.ts';
import type { GearCheckWords } from './words.ts';
import {
  findHelp,
  highestGear,
  lowestGear,
  rpmOn,
  type TeethPair,
  toldStretches,
  worstBelow,
} from './answer.ts';
import type { CheckState } from './state.ts';

/** Gentler ground than this is not called a climb. */
const CLIMB_RATIO = 0.02;

interface Speech {
  readonly words: GearCheckWords;
  readonly format: Format;
}

/** The card on top of the page. */
export function GearAnswer(
  props: Speech & { readonly state: CheckState; readonly onAgain: () => void },
): JSX.Element {
  const { state, words, format, onAgain } = props;
  const { own, status } = state;
  return (
    <section class="paper gear-answer" aria-live="polite" aria-busy={status === 'working'}>
      {own === null && status !== 'failed' && <p class="lead">{words.answer.working}</p>}
      {own !== null && <Sentences own={own} {...{ state, words, format }} />}
      {status === 'failed' && (
        <>
          <p class={own === null ? 'lead' : undefined}>{words.answer.failed}</p>
          <div class="buttons">
            <Button onClick={onAgain}>{words.answer.again}</Button>
          </div>
        </>
      )}
    </section>
  );
}

function Sentences(props: Speech & { readonly own: GearOutcome; readonly state: CheckState }): JSX.Element {
  const { own, state, words, format } = props;
  const rpm = (value: number): string => format.number(Math.round(value));
  return (
    <>
      <p class="lead" data-answer="lowest">
        {sayLowest(own, state, words, format)}
      </p>
      <p data-answer="highest">{sayHighest(own, words, format)}</p>
      {worstBelow(own) !== null && (
        <p class="quiet" data-answer="settle">
          {words.answer.settle(format.distance(STEEPEST_MEAN_M), rpm(own.steadyLowestRpm))}
        </p>
      )}
    </>
  );
}

/** The lowest gear and what would help, as one paragraph. */
function sayLowest(
  own: GearOutcome,
  state: Pick<CheckState, 'candidates' | 'status'>,
  words: GearCheckWords,
  format: Format,
): string {
  const gear = (pair: TeethPair): string => unbroken(format.gear(pair.ringTeeth, pair.sprocketTeeth));
  const worst = worstBelow(own);
  if (worst === null) return words.answer.enough(gear(lowestGear(own)));
  const { mild, reaches } = findHelp(own, state.candidates);
  const slope = worst.steepestRatio >= CLIMB_RATIO ? unbroken(format.percent(worst.steepestRatio)) : null;
  const rpm = (value: number): string => format.number(Math.round(value));
  const said = [
    words.answer.short(
      gear(lowestGear(own)),
      rpm(worst.extremeRpm),
      slope,
      unbroken(format.distance(worst.fromM)),
    ),
  ];
  if (state.status === 'working') return [...said, words.answer.looking].join(' ');
  if (mild !== null) said.push(words.answer.mild(gear(lowestGear(mild.outcome)), rpm(rpmOn(mild.outcome))));
  if (reaches !== null) said.push(words.answer.reaches(gear(lowestGear(reaches.outcome)), mild !== null));
  else if (state.status === 'done') said.push(words.answer.none);
  return said.join(' ');
}

function sayHighest(own: GearOutcome, words: GearCheckWords, format: Format): string {
  const { ringTeeth, sprocketTeeth } = highestGear(own);
  const gear = unbroken(format.gear(ringTeeth, sprocketTeeth));
  const told = toldStretches(own.aboveBand);
  if (told.length === 0) return words.answer.highestEnough(gear);
  const seconds = told.reduce((sum, one) => sum + one.seconds, 0);
  const fastest = told.reduce((most, one) => Math.max(most, one.extremeRpm), 0);
  return words.answer.highestShort(
    gear,
    told.length,
    Math.round(seconds),
    format.number(Math.round(fastest)),
  );
}

/** In big letters on a phone a gear or a unit must not be torn apart. */
function unbroken(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
