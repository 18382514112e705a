/** The list of what must be done at home, each line checked live where the browser can tell. */
import type { JSX } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import type { HandoverWords } from './words.ts';
import {
  allowCamera,
  askKeeping,
  type CheckAnswer,
  checkEvening,
  EVENING,
  type EveningAnswers,
  type EveningCheck,
  type EveningHost,
} from './evening.ts';

const MARKS: Readonly<Record<CheckAnswer, string>> = { done: '✓', open: '○', wrong: '✕', unknown: '?' };

/** The list. */
export function EveningList({
  host,
  words,
}: {
  readonly host: EveningHost;
  readonly words: HandoverWords;
}): JSX.Element {
  const say = words.evening;
  const [answers, setAnswers] = useState<EveningAnswers | null>(null);
  const check = useCallback((): void => void checkEvening(host).then(setAnswers), [host]);
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
        {EVENING.map((name) => (
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
  readonly name: EveningCheck;
  readonly answer: CheckAnswer | null;
  readonly words: HandoverWords;
  readonly children: readonly (JSX.Element | false)[];
}): JSX.Element {
  const { name, answer } = props;
  const say = props.words.evening;
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
