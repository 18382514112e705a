/** A message in its three forms: codes, a link to copy, a file to save. */
import type { ComponentChildren, JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { useAnswer } from '../../ui/hooks.ts';
import { planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';
import { CodeShow } from './codeShow.tsx';
import type { Message } from './message.ts';
import { Button } from '../../ui/controls.tsx';
import { createFormat } from '../../words/format.ts';

const say = words('handover');

/** Longer links are cut by some messengers (characters). */
const LONG_LINK = 2_000;

/** A plan, and what is packed of it or of its rides once that is done; `pack` answers null where it is too big. */
export function Packed(props: {
  readonly plan: ClinicPlan;
  readonly pack: () => Promise<Message | null>;
  /** What it is packed of: with others of these it is packed anew. */
  readonly inputs: readonly unknown[];
  readonly before?: ComponentChildren;
  readonly children: (message: Message) => JSX.Element;
}): JSX.Element {
  const { plan, pack, inputs, before, children } = props;
  const message = useAnswer(pack, inputs);
  return (
    <section class="paper">
      <h2>
        <bdi>{planTitle(plan)}</bdi>
      </h2>
      {before}
      {message === 'waiting' && <output>{say('carry-making')}</output>}
      {(message === 'failed' || message === null) && <output>{say('carry-tooBig')}</output>}
      {message !== null && typeof message !== 'string' && children(message)}
    </section>
  );
}

interface CarryProps {
  readonly message: Message;
  /** What it is, in words. */
  readonly name: string;
  /** False where this page has no address that others can open. */
  readonly linked: boolean;
  /** Codes instead of the frames, where a link fits into one. */
  readonly codes?: readonly string[];
  readonly onSaveFile: (name: string, text: string) => void;
  /** Puts a text where it can be pasted from; false where the browser does not allow it. */
  readonly onCopy: (text: string) => Promise<boolean>;
}

/** Codes first; the rest below. */
export function Carry(props: CarryProps): JSX.Element {
  const { message, name, codes, linked, onSaveFile, onCopy } = props;
  const [told, setTold] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const copyLink = (): void =>
    void onCopy(message.link).then((done) => {
      // Marked, so that one more key or a finger copies it.
      if (!done) field.current?.select();
      setTold(done ? say('carry-copied') : say('carry-notCopied'));
    });
  return (
    <div class="carry">
      <CodeShow frames={codes ?? message.frames} name={name} />
      <div class="carry-others">
        {linked ? (
          <>
            <label>
              <span>
                {say('carry-link')} · {sizeOf(message.link.length)}
              </span>
              <input
                type="text"
                readOnly
                data-link
                ref={field}
                value={message.link}
                onFocus={(event) => event.currentTarget.select()}
              />
            </label>
            <p class="hint">{message.link.length > LONG_LINK ? say('carry-longLink') : say('carry-site')}</p>
          </>
        ) : (
          <p class="reader-problem" data-only-here>
            {say('carry-onlyHere')}
          </p>
        )}
        <div class="buttons">
          {linked && (
            <Button data-copy-link onClick={copyLink}>
              {say('carry-copy')}
            </Button>
          )}
          <Button data-save-file onClick={() => onSaveFile(message.file.name, message.file.text)}>
            {say('carry-file')} · {sizeOf(new TextEncoder().encode(message.file.text).length)}
          </Button>
        </div>
        <output>{told}</output>
      </div>
    </div>
  );
}

/** A number of bytes. */
function sizeOf(bytes: number): string {
  if (bytes < 1_000) return say('size-bytes', { bytes });
  return say('size-kilobytes', { size: createFormat('metric').number(bytes / 1_000, 1) });
}

/** A number of bytes, and in how many codes they go. */
export function sizeAndCodes(bytes: number, codes: number): string {
  return say('handOut-size', { size: sizeOf(bytes), codes });
}
