/** The three things said after a ride, and only three. */
import type { JSX } from 'preact';
import type { Verdict } from '../../core/coach/types.ts';
import { sayChange, sayNext, sayWell, type Speech } from './say.ts';

interface SentencesProps {
  readonly verdict: Verdict;
  readonly nextLevelTitle: string | null;
  readonly speech: Speech;
}

/** The three, with their headings. */
export function Sentences({ verdict, nextLevelTitle, speech }: SentencesProps): JSX.Element {
  const { words } = speech;
  const three = [
    { name: 'well', title: words.well.title, sentence: sayWell(verdict.well, speech) },
    { name: 'change', title: words.change.title, sentence: sayChange(verdict.change, speech) },
    { name: 'next', title: words.next.title, sentence: sayNext(verdict.next, nextLevelTitle, speech) },
  ];
  return (
    <dl class="sentences">
      {three.map(({ name, title, sentence }) => (
        <div key={name} class={name} data-debrief={name}>
          <dt>{title}</dt>
          <dd>{sentence}</dd>
        </div>
      ))}
    </dl>
  );
}
