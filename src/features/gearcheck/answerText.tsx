/** The answer in sentences: the lowest gear, what would help, the hardest minute, the highest gear. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { asksFirst, type GearCandidate, type GearOutcome } from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { findHelp, highestTeeth, isEnough, lowestTeeth, type TeethPair, toldStretches } from './answer.ts';
import type { CheckState } from './state.ts';

const say = words('gearcheck');

interface Speech {
  readonly format: Format;
}

/** The card on top of the page. */
export function GearAnswer(
  props: Speech & { readonly state: CheckState; readonly onAgain: () => void },
): JSX.Element {
  const { state, format, onAgain } = props;
  const { own, status } = state;
  return (
    <section class="paper gear-answer" aria-live="polite" aria-busy={status === 'working'}>
      {own === null && status !== 'failed' && <p class="lead">{say('working')}</p>}
      {own !== null && <Sentences own={own} {...{ state, format }} />}
      {status === 'failed' && (
        <>
          <p class={own === null ? 'lead' : undefined}>{say('failed')}</p>
          <div class="buttons">
            <Button onClick={onAgain}>{say('again')}</Button>
          </div>
        </>
      )}
    </section>
  );
}

function Sentences(props: Speech & { readonly own: GearOutcome; readonly state: CheckState }): JSX.Element {
  const { own, state, format } = props;
  return (
    <>
      <p class="lead" data-answer="lowest">
        {sayLowest(own, format)}
      </p>
      {!isEnough(own) && <p data-answer="help">{sayHelp(own, state, format)}</p>}
      <p data-answer="minute">{sayMinute(own, format)}</p>
      <p data-answer="highest">{sayHighest(own, format)}</p>
    </>
  );
}

const gearText = (format: Format, gear: TeethPair): string => unbroken(format.gear(gear));

/** What the lowest gear comes to on the steepest stretch. */
function sayLowest(own: GearOutcome, format: Format): string {
  const { steady, mustWalk } = own;
  return say(mustWalk ? 'lowest-walks' : isEnough(own) ? 'lowest-enough' : 'lowest-short', {
    gear: gearText(format, lowestTeeth(own)),
    rpm: Math.round(steady.cadenceRpm),
    low: Math.round(steady.bandLowRpm),
    length: unbroken(format.distance(STEEPEST_MEAN_M)),
    slope: unbroken(format.percent(steady.slopeRatio)),
  });
}

/** What would help, or what it would take. */
function sayHelp(own: GearOutcome, state: Pick<CheckState, 'candidates' | 'status'>, format: Format): string {
  if (state.status === 'working') return say('looking');
  const { mild, reaches } = findHelp(own, state.candidates);
  // Other parts leave the gears of a hub their numbers: there the teeth tell what would change.
  const gear = ({ outcome }: GearCandidate): string =>
    outcome.hub === undefined ? gearText(format, lowestTeeth(outcome)) : unbroken(format.parts(outcome));
  const said: string[] = [];
  if (mild !== null) {
    const rpm = Math.round(mild.outcome.steady.cadenceRpm);
    said.push(say('help-mild', { gear: gear(mild), rpm }));
  }
  if (reaches !== null) {
    const after = mild === null ? 'alone' : 'mild';
    said.push(say('help-reaches', { gear: gear(reaches), after }));
    if (asksFirst(reaches)) said.push(say('help-askFirst'));
  } else if (state.status === 'done') said.push(sayWhatItTakes(own, format));
  return said.join(' ');
}

function sayWhatItTakes(own: GearOutcome, format: Format): string {
  const { steady, lowestDevelopmentM, hub } = own;
  if (steady.tooSteepForPower)
    return say('help-tooSteep', {
      slope: unbroken(format.percent(steady.slopeRatio)),
      speed: unbroken(format.speed(steady.neededSpeedMps)),
    });
  const low = lowestTeeth(own);
  const ratio = steady.neededDevelopmentM / lowestDevelopmentM;
  return say('help-none', {
    rear: hub === undefined ? 'sprockets' : 'hub',
    needed: unbroken(format.metres(steady.neededDevelopmentM)),
    own: unbroken(format.metres(lowestDevelopmentM)),
    ring: Math.floor(low.ringTeeth * ratio),
    sprocket: Math.ceil(low.sprocketTeeth / ratio),
  });
}

function sayMinute({ hardest }: GearOutcome, format: Format): string {
  const rpm = Math.round(hardest.meanRpm);
  const missing = Math.round(hardest.missingRpm);
  if (missing === 0) return say('minute-inBand', { rpm });
  const [from, to] = [hardest.fromM, hardest.toM].map((m) => unbroken(format.distance(m)));
  return say('minute-below', { rpm, missing, from: from ?? '', to: to ?? '' });
}

function sayHighest(own: GearOutcome, format: Format): string {
  const gear = gearText(format, highestTeeth(own));
  const told = toldStretches(own.aboveBand);
  if (told.length === 0) return say('highest-enough', { gear });
  const seconds = told.reduce((sum, one) => sum + one.seconds, 0);
  const fastest = told.reduce((most, one) => Math.max(most, one.meanRpm), 0);
  return say('highest-short', {
    gear,
    places: told.length,
    seconds: Math.round(seconds),
    rpm: Math.round(fastest),
  });
}

/** In big letters on a phone a gear or a unit must not be torn apart. */
function unbroken(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
