/**
 * Guess first: the question, its three buttons, and then the answer. Judging one's own error before being told
 * helps learning, so nothing on the page gives the answer away before.
 */
import type { Guess } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import type { RideReport } from '../../core/coach/types.ts';
import { guessPitchOf, questionOf, sayAnswer, sayPitchTitle, TIMINGS } from './say.ts';
import type { Speech } from './speech.ts';
import { Button } from '../../ui/controls.tsx';

interface GuessProps {
  readonly report: RideReport | null;
  readonly share: number | 'failed' | null;
  readonly guess: Guess | null;
  readonly speech: Speech;
  readonly onGuess: (guess: Guess) => void;
}

/** The card. */
export function GuessCard(props: GuessProps): JSX.Element {
  const { report, guess, speech } = props;
  if (guess === null) return <Question {...props} />;
  const pitch = report === null ? undefined : guessPitchOf(report);
  return (
    <section class="guess" aria-labelledby="guess-title">
      <h2 id="guess-title">
        {pitch === undefined ? speech.say('guess-title') : sayPitchTitle(pitch.index, speech)}
      </h2>
      <div class="answers" data-debrief="answer">
        {report === null ? (
          <Working {...props} />
        ) : (
          sayAnswer(guess, pitch, speech).map((sentence, i) => (
            <span key={sentence} class={['answer', '', 'kind'][i] ?? ''}>
              {sentence}{' '}
            </span>
          ))
        )}
      </div>
    </section>
  );
}

function Question({ report, speech, onGuess, ...rest }: GuessProps): JSX.Element {
  const { say } = speech;
  return (
    <section class="guess" aria-labelledby="guess-title">
      <h2 id="guess-title">{say('guess-title')}</h2>
      <p class="question">{questionOf(report, speech)}</p>
      <div class="guess-buttons">
        {TIMINGS.map((timing) => (
          <Button look="big" key={timing} data-guess={timing} onClick={() => onGuess(timing)}>
            {say('timing', { timing })}
          </Button>
        ))}
      </div>
      <p class="quiet">
        {say('guess-why')}{' '}
        <Button look="link" data-guess="skipped" onClick={() => onGuess('skipped')}>
          {say('guess-skip')}
        </Button>
      </p>
      {report === null && <Working {...{ report, speech, onGuess, ...rest }} />}
    </section>
  );
}

/** The best ride is still being looked for, or could not be found now. */
export function Working({ share, speech }: Pick<GuessProps, 'share' | 'speech'>): JSX.Element {
  const { say, format } = speech;
  if (share === 'failed') return <span data-not-marked>{say('guess-notMarked')}</span>;
  return (
    <span class="quiet working">
      {say('guess-working')}
      {share !== null && (
        <progress value={share} max="1">
          {say('guess-share', { percent: format.percent(share) })}
        </progress>
      )}
    </span>
  );
}
