/** The three things said after a ride, and only three; on the page the one to change stands on the card above them. */
import type { JSX } from 'preact';
import type { Verdict } from '../../core/coach/types.ts';
import { sayChange, sayNext, sayWell } from './say.ts';
import type { Speech } from './speech.ts';

interface SentencesProps {
  /** The one to change is left out where it stands already. */
  readonly withChange: boolean;
  readonly verdict: Verdict;
  readonly nextLevelTitle: string | null;
  readonly speech: Speech;
}

/** The three, with their headings. */
export function Sentences({ withChange, verdict, nextLevelTitle, speech }: SentencesProps): JSX.Element {
  const { say } = speech;
  const three = [
    { name: 'well', title: say('well-title'), sentence: sayWell(verdict.well, speech) },
    { name: 'change', title: say('change-title'), sentence: sayChange(verdict.change, speech) },
    { name: 'next', title: say('next-title'), sentence: sayNext(verdict.next, nextLevelTitle, speech) },
  ];
  return (
    <dl class="sentences">
      {three
        .filter(({ name }) => withChange || name !== 'change')
        .map(({ name, title, sentence }) => (
          <div key={name} class={name} data-debrief={name}>
            <dt>{title}</dt>
            <dd>{sentence}</dd>
          </div>
        ))}
    </dl>
  );
}
