/**
 * The progress page below its head: check rides and what they can show, marks of all rides, and what is kept. It
 * compares nothing that must not be compared, and keeps nothing itself.
 */
import type { KeptResult, UnmarkedRide } from '../../core/coach/results.ts';
import type { CheckedApart } from '../../core/level/generate.ts';
import type { ComponentChildren, JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Format } from '../../words/format.ts';
import { writeDate } from '../../words/dates.ts';
import { Lines, Paper } from '../../ui/paper.tsx';
import { words } from '../../words/words.ts';
import { type Audience, CheckCard } from './checkCard.tsx';
import { checkGroups } from './checks.ts';
import { type LangOf, Multiples } from './multiples.tsx';
import './progress.css';

const say = words('progress');

interface ProgressProps {
  /** Kept results in any order. */
  readonly rides: readonly KeptResult[];
  /** Rides that are kept without marks, newest first. */
  readonly unmarked: readonly UnmarkedRide[];
  /** Saving, taking back and deleting. */
  readonly kept: ComponentChildren;
  readonly langOf: LangOf;
  readonly bikeName: (bikeId: string) => string;
  readonly needs?: CheckedApart | undefined;
  readonly secondsOf: (audience: Audience) => number;
  readonly onCheckRide: (audience: Audience) => void;
  readonly format: Format;
  /** Writes a date; the browser's way without it. */
  readonly date?: (atMs: number) => string;
}

/** The page below its head. */
export function ProgressPage(props: ProgressProps): JSX.Element {
  const { rides, unmarked, kept, langOf, format, date = writeDate } = props;
  const sorted = useMemo(() => rides.toSorted((a, b) => a.atMs - b.atMs), [rides]);
  const groups = useMemo(() => checkGroups(rides.filter((ride) => ride.older !== true)), [rides]);
  const older = rides.filter((ride) => ride.older === true).length;
  return (
    <div class="papers progress-page">
      <CheckCard
        groups={groups}
        bikeName={props.bikeName}
        date={date}
        format={format}
        needs={props.needs}
        secondsOf={props.secondsOf}
        onCheckRide={props.onCheckRide}
      />
      <Limits />
      {older > 0 && (
        <p class="paper" data-older={older}>
          {say('older', { rides: older })}
        </p>
      )}
      {sorted.length === 0 ? (
        <p class="paper">{say('empty')}</p>
      ) : (
        <Multiples rides={sorted} langOf={langOf} date={date} format={format} />
      )}
      {unmarked.length > 0 && <Unmarked rides={unmarked} langOf={langOf} date={date} />}
      {kept}
    </div>
  );
}

/** What is kept and counts nowhere, because it has no marks. */
function Unmarked(props: {
  readonly rides: readonly UnmarkedRide[];
  readonly langOf: LangOf;
  readonly date: (atMs: number) => string;
}): JSX.Element {
  return (
    <Paper title={say('unmarked-title')} data-unmarked>
      <ul>
        {props.rides.map(({ id: key, atMs, levelId, levelTitle, standing }) => (
          <li key={key} data-standing={standing}>
            <b lang={props.langOf(levelId)}>{levelTitle}</b>,{' '}
            {say(`standing-${standing}`, { date: props.date(atMs) })}
          </li>
        ))}
      </ul>
    </Paper>
  );
}

function Limits(): JSX.Element {
  return (
    <Paper look="progress-limits" title={say('limits-title')}>
      <Lines lines={say.lines('limits')} />
    </Paper>
  );
}
