/**
 * One sheet of paper about the ride, in black and white: the three sentences, the strip, the marks, the
 * cautions. Not shown on the screen; its strip is also what is saved as a picture.
 */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { MARK_NAMES, type RideReport } from '../../core/coach/types.ts';
import { stripLayout, stripScales } from '../../charts/stripLayout.ts';
import { domainOf } from '../../charts/stripHead.tsx';
import { type StripData, Tracks } from '../../charts/tracks.tsx';
import { guessPitchOf, isFullMark, sayHold, sayMark, sayNoMark, sayNoReason, sayReason } from './say.ts';
import type { Speech } from './speech.ts';
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

type Told = Pick<PrintSheetProps, 'report' | 'speech'>;

/** Width of the drawing on paper; its text comes out at about 8 points (px). */
const PAPER_PX = 900;

/** The sheet. */
export function PrintSheet(props: PrintSheetProps): JSX.Element {
  const { data, report, speech, subtitle, nextLevelTitle, cautions, stripRef } = props;
  const { say } = speech;
  return (
    <div class="print-sheet on-paper" aria-hidden="true">
      <header>
        <h1>{say('print-title')}</h1>
        <p>{subtitle}</p>
      </header>
      <Sentences withChange verdict={report.verdict} nextLevelTitle={nextLevelTitle} speech={speech} />
      <PaperStrip data={data} speech={speech} stripRef={stripRef} />
      <p class="print-legend">{say('print-legend')}</p>
      <PrintMarks report={report} speech={speech} />
      <PrintPitch report={report} speech={speech} />
      <footer>{cautions.join(' ')}</footer>
    </div>
  );
}

function PaperStrip(props: Pick<PrintSheetProps, 'data' | 'speech' | 'stripRef'>): JSX.Element {
  const { data, speech, stripRef } = props;
  const { format } = speech;
  return useMemo(() => {
    const layout = stripLayout(PAPER_PX);
    const domain = domainOf(data, 'whole');
    const rides = data.reference === null ? [data.trace] : [data.trace, data.reference];
    const scales = stripScales(layout, domain, data.machine, rides);
    return (
      <svg ref={stripRef} class="print-strip" viewBox={`0 0 ${layout.width} ${layout.height}`}>
        <Tracks {...{ data, layout, scales, domain, format }} id="print-strip" />
      </svg>
    );
  }, [data, format, stripRef]);
}

function PrintMarks({ report, speech }: Told): JSX.Element {
  const { say, format } = speech;
  return (
    <table class="print-marks">
      <caption>
        {say('print-marks', { total: Math.round(report.total) })}
        {report.holds.map((hold) => ` ${sayHold(hold, speech)}`)}
      </caption>
      <tbody>
        {MARK_NAMES.map((name) => {
          const { value, reasons } = report.marks[name];
          const first = value === null || isFullMark(value) ? undefined : reasons[0];
          const reason = first === undefined ? null : sayReason(first, speech);
          const note = value === null ? sayNoMark(name, speech) : (reason?.why ?? sayNoReason(value, speech));
          return (
            <tr key={name}>
              <th scope="row">{sayMark(name, speech)}</th>
              <td class="value">
                <span>{value === null ? '–' : format.number(value)}</span>
                <svg viewBox="0 0 100 10" preserveAspectRatio="none">
                  <rect width="100" height="10" fill="none" stroke="var(--ink)" />
                  <rect width={Math.round(value ?? 0)} height="10" fill="var(--ink)" />
                </svg>
              </td>
              <td>
                {note} {reason !== null && `${say('better')} ${reason.better}`}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

function PrintPitch({ report, speech }: Told): JSX.Element | null {
  const pitch = guessPitchOf(report);
  if (pitch === undefined) return null;
  const { say, pitchCount } = speech;
  return (
    <p class="print-pitch">
      <b>{say('print-pitchTitle', { pitch: pitch.index + 1, pitches: pitchCount })}</b>{' '}
      {say('print-pitch', {
        needed: pitch.referenceSteps,
        before: pitch.stepsBeforeFoot,
        made: pitch.stepsMade,
        own: Math.round(pitch.worstCadenceRpm),
        best: Math.round(pitch.referenceWorstCadenceRpm),
      })}
    </p>
  );
}
