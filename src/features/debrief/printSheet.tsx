/**
 * One sheet of paper about the ride, in black and white: the three sentences, the strip, the marks, the
 * cautions. Not shown on the screen; its strip is also what is saved as a picture.
 */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { MARK_NAMES, type RideReport } from '../../core/coach/types.ts';
import { stripLayout, stripScales } from '../../charts/stripLayout.ts';
import { domainOf } from '../../charts/zoom.tsx';
import { type StripData, Tracks } from '../../charts/tracks.tsx';
import { guessPitchOf, isFull, sayHold, sayNoMark, sayNoReason, sayReason, type Speech } from './say.ts';
import { Sentences } from './sentences.tsx';

interface PrintSheetProps {
  readonly data: StripData;
  readonly report: RideReport;
  readonly speech: Speech;
  readonly subtitle: string;
  readonly nextLevelTitle: string | null;
  readonly cautions: readonly string[];
  readonly stripRef: { current: SVGSVGElement | null };
}

/** Width of the drawing on paper; its text comes out at about 8 points (px). */
const PAPER_PX = 900;

/** The sheet. */
export function PrintSheet(props: PrintSheetProps): JSX.Element {
  const { data, report, speech, subtitle, nextLevelTitle, cautions, stripRef } = props;
  const { words } = speech;
  return (
    <div class="print-sheet on-paper" aria-hidden="true">
      <header>
        <h1>{words.print.title}</h1>
        <p>{subtitle}</p>
      </header>
      <Sentences withChange verdict={report.verdict} nextLevelTitle={nextLevelTitle} speech={speech} />
      <PaperStrip data={data} speech={speech} stripRef={stripRef} />
      <p class="print-legend">{words.print.legend}</p>
      <PrintMarks report={report} speech={speech} />
      <PrintPitch report={report} speech={speech} />
      <footer>{cautions.join(' ')}</footer>
    </div>
  );
}

function PaperStrip(props: Pick<PrintSheetProps, 'data' | 'speech' | 'stripRef'>): JSX.Element {
  const { data, speech, stripRef } = props;
  const { words, format } = speech;
  return useMemo(() => {
    const layout = stripLayout(PAPER_PX);
    const domain = domainOf(data, 'whole');
    const rides = data.reference === null ? [data.trace] : [data.trace, data.reference];
    const scales = stripScales(layout, domain, data.machine, rides);
    return (
      <svg ref={stripRef} class="print-strip" viewBox={`0 0 ${layout.width} ${layout.height}`}>
        <Tracks {...{ data, layout, scales, domain, words, format }} id="print-strip" />
      </svg>
    );
  }, [data, words, format, stripRef]);
}

function PrintMarks({
  report,
  speech,
}: {
  readonly report: RideReport;
  readonly speech: Speech;
}): JSX.Element {
  const { words, format } = speech;
  return (
    <table class="print-marks">
      <caption>
        {words.marks.title}. {words.marks.total}: {format.number(report.total)}.
        {report.holds.map((hold) => ` ${sayHold(hold, speech)}`)}
      </caption>
      <tbody>
        {MARK_NAMES.map((name) => {
          const { value, reasons } = report.marks[name];
          const first = value === null || isFull(value) ? undefined : reasons[0];
          const reason = first === undefined ? null : sayReason(first, speech);
          const note = value === null ? sayNoMark(name, speech) : (reason?.why ?? sayNoReason(value, speech));
          return (
            <tr key={name}>
              <th scope="row">{words.marks.names[name]}</th>
              <td class="value">
                <span>{value === null ? words.table.none : format.number(value)}</span>
                <svg viewBox="0 0 100 10" preserveAspectRatio="none">
                  <rect width="100" height="10" fill="none" stroke="var(--ink)" />
                  <rect width={Math.round(value ?? 0)} height="10" fill="var(--ink)" />
                </svg>
              </td>
              <td>
                {note} {reason !== null && `${words.marks.better} ${reason.better}`}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function PrintPitch({
  report,
  speech,
}: {
  readonly report: RideReport;
  readonly speech: Speech;
}): JSX.Element | null {
  const pitch = guessPitchOf(report);
  if (pitch === undefined) return null;
  const { cards } = speech.words;
  return (
    <p class="print-pitch">
      <b>{speech.words.pitchTitle(pitch.index, speech.pitchCount)}.</b> {cards.needed}: {pitch.stepsNeeded}.{' '}
      {cards.before}: {cards.ofMade(pitch.stepsBeforeFoot, pitch.stepsMade)}. {cards.worst}:{' '}
      {cards.worstPair(
        speech.format.number(pitch.worstCadenceRpm),
        speech.format.number(pitch.referenceWorstCadenceRpm),
      )}
      .
    </p>
  );
}
