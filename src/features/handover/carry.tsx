/** A message in its three forms: codes, a link to copy, a file to save. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { HandoverWords } from './words.ts';
import { CodeShow } from './codeShow.tsx';
import type { Message } from './message.ts';

/** Longer links are cut by some messengers (characters). */
const LONG_LINK = 2_000;

/** What is carried and what can be done with it. */
interface CarryProps {
  readonly message: Message;
  /** What it is, in words. */
  readonly name: string;
  /** Codes instead of the frames, where a link fits into one. */
  readonly codes?: readonly string[];
  readonly words: HandoverWords;
  readonly onSaveFile: (name: string, text: string) => void;
  /** Puts a text where it can be pasted from; false where the browser does not allow it. */
  readonly onCopy: (text: string) => Promise<boolean>;
}

/** Codes first; the rest below. */
export function Carry({ message, name, codes, words, onSaveFile, onCopy }: CarryProps): JSX.Element {
  const { carry } = words;
  const [told, setTold] = useState('');
  return (
    <div class="carry">
      <CodeShow frames={codes ?? message.frames} name={name} words={words} />
      <div class="carry-others">
        <label>
          <span>
            {carry.link} · {words.size(message.link.length)}
          </span>
          <input
            type="text"
            readOnly
            data-link
            value={message.link}
            onFocus={(event) => event.currentTarget.select()}
          />
        </label>
        <p class="code-hint">{message.link.length > LONG_LINK ? carry.longLink : carry.site}</p>
        <div class="buttons">
          <button
            type="button"
            class="button"
            onClick={() =>
              void onCopy(message.link).then((done) => setTold(done ? carry.copied : carry.notCopied))
            }
          >
            {carry.copy}
          </button>
          <button
            type="button"
            class="button"
            data-save-file
            onClick={() => onSaveFile(message.file.name, message.file.text)}
          >
            {carry.file} · {words.size(new TextEncoder().encode(message.file.text).length)}
          </button>
        </div>
        <output>{told}</output>
      </div>
    </div>
  );
}
