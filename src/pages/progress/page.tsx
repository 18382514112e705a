/**
 * The progress page below its head: check rides and what they can show, marks of all rides, and what is kept. It
 * compares nothing that must not be compared, and keeps nothing itself.
 */
import type { KeptResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import type { Format } from '../../ui/format.ts';
import { Kept } from '../kept.tsx';
import type { Services } from '../../app/services.ts';
import type { ProgressWords } from '../words/progress.ts';
import { type Audience, CheckCard } from './checkCard.tsx';
import { checkGroups } from './checks.ts';
import { Multiples } from './multiples.tsx';
import './progress.css';

export interface ProgressProps {
  /** Kept results in any order. */
  readonly rides: readonly KeptResult[];
  /** What a person should know about the keeping, or null while all is well. */
  readonly health: string | null;
  /** Saving, taking back and deleting. */
  readonly services: Services;
  readonly bikeName: (bikeId: string) => string;
  readonly onCheckRide: (audience: Audience) => void;
  readonly words: ProgressWords;
  readonly format: Format;
  /** Writes a date; the browser's way without it. */
  readonly date?: (atMs: number) => string;
}

const localDate = (atMs: number): string =>
  new Date(atMs).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' });

/** The page below its head. */
export function ProgressPage(props: ProgressProps): JSX.Element {
  const { rides, health, services, words, format, date = localDate } = props;
  const sorted = useMemo(() => rides.toSorted((a, b) => a.atMs - b.atMs), [rides]);
  const groups = useMemo(() => checkGroups(rides), [rides]);
  return (
    <div class="progress-page">
      {health !== null && (
        <p class="paper progress-health" role="alert">
          {health}
        </p>
      )}
      <CheckCard
        groups={groups}
        bikeName={props.bikeName}
        date={date}
        words={words}
        format={format}
        onCheckRide={props.onCheckRide}
      />
      <Limits words={words} />
      {sorted.length === 0 ? (
        <p class="paper">{words.empty}</p>
      ) : (
        <Multiples rides={sorted} date={date} words={words} format={format} />
      )}
      <Kept services={services} rides={rides.length} />
    </div>
  );
}

function Limits({ words }: { readonly words: ProgressWords }): JSX.Element {
  const id = useId();
  return (
    <section class="paper progress-limits" aria-labelledby={id}>
      <h2 id={id}>{words.limits.title}</h2>
      <ul>
        {words.limits.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
