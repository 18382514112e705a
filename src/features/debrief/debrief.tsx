/**
 * The debrief: one card, and folded under it what happened, why and where. Draws what it is given and asks through
 * callbacks; it keeps nothing but where the cursor is.
 */
import { Lines } from '../../ui/parts.tsx';
import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { shiftsOf } from '../../core/coach/shifts.ts';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { buildMachine } from '../../core/model/machine.ts';
import { paintPng } from '../../charts/picture.ts';
import { Strip } from '../../charts/strip.tsx';
import type { StripData } from '../../charts/tracks.tsx';
import { createFormat } from '../../words/format.ts';
import { spokenLanguage, spokenLocale, words } from '../../words/words.ts';
import { DoingMore, DoingRow } from './doing.tsx';
import { EndCard } from './endCard.tsx';
import { MarksCard } from './marks.tsx';
import { PitchCards } from './pitchCards.tsx';
import { PrintSheet } from './printSheet.tsx';
import { Sentences } from './sentences.tsx';
import { debriefFor, type Speech } from './speech.ts';
import type { DebriefProps } from './types.ts';
import './debrief.css';
import './strip.css';
import './cards.css';
import './endCard.css';
import './print.css';

const chart = words('charts');

/** The page below its head. */
export function DebriefPage(props: DebriefProps): JSX.Element {
  const { level, report, guess, trace } = props;
  const course = useMemo(() => courseOfLevel(level, props.seed), [level, props.seed]);
  const speech = useSpeech(props, course.pitches.length);
  const { say } = speech;
  const mayAsk = speech.pitchCount > 0 && shiftsOf(trace).length > 0;
  const asksGuess = report === null ? mayAsk : report.guessPitch !== null;
  const open = report !== null && (guess !== null || !asksGuess);
  const data = useStripData(props, course, open);
  const paper = useRef<SVGSVGElement | null>(null);
  const savePicture = async (): Promise<void> => {
    if (paper.current === null) throw new Error('the picture is not drawn yet');
    props.onSavePicture(await paintPng(paper.current));
  };
  return (
    <div class="debrief-page" data-open={open}>
      {!props.same && <p class="cut paper-card notice">{say('differs')}</p>}
      <EndCard {...{ props, speech, asksGuess, open }}>
        <DoingRow {...props} say={say} onwards={open && report.verdict.next.code === 'onwards'} />
      </EndCard>
      {props.outside !== null && open && <Outside {...props.outside} />}
      <Explained {...{ props, data, speech, open, savePicture }} />
      {open && (
        <AfterPaint key={trace.samples.length}>
          {() => <Sheet {...{ props, data, speech, paper }} />}
        </AfterPaint>
      )}
    </div>
  );
}

/** What happened, why and where: folded away until somebody asks. */
function Explained(parts: {
  readonly props: DebriefProps;
  readonly data: StripData;
  readonly speech: Speech;
  readonly open: boolean;
  readonly savePicture: () => Promise<void>;
}): JSX.Element {
  const { props, data, speech, open, savePicture } = parts;
  const { report, nextLevelTitle, onWatch } = props;
  const { say } = speech;
  const best = useMemo(
    () => (open && data.reference !== null ? shiftsOf(data.reference) : []),
    [open, data.reference],
  );
  const onToggle = (event: Event): void => {
    const { open: unfolded } = event.currentTarget as HTMLDetailsElement;
    if (unfolded !== props.unfolded) props.onUnfold(unfolded);
  };
  return (
    <details class="explain" data-explain open={props.unfolded} onToggle={onToggle}>
      <summary>{say('end-explain')}</summary>
      <div class="explain-body">
        <section class="cut paper-card strip-card" aria-label={chart('title')}>
          <Strip data={data} pitch={report?.guessPitch ?? null} format={speech.format} onWatch={onWatch} />
        </section>
        {open && report !== null ? (
          <>
            <section class="cut paper-card">
              <Sentences
                withChange={false}
                verdict={report.verdict}
                nextLevelTitle={nextLevelTitle}
                speech={speech}
              />
            </section>
            <PitchCards
              course={data.course}
              machine={data.machine}
              pitches={report.pitches}
              own={report.shifts}
              best={best}
              speech={speech}
              onWatch={onWatch}
            />
            <MarksCard report={report} passMark={props.level.passMark} speech={speech} />
          </>
        ) : (
          <p class="closed">{say('closed')}</p>
        )}
        <DoingMore {...props} {...{ say, open, savePicture }} />
      </div>
    </details>
  );
}

/** What counts outside, after the first ride. */
function Outside({ title, sentences }: NonNullable<DebriefProps['outside']>): JSX.Element {
  return (
    <section class="cut paper-card">
      <h2>{title}</h2>
      <Lines lines={sentences} />
    </section>
  );
}

/** Words and numbers for the audience of the level; made anew when the language changes, and all that is drawn with them. */
function useSpeech({ level: { audience }, units }: DebriefProps, pitchCount: number): Speech {
  const language = `${spokenLanguage()} ${spokenLocale()}`;
  return useMemo(
    () => ({ say: debriefFor(audience), format: createFormat(units), pitchCount }),
    [audience, units, pitchCount, language],
  );
}

/** What the strip may show: without the best ride and without how heavy shifts were until the guess is made. */
function useStripData(
  { level, bike, rider, trace, reference, report }: DebriefProps,
  course: Course,
  open: boolean,
): StripData {
  const machine = useMemo(() => buildMachine(bike, rider), [bike, rider]);
  return useMemo(
    () => ({
      course,
      machine,
      trace,
      reference: open ? reference : null,
      shifts: open ? (report?.shifts ?? null) : null,
      audience: level.audience,
    }),
    [level, course, machine, trace, reference, report, open],
  );
}

function Sheet(parts: {
  readonly props: DebriefProps;
  readonly data: StripData;
  readonly speech: Speech;
  readonly paper: { current: SVGSVGElement | null };
}): JSX.Element | null {
  const { props, data, speech, paper } = parts;
  if (props.report === null) return null;
  return (
    <PrintSheet
      data={data}
      report={props.report}
      speech={speech}
      subtitle={speech.say('print-subtitle', {
        level: props.levelTitle,
        bike: props.bikeName,
        rider: props.riderName,
      })}
      nextLevelTitle={props.nextLevelTitle}
      cautions={props.cautions}
      stripRef={paper}
    />
  );
}

/** Draws its content only once what a person looks at has been painted. */
function AfterPaint({ children }: { readonly children: () => JSX.Element | null }): JSX.Element | null {
  const [painted, setPainted] = useState(false);
  useEffect(() => setPainted(true), []);
  return painted ? children() : null;
}
