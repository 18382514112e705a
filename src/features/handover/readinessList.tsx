/** The list of what must be done at home, each line checked live where the browser can tell. */
import type { JSX } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import type { HandoverWords } from './words.ts';
import {
  allowCamera,
  askKeeping,
  type CheckAnswer,
  checkReadiness,
  READINESS,
  type ReadinessAnswers,
  type ReadinessCheck,
  type ReadinessHost,
} from './readiness.ts';

const MARKS: Readonly<Record<CheckAnswer, string>> = { done: '✓', open: '○', wrong: '✕', unknown: '?' };

/** The list. */
export function ReadinessList({
  host,
  words,
}: {
  readonly host: ReadinessHost;
  readonly words: HandoverWords;
}): JSX.Element {
  const say = words.readiness;
  const [answers, setAnswers] = useState<ReadinessAnswers | null>(null);
  const check = useCallback((): void => void checkReadiness(host).then(setAnswers), [host]);
  useEffect(() => {
    check();
    // Whoever comes back from the browser's settings wants to see what has changed.
    window.addEventListener('focus', check);
    return () => window.removeEventListener('focus', check);
  }, [check]);
  const afterwards = (doing: Promise<void>): void => void doing.then(check);
  return (
    <section class="paper evening">
      <h2>{say.title}</h2>
      <p>{say.intro}</p>
      <ul>
        {READINESS.map((name) => (
          <Line key={name} name={name} answer={answers?.[name] ?? null} words={words}>
            {name === 'camera' && answers?.camera === 'open' && (
              <button type="button" class="button" onClick={() => afterwards(allowCamera(host))}>
                {say.allowCamera}
              </button>
            )}
            {name === 'keeping' && answers?.keeping === 'open' && (
              <button type="button" class="button" onClick={() => afterwards(askKeeping(host))}>
                {say.keep}
              </button>
            )}
          </Line>
        ))}
      </ul>
      <div class="buttons">
        <button type="button" class="button" onClick={check}>
          {say.again}
        </button>
      </div>
    </section>
  );
}

function Line(props: {
  readonly name: ReadinessCheck;
  readonly answer: CheckAnswer | null;
  readonly words: HandoverWords;
  readonly children: readonly (JSX.Element | false)[];
}): JSX.Element {
  const { name, answer } = props;
  const say = props.words.readiness;
  const check = say.checks[name];
  return (
    <li data-check={name} data-answer={answer ?? ''}>
      <span class="evening-mark" aria-hidden="true">
        {answer === null ? '…' : MARKS[answer]}
      </span>
      <span class="evening-words">
        <strong>
          {check.title}
          {answer !== null && <span class="evening-state"> · {say[answer]}</span>}
        </strong>
        {answer !== null && (
          <span>{answer === 'done' ? check.done : answer === 'wrong' ? check.wrong : check.todo}</span>
        )}
        {props.children}
      </span>
    </li>
  );
}
