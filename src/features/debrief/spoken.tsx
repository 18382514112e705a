/**
 * What a screen reader says of itself after a ride, in one place and one order: the question, or what became of the
 * ride and the one thing to change; and last, if it is so, that the ride was not kept.
 */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { endingOf } from './ending.ts';
import { guessPitchOf, sayAnswer, sayFinding } from './say.ts';
import type { Speech } from './speech.ts';
import type { DebriefProps } from './types.ts';

/** Not seen; read aloud when it changes, after the title of the page. */
export function Spoken(parts: {
  readonly props: DebriefProps;
  readonly speech: Speech;
  readonly asksGuess: boolean;
  readonly open: boolean;
}): JSX.Element {
  const text = sentences(parts).join(' ');
  // What a page comes with is not read aloud; what is written into it afterwards is.
  const [said, setSaid] = useState('');
  useEffect(() => setSaid(text), [text]);
  return (
    <output class="unseen" data-debrief="spoken">
      {said}
    </output>
  );
}

function sentences({ props, speech, asksGuess, open }: Parameters<typeof Spoken>[0]): readonly string[] {
  const { report, guess, share, saved } = props;
  const { say } = speech;
  const kept = saved.state === 'not-saved' ? [saved.sentence ?? say('saved-not-saved')] : [];
  // The question at once, and not a second time when it is known which pitch is meant.
  if (asksGuess && guess === null) return [say('guess-openQuestion'), ...kept];
  if (report === null) return share === 'failed' ? [say('guess-notMarked'), ...kept] : kept;
  if (!open) return kept;
  const answer = asksGuess && guess !== null ? sayAnswer(guess, guessPitchOf(report), speech) : [];
  return [...answer, say(`end-${endingOf(props.level, report)}`), sayFinding(report, speech), ...kept];
}
