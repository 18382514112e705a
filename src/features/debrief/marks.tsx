/** Five marks: a number, a bar and words each; why it is so, and what would have changed it. */
import type { JSX } from 'preact';
import {
  type Mark,
  MARK_NAMES,
  type MarkName,
  type Reason,
  type RideReport,
} from '../../core/coach/types.ts';
import { isFullMark, sayHold, sayLevel, sayMark, sayNoMark, sayNoReason, sayReason } from './say.ts';
import type { Speech } from './speech.ts';

/** Reasons shown before the rest is folded away. */
const SHOWN_REASONS = 1;
/** More than this nobody reads. */
const MOST_REASONS = 6;

interface MarksProps {
  readonly report: RideReport;
  readonly passMark: number;
  readonly speech: Speech;
}

/** The marks and their total. */
export function MarksCard({ report, passMark, speech }: MarksProps): JSX.Element {
  const { say, format } = speech;
  const pass = Math.round(passMark);
  return (
    <section aria-labelledby="marks-title">
      <div class="marks-head">
        <h2 id="marks-title">{say('marks-title')}</h2>
        <p data-debrief="total">
          {say('marks-total')} <b>{format.number(report.total)}</b>
          <span> {say(report.passed ? 'marks-passed' : 'marks-notYet', { pass })}</span>
        </p>
      </div>
      {report.holds.map((hold) => (
        <p key={hold.code} data-hold={hold.code}>
          {sayHold(hold, speech)}
        </p>
      ))}
      <div class="marks">
        {MARK_NAMES.map((name) => (
          <MarkCard key={name} name={name} mark={report.marks[name]} speech={speech} />
        ))}
      </div>
    </section>
  );
}

interface CardProps {
  readonly name: MarkName;
  readonly mark: Mark;
  readonly speech: Speech;
}

function MarkCard({ name, mark, speech }: CardProps): JSX.Element {
  const { say, format } = speech;
  return (
    <article class="cut paper-card mark" data-mark={name}>
      <h3>{sayMark(name, speech)}</h3>
      <p class="quiet">{say(`asks-${name}`)}</p>
      {mark.value === null ? (
        <>
          <p class="no-mark">{say('noMark')}</p>
          <p>{sayNoMark(name, speech)}</p>
        </>
      ) : (
        <>
          <p class="mark-value">
            <b>{format.number(mark.value)}</b>
          </p>
          <MarkBar value={mark.value} />
          <p class="mark-level">{sayLevel(mark.value, speech)}</p>
          <Reasons value={mark.value} reasons={mark.reasons} speech={speech} />
        </>
      )}
    </article>
  );
}

function MarkBar({ value }: { readonly value: number }): JSX.Element {
  return (
    <svg class="mark-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <rect width="100" height="10" fill="var(--sand)" />
      <rect width={Math.round(value)} height="10" fill="var(--leaf-deep)" />
    </svg>
  );
}

function Reasons(props: {
  readonly value: number;
  readonly reasons: readonly Reason[];
  readonly speech: Speech;
}): JSX.Element {
  const { value, reasons, speech } = props;
  if (reasons.length === 0 || isFullMark(value)) return <p>{sayNoReason(value, speech)}</p>;
  const more = reasons.slice(SHOWN_REASONS, MOST_REASONS);
  return (
    <>
      {reasons.slice(0, SHOWN_REASONS).map((reason) => (
        <ReasonText reason={reason} speech={speech} />
      ))}
      {more.length > 0 && (
        <details>
          <summary>{speech.say('more', { more: more.length })}</summary>
          <ul>
            {more.map((reason) => (
              <li>{sayReason(reason, speech).why}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function ReasonText({ reason, speech }: { readonly reason: Reason; readonly speech: Speech }): JSX.Element {
  const { why, better } = sayReason(reason, speech);
  return (
    <>
      <p data-reason={reason.code}>{why}</p>
      <p class="better">
        <b>{speech.say('better')}</b> {better}
      </p>
    </>
  );
}
