/** The list of what must be done at home, each line checked live where the browser can tell. */
import type { JSX } from 'preact';
import { useCallback, useEffect, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
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
import { Button } from '../../ui/controls.tsx';

const say = words('handover');

const MARKS: Readonly<Record<CheckAnswer, string>> = { done: '✓', open: '○', wrong: '✕', unknown: '?' };

export function ReadinessList({ host }: { readonly host: ReadinessHost }): JSX.Element {
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
      <h2>{say('ready-title')}</h2>
      <p>{say('ready-intro')}</p>
      <ul class="evening-list">
        {READINESS.map((name) => (
          <Line key={name} name={name} answer={answers?.[name] ?? null}>
            {name === 'camera' && answers?.camera === 'open' && (
              <Button onClick={() => afterwards(allowCamera(host))}>{say('ready-allowCamera')}</Button>
            )}
            {name === 'keeping' && answers?.keeping === 'open' && (
              <Button onClick={() => afterwards(askKeeping(host))}>{say('ready-keep')}</Button>
            )}
          </Line>
        ))}
      </ul>
      <div class="buttons">
        <Button onClick={check}>{say('ready-again')}</Button>
      </div>
    </section>
  );
}

function Line(props: {
  readonly name: ReadinessCheck;
  readonly answer: CheckAnswer | null;
  readonly children: readonly (JSX.Element | false)[];
}): JSX.Element {
  const { name, answer } = props;
  // What the browser does not say may be done here and now.
  const advice = answer === 'unknown' ? 'open' : answer;
  return (
    <li data-check={name} data-answer={answer ?? ''}>
      <span class="evening-mark" aria-hidden="true">
        {answer === null ? '…' : MARKS[answer]}
      </span>
      <span class="evening-words">
        <strong>
          {say(`ready-${name}`)}
          {answer !== null && <span class="evening-state"> · {say(`ready-${answer}`)}</span>}
        </strong>
        {answer !== null && <span>{say.coded(`ready-${name}-${advice}` as 'ready-secure-done', {})}</span>}
        {props.children}
      </span>
    </li>
  );
}
