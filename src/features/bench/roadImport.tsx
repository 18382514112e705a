/**
 * A road from a GPX file: chosen or dropped, read in a worker with its progress, then handed to the choice of the
 * stretch. What cannot be used is said in a sentence; nothing of the file is kept here.
 */
import { Button, Choice, FileButton, RIDE_FILES } from '../../ui/controls.tsx';
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { RoadAnswers } from '../../core/gpx/choose.ts';
import type { GpxOutcome, RoadSummary } from '../../core/gpx/summary.ts';
import type { RoadQuestion } from '../../core/gpx/types.ts';
import type { Problem } from '../../core/level/problems.ts';
import type { Send } from '../../state/store.ts';
import { RoadFacts } from './roadFacts.tsx';
import { useFormat } from './say.ts';
import { StretchChoice } from './stretchChoice.tsx';
import type { BenchServices, RoadReading } from './services.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { sentenceIn } from '../../words/problems.ts';

const say = words('bench');

type Stage =
  | { readonly kind: 'empty' | 'cancelled' }
  | { readonly kind: 'reading'; readonly share: number }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] }
  | { readonly kind: 'road'; readonly road: RoadSummary; readonly file: number };

let files = 0;

export function RoadImport(props: {
  readonly services: BenchServices;
  readonly send: Send;
  /** A file that was dropped on the page, and whether one hangs over it. */
  readonly dropped: File | null;
  readonly over: boolean;
  readonly onTaken: () => void;
}): JSX.Element {
  const { services, send, dropped, over, onTaken } = props;
  const { stage, questions, answers, read, answer, cancel } = useReading(services);
  const format = useFormat();
  useEffect(() => {
    if (dropped === null) return;
    void read(dropped);
    onTaken();
  }, [dropped]);
  return (
    <>
      <Picker over={over} onFile={(file) => void read(file)} />
      <section class="paper" data-road={stage.kind} aria-live="polite" hidden={stage.kind === 'empty'}>
        {stage.kind === 'reading' && <Reading share={stage.share} onCancel={cancel} />}
        {stage.kind === 'cancelled' && <p>{say('road-cancelled')}</p>}
        {stage.kind === 'refused' && (
          <>
            <h2>{say('road-refused')}</h2>
            {stage.problems.map((problem) => (
              <p key={problem.code} data-problem={problem.code}>
                {sentenceIn(format)(problem)}
              </p>
            ))}
          </>
        )}
        {stage.kind === 'road' && <RoadFacts road={stage.road} />}
      </section>
      {questions.length > 0 && (
        <Questions {...{ questions, answers }} onAnswer={(more) => void answer(more)} />
      )}
      {stage.kind === 'road' && (
        <StretchChoice
          key={`${stage.file} ${JSON.stringify(answers)}`}
          road={stage.road}
          services={services}
          send={send}
        />
      )}
    </>
  );
}

/** Reads one file at a time; a newer one takes the place of an older one. */
function useReading(services: BenchServices) {
  const [stage, setStage] = useState<Stage>({ kind: 'empty' });
  const [questions, setQuestions] = useState<readonly RoadQuestion[]>([]);
  const [answers, setAnswers] = useState<RoadAnswers>({});
  const reading = useRef<RoadReading | null>(null);
  const cancel = (): void => reading.current?.cancel();
  useEffect(() => {
    services.prepareRoad();
    return cancel;
  }, []);
  const read = async (file: Blob): Promise<void> => {
    cancel();
    files += 1;
    const number = files;
    setQuestions([]);
    setAnswers({});
    setStage({ kind: 'reading', share: 0 });
    const mine = services.readRoad(file, (share) => {
      if (number === files && reading.current === mine) setStage({ kind: 'reading', share });
    });
    reading.current = mine;
    const outcome = await mine.outcome;
    if (number !== files) return;
    reading.current = null;
    if (outcome.kind === 'road') setQuestions(outcome.road.questions);
    setStage(stageOf(outcome, number));
  };
  const answer = async (more: RoadAnswers): Promise<void> => {
    const all = { ...answers, ...more };
    setAnswers(all);
    const number = files;
    const outcome = await services.answerRoad(all);
    if (number === files) setStage(stageOf(outcome, number));
  };
  return { stage, questions, answers, read, answer, cancel } as const;
}

function Reading({
  share,
  onCancel,
}: {
  readonly share: number;
  readonly onCancel: () => void;
}): JSX.Element {
  const shown = say('road-reading', { share: useFormat().percent(share) });
  return (
    <>
      <progress value={share} max={1} aria-label={shown} />
      <p>{shown}</p>
      <Button data-cancel onClick={onCancel}>
        {say('road-cancel')}
      </Button>
    </>
  );
}

function stageOf(outcome: GpxOutcome, file: number): Stage {
  switch (outcome.kind) {
    case 'road':
      return { kind: 'road', road: outcome.road, file };
    case 'refused':
      return { kind: 'refused', problems: outcome.problems };
    case 'cancelled':
      return { kind: 'cancelled' };
  }
}

/** Says that a file can be dropped, with a button for those who would rather choose one. */
function Picker(props: { readonly over: boolean; readonly onFile: (file: Blob) => void }): JSX.Element {
  return (
    <section
      class={`paper row drop-place ${props.over ? 'over' : ''}`}
      aria-label={say('road-title')}
      data-drop
    >
      <FileButton
        name="data-gpx"
        class="button strong"
        accept={RIDE_FILES}
        onFiles={([file]) => file && props.onFile(file)}
      >
        {say('road-choose')}
      </FileButton>
      <span>{say('road-drop')}</span>
    </section>
  );
}

/** What only a person can decide. */
function Questions(props: {
  readonly questions: readonly RoadQuestion[];
  readonly answers: RoadAnswers;
  readonly onAnswer: (answers: RoadAnswers) => void;
}): JSX.Element {
  const { questions, answers, onAnswer } = props;
  const sentenceOf = sentenceIn(useFormat());
  return (
    <Paper title={say('road-questions')} data-questions>
      {questions.map((question) => (
        <Choice
          key={question.code}
          legend={sentenceOf(question)}
          name={`road-${question.path}`}
          value={`${answers[question.path as keyof RoadAnswers] ?? question.taken}`}
          options={question.options.map((option) => [option, optionWords(option)])}
          onChoose={(option) => onAnswer(answerOf(question, option))}
        />
      ))}
    </Paper>
  );
}

function optionWords(option: string): string {
  const name = `road-options-${option}`;
  return say.has(name) ? say(name) : say('road-track', { track: option });
}

function answerOf({ path }: RoadQuestion, option: string): RoadAnswers {
  if (path === 'tracks') return { tracks: option === 'join' ? option : Number(option) };
  if (path === 'heights') return { heights: option === 'feet' ? option : 'metres' };
  return { holes: option === 'longest-part' ? option : 'straight' };
}
