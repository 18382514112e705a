/** "34 at the back?" typed in, and what those parts would do on this road. */
import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import type { GearOutcome, GearParts } from '../../core/coach/gearCheck.ts';
import { STEEPEST_MEAN_M } from '../../core/coach/gearSteady.ts';
import { Button } from '../../ui/controls.tsx';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { useCheck } from './answerText.tsx';
import { PartsTable, type TakeParts } from './candidates.tsx';
import { type GearAsked, readGearQuestion } from './question.ts';
import type { GearCheckProps, GearQuestion } from './services.ts';

const say = words('gearcheck');

interface Props extends Pick<GearCheckProps, 'format' | 'onCompute'> {
  readonly question: GearQuestion;
  readonly onTake: TakeParts;
}

/** The line to type in and its answer. */
export function AskPart(props: Props): JSX.Element {
  const { question, format } = props;
  const id = useId();
  const [text, setText] = useState('');
  const [asked, setAsked] = useState<GearAsked | null>(null);
  useEffect(() => setAsked(null), [question.bike]);
  const problem = asked !== null && !asked.ok ? say(`ask-${asked.why}`) : '';
  return (
    <Paper look="gear-ask" title={say('ask')}>
      <form
        class="row"
        onSubmit={(event) => {
          event.preventDefault();
          setAsked(readGearQuestion(text, question.bike));
        }}
      >
        <label>
          <span>{say('ask-label')}</span>
          <input
            type="text"
            autocomplete="off"
            placeholder={say('ask-example', { rear: question.bike.hub === undefined ? 'sprockets' : 'hub' })}
            value={text}
            aria-invalid={problem !== ''}
            aria-describedby={`${id}-problem`}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </label>
        <Button small submit>
          {say('ask-button')}
        </Button>
        <span id={`${id}-problem`} class="field-problem" role="alert">
          {problem}
        </span>
      </form>
      {asked?.ok === true && <Answer {...props} parts={asked.parts} key={format.parts(asked.parts)} />}
    </Paper>
  );
}

function Answer(props: Props & { readonly parts: GearParts }): JSX.Element {
  const { question, parts, format, onTake, onCompute } = props;
  const [{ own, candidates, status }] = useCheck({ ...question, asked: parts }, onCompute);
  const [candidate] = candidates;
  if (status === 'failed') return <p role="alert">{say('failed')}</p>;
  if (own === null || candidate === undefined) return <p aria-live="polite">{say('ask-working')}</p>;
  const rpm = (of: GearOutcome): number => Math.round(of.steady.cadenceRpm);
  return (
    <div aria-live="polite" data-asked={question.level.id}>
      <p class="gear-said">
        {say('ask-answer', {
          parts: format.parts(parts),
          rpm: rpm(candidate.outcome),
          own: rpm(own),
          length: format.distance(STEEPEST_MEAN_M),
        })}
      </p>
      <PartsTable own={own} candidates={[candidate]} {...{ format, onTake }} />
    </div>
  );
}
