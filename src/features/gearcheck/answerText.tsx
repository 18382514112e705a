/** The answer in sentences: the lowest gear, what would help, the hardest minute, the highest gear. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import type { GearOutcome } from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import type { Format } from '../../words/format.ts';
import type { GearCheckWords } from './words.ts';
import { findHelp, highestGear, isEnough, lowestGear, type TeethPair, toldStretches } from './answer.ts';
import type { CheckState } from './state.ts';

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
  return (
    <>
      <p class="lead" data-answer="lowest">
        {sayLowest(own, words, format)}
      </p>
      {!isEnough(own) && <p data-answer="help">{sayHelp(own, state, words, format)}</p>}
      <p data-answer="minute">{sayMinute(own, words, format)}</p>
      <p data-answer="highest">{sayHighest(own, words, format)}</p>
    </>
  );
}

const rpmText = (format: Format, value: number): string => format.number(Math.round(value));
const gearText = (format: Format, gear: TeethPair): string => unbroken(format.gear(gear));

/** What the lowest gear comes to on the steepest stretch. */
function sayLowest(own: GearOutcome, words: GearCheckWords, format: Format): string {
  const { steady } = own;
  const figures = {
    gear: gearText(format, lowestGear(own)),
    rpm: rpmText(format, steady.cadenceRpm),
    low: rpmText(format, steady.bandLowRpm),
    length: unbroken(format.distance(STEEPEST_MEAN_M)),
    slope: unbroken(format.percent(steady.slopeRatio)),
  };
  if (own.mustWalk) return words.answer.walks(figures);
  return isEnough(own) ? words.answer.enough(figures) : words.answer.short(figures);
}

/** What would help, or what it would take. */
function sayHelp(
  own: GearOutcome,
  state: Pick<CheckState, 'candidates' | 'status'>,
  words: GearCheckWords,
  format: Format,
): string {
  const { answer } = words;
  if (state.status === 'working') return answer.looking;
  const { mild, reaches } = findHelp(own, state.candidates);
  const said: string[] = [];
  if (mild !== null)
    said.push(
      answer.mild(
        gearText(format, lowestGear(mild.outcome)),
        rpmText(format, mild.outcome.steady.cadenceRpm),
      ),
    );
  if (reaches !== null)
    said.push(
      answer.reaches(gearText(format, lowestGear(reaches.outcome)), mild !== null, reaches.limits.length > 0),
    );
  else if (state.status === 'done') said.push(sayWhatItTakes(own, words, format));
  return said.join(' ');
}

function sayWhatItTakes(own: GearOutcome, words: GearCheckWords, format: Format): string {
  const { steady, lowestDevelopmentM } = own;
  const metres = (value: number): string => unbroken(words.metres(format.number(value, 2)));
  if (steady.tooSteepForPower)
    return words.answer.tooSteep(
      unbroken(format.percent(steady.slopeRatio)),
      unbroken(format.speed(steady.neededSpeedMps)),
    );
  const low = lowestGear(own);
  const ratio = steady.neededDevelopmentM / lowestDevelopmentM;
  return words.answer.takes(metres(steady.neededDevelopmentM), metres(lowestDevelopmentM), {
    ring: format.number(Math.floor(low.ringTeeth * ratio)),
    sprocket: format.number(Math.ceil(low.sprocketTeeth / ratio)),
  });
}

function sayMinute({ hardest }: GearOutcome, words: GearCheckWords, format: Format): string {
  const missing = Math.round(hardest.missingRpm);
  return words.answer.minute(
    rpmText(format, hardest.meanRpm),
    missing === 0 ? null : format.number(missing),
    unbroken(format.distance(hardest.fromM)),
    unbroken(format.distance(hardest.toM)),
  );
}

function sayHighest(own: GearOutcome, words: GearCheckWords, format: Format): string {
  const gear = gearText(format, highestGear(own));
  const told = toldStretches(own.aboveBand);
  if (told.length === 0) return words.answer.highestEnough(gear);
  const seconds = told.reduce((sum, one) => sum + one.seconds, 0);
  const fastest = told.reduce((most, one) => Math.max(most, one.meanRpm), 0);
  return words.answer.highestShort(gear, told.length, Math.round(seconds), rpmText(format, fastest));
}

/** In big letters on a phone a gear or a unit must not be torn apart. */
function unbroken(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
