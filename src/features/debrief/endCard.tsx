/**
 * The one card at the end of a ride: what became of it, three stamps, one sentence, again and next. It asks for the
 * guess first where there is something to guess, and fits a phone; everything else is one tap away.
 */
import type { ComponentChildren, JSX } from 'preact';
import type { Mark, RideReport } from '../../core/coach/types.ts';
import { Sign } from '../../ui/keyList.tsx';
import { type Ending, endingOf } from './ending.ts';
import { GuessCard, Working } from './guess.tsx';
import { Resting } from './resting.tsx';
import { sayFinding } from './say.ts';
import type { Speech } from './speech.ts';
import { Spoken } from './spoken.tsx';
import type { DebriefProps } from './types.ts';

/** A stamp is earned from a mark that is called good; on a road that passes with less, from there. */
const STAMP_FROM = 70;
/** Nobody was early who came late to more of the pitches than this, whatever the others were worth. */
const LATE_SHARE_AT_MOST = 0.25;

const STAMPS = [
  { name: 'early', mark: 'foresight' },
  { name: 'soft', mark: 'easing' },
  { name: 'smooth', mark: 'cadence' },
] as const;
type StampName = (typeof STAMPS)[number]['name'];
type StampState = 'earned' | 'not-yet' | 'not-asked';

/** The card; `children` are the buttons. */
export function EndCard(parts: {
  readonly props: DebriefProps;
  readonly speech: Speech;
  readonly asksGuess: boolean;
  readonly open: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { props, speech, asksGuess, open, children } = parts;
  const { report, guess, share, onGuess } = props;
  const ending = open && report !== null ? endingOf(props.level, report) : null;
  return (
    <section class="cut paper-card end-card" data-end={ending ?? 'open'}>
      {ending !== null && report !== null && (
        <>
          <EndPicture ending={ending} />
          <h2>{speech.say(`end-${ending}`)}</h2>
          <Stamps report={report} from={Math.min(STAMP_FROM, props.level.passMark)} speech={speech} />
        </>
      )}
      {asksGuess && <GuessCard {...{ report, guess, share, speech, onGuess }} />}
      {!asksGuess && report === null && <Working share={share} speech={speech} />}
      {ending !== null && report !== null && <OneSentence report={report} speech={speech} />}
      {children}
      <Spoken {...{ props, speech, asksGuess, open }} />
    </section>
  );
}

function OneSentence({ report, speech }: { report: RideReport; speech: Speech }): JSX.Element {
  return (
    <p class="one-sentence" data-debrief="change">
      {sayFinding(report, speech)}
    </p>
  );
}

function Stamps(props: {
  readonly report: RideReport;
  readonly from: number;
  readonly speech: Speech;
}): JSX.Element {
  const { report, from, speech } = props;
  const { say } = speech;
  return (
    <ul class="stamps">
      {STAMPS.map(({ name, mark }) => {
        const state = name === 'early' && wasLate(report) ? 'not-yet' : stateOf(report.marks[mark], from);
        return (
          <li key={name} class="stamp" data-stamp={name} data-state={state}>
            <StampPicture name={name} />
            <span>{say(`stamp-${name}`)}</span>
            <span class="unseen"> ({say(`stampState-${state}`)})</span>
            {state === 'earned' && <i class="stamp-tick" aria-hidden="true" />}
          </li>
        );
      })}
    </ul>
  );
}

function wasLate({ pitches }: RideReport): boolean {
  const asked = pitches.filter((pitch) => pitch.asked);
  return asked.filter(({ timing }) => timing === 'too-late').length > LATE_SHARE_AT_MOST * asked.length;
}

function stateOf({ value }: Mark, from: number): StampState {
  if (value === null) return 'not-asked';
  return value >= from ? 'earned' : 'not-yet';
}

function StampPicture({ name }: { readonly name: StampName }): JSX.Element {
  if (name === 'soft') return <Sign action="ease" />;
  // A flag before a hill; a wave of one height.
  const path =
    name === 'early'
      ? 'M2 42 24 42 46 16V46H2ZM11 12h3v26h-3ZM14 12l12 5-12 6Z'
      : 'M3 26c5-14 11-14 16 0s7 9 10 0 10-14 16 0l-5 2c-3-9-5-9-8 0-4 13-12 13-16 1-4-10-6-10-9 0Z';
  return (
    <svg class="sign" viewBox="0 0 48 48" aria-hidden="true">
      <path d={path} fill="currentColor" />
    </svg>
  );
}

/** The hill of the ride: with a flag and paper in the air, or a rest before it while the sun comes up. */
function EndPicture({ ending }: { readonly ending: Ending }): JSX.Element {
  return (
    <svg class="end-picture" viewBox="0 0 640 84" preserveAspectRatio="xMidYMax slice" aria-hidden="true">
      {ending === 'not-yet' && <circle class="end-sun" cx="448" cy="48" r="15" fill="var(--sun)" />}
      <path d="M0 84V72C140 72 220 68 300 56S420 46 490 50 600 62 640 64V84Z" fill="var(--leaf)" />
      <path d="M0 84V78C180 76 260 74 360 66S520 60 640 72V84Z" fill="var(--leaf-deep)" />
      {ending === 'not-yet' ? (
        <Resting />
      ) : (
        <path d="M448 50V29h3v21ZM451 30l20 6-20 6Z" fill="var(--rider)" />
      )}
      {ending === 'passed' &&
        Array.from({ length: 14 }, (_, i) => (
          <rect
            key={i}
            class="confetti"
            style={{ '--turn': i }}
            x={100 + ((i * 67) % 440)}
            y="20"
            width="7"
            height="4"
            fill={i % 3 === 0 ? 'var(--rider)' : i % 3 === 1 ? 'var(--sand-dark)' : 'var(--leaf-deep)'}
          />
        ))}
    </svg>
  );
}
