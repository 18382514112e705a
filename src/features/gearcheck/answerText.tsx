/**
 * What the gear check has heard, and the answer in sentences: whether the lowest gear is enough, what would help, the
 * hardest minute, the highest gear. All of it goes by the steady figure of the steepest 50 m, the same that stands in the
 * table.
 */
import type { JSX } from 'preact';
import { useEffect, useReducer } from 'preact/hooks';
import type { GearCheckProps, GearQuestion } from './services.ts';
import { Button } from '../../ui/controls.tsx';
import {
  asksFirst,
  type GearCandidate,
  type GearOutcome,
  type ShortStretch,
  sortCandidates,
} from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import type { GearTold } from '../../core/model/transmission.ts';
import { shifterPlaces } from '../../core/model/shifters.ts';

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

/** Stretches shorter than this are a moment at a stop line or in a shift, not a gear that is missing (s). */
const SHORTEST_TOLD_S = 1.5;
/** A gain in cadence smaller than this is not worth a sentence (rpm). */
const LEAST_GAIN_RPM = 2;

/** A gear as its two tooth counts, or as one of a hub. */
export type TeethPair = GearTold;

type Parts = Pick<GearOutcome, 'chainringsTeeth' | 'sprocketsTeeth' | 'hub'>;

/** The easiest gear of a bike. */
export function lowestTeeth(of: Parts): TeethPair {
  const teeth = { ringTeeth: of.chainringsTeeth[0] ?? 0, sprocketTeeth: of.sprocketsTeeth.at(-1) ?? 0 };
  const [, gears = 1] = shifterPlaces(of);
  return of.hub === undefined ? teeth : { ...teeth, hub: { number: 1, of: gears, ratio: 1 } };
}

/** The hardest gear of a bike. */
export function highestTeeth(of: Parts): TeethPair {
  const teeth = { ringTeeth: of.chainringsTeeth.at(-1) ?? 0, sprocketTeeth: of.sprocketsTeeth[0] ?? 0 };
  const [, gears = 1] = shifterPlaces(of);
  return of.hub === undefined ? teeth : { ...teeth, hub: { number: gears, of: gears, ratio: 1 } };
}

/** Stretches worth telling. */
export function toldStretches(stretches: readonly ShortStretch[]): ShortStretch[] {
  return stretches.filter(({ seconds }) => seconds >= SHORTEST_TOLD_S);
}

/** Whether the lowest gear keeps the legs in their band on the steepest 50 m, and nobody has to walk. */
function isEnough({ mustWalk, steady }: Pick<GearOutcome, 'mustWalk' | 'steady'>): boolean {
  return !mustWalk && Math.round(steady.cadenceRpm) >= Math.round(steady.bandLowRpm);
}

/** Parts that help, against the own bike. */
interface Help {
  /** The best of the list that is easier and still not enough. */
  readonly mild: GearCandidate | null;
  /** The one that is enough with the fewest changes and the least chain to take up. */
  readonly reaches: GearCandidate | null;
}

/** Finds parts that help; both null where nothing is missing. Parts the derailleurs may not take come last. */
export function findHelp(own: GearOutcome, candidates: readonly GearCandidate[]): Help {
  if (isEnough(own)) return { mild: null, reaches: null };
  const helping = sortCandidates(candidates).filter(
    ({ outcome: { steady } }) => steady.cadenceRpm >= own.steady.cadenceRpm + LEAST_GAIN_RPM,
  );
  const [reaches = null] = helping
    .filter(({ outcome }) => isEnough(outcome))
    .toSorted(
      (a, b) =>
        Number(asksFirst(a)) - Number(asksFirst(b)) ||
        parts(a) - parts(b) ||
        a.outcome.capacityTeeth - b.outcome.capacityTeeth,
    );
  const mild = helping.find((one) => !asksFirst(one) && parts(one) === 1 && !isEnough(one.outcome));
  return { mild: mild ?? null, reaches };
}

function parts({ changed }: GearCandidate): number {
  return changed === 'both' ? 2 : 1;
}

export interface CheckState {
  readonly own: GearOutcome | null;
  /** In the order they came. */
  readonly candidates: readonly GearCandidate[];
  readonly status: 'working' | 'done' | 'failed';
  /** Grows when the same question is to be asked again. */
  readonly attempt: number;
}

type CheckAction =
  | { readonly kind: 'start' | 'again' | 'done' | 'failed' }
  | { readonly kind: 'own'; readonly outcome: GearOutcome }
  | { readonly kind: 'candidate'; readonly candidate: GearCandidate };

const NOTHING_HEARD: CheckState = { own: null, candidates: [], status: 'working', attempt: 0 };

/** The next state. The own bike comes first, and whenever it comes, everything before it is forgotten. */
function reduceCheck(state: CheckState, action: CheckAction): CheckState {
  const { attempt } = state;
  switch (action.kind) {
    case 'start':
      return { ...NOTHING_HEARD, attempt };
    case 'again':
      return { ...NOTHING_HEARD, attempt: attempt + 1 };
    case 'own':
      return { own: action.outcome, candidates: [], status: 'working', attempt };
    case 'candidate':
      return { ...state, candidates: [...state.candidates, action.candidate] };
    case 'done':
      return { ...state, status: 'done' };
    case 'failed':
      return { ...state, status: 'failed' };
  }
}

/** Asks a question, and gives up what was asked before; the answer also asks the same once more. */
export function useCheck(
  question: GearQuestion,
  onCompute: GearCheckProps['onCompute'],
): [CheckState, () => void] {
  const { level, seed, bike, rider, asked } = question;
  const [state, send] = useReducer(reduceCheck, NOTHING_HEARD);
  useEffect(() => {
    let wanted = true;
    const heard = (action: CheckAction): void => {
      if (wanted) send(action);
    };
    send({ kind: 'start' });
    const giveUp = onCompute(question, {
      onOwn: (outcome) => heard({ kind: 'own', outcome }),
      onCandidate: (candidate) => heard({ kind: 'candidate', candidate }),
      onDone: () => heard({ kind: 'done' }),
      onFailed: () => heard({ kind: 'failed' }),
    });
    return () => {
      wanted = false;
      giveUp();
    };
  }, [level, seed, bike, rider, asked, onCompute, state.attempt]);
  return [state, () => send({ kind: 'again' })];
}
