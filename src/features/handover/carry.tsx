/** A message in its three forms: codes, a link to copy, a file to save. */
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { useAnswer } from '../../ui/hooks.ts';
import { planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';
import type { Message } from './message.ts';
import { Button, Choice } from '../../ui/controls.tsx';
import { createFormat } from '../../words/format.ts';
import { CodePicture } from '../../ui/pictures/codePicture.tsx';
import { common } from '../../words/common.ts';

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

export interface CarryProps {
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

/** How long each code stands (ms). A camera needs about half a second in good light. */
const PERIODS_MS = { slow: 2_400, usual: 1_200, fast: 600 } as const;
type Speed = keyof typeof PERIODS_MS;
const SPEEDS = Object.keys(PERIODS_MS) as Speed[];
/** More codes than this get no button each. */
const MOST_BUTTONS = 40;

interface CodeShowProps {
  readonly frames: readonly string[];
  /** What the codes carry, for those who cannot see them. */
  readonly name: string;
}

/** Codes on the screen, one after another: which one it is, pause, back and forth, how fast, and big. */
export function CodeShow({ frames, name }: CodeShowProps): JSX.Element {
  const [place, setPlace] = useState({ frames, at: 0 });
  const [playing, setPlaying] = useState(() => !wantsStillness());
  const [speed, setSpeed] = useState<Speed>('usual');
  const [big, setBig] = useState(false);
  const all = frames.length;
  // Other codes begin at their first one.
  const index = place.frames === frames ? Math.min(place.at, all - 1) : 0;
  useEffect(() => {
    if (!playing || all < 2) return undefined;
    const timer = window.setInterval(() => {
      setPlace((now) => ({ frames, at: now.frames === frames ? (now.at + 1) % all : 0 }));
    }, PERIODS_MS[speed]);
    return () => window.clearInterval(timer);
  }, [playing, speed, all, frames]);
  const go = (to: number): void => {
    setPlaying(false);
    setPlace({ frames, at: (to + all) % all });
  };
  const picture = (
    <CodePicture
      look="code"
      text={frames[index] ?? ''}
      label={say('code-picture', { what: name, number: index + 1, all })}
    />
  );
  const buttons = (
    <Buttons
      {...{ all, index, playing, go }}
      onPlay={() => setPlaying(!playing)}
      onBig={big ? null : () => setBig(true)}
    />
  );
  return (
    <div class="code-show" data-code={index + 1} data-codes={all}>
      {picture}
      {buttons}
      {all > 1 && !big && (
        <>
          <Choice
            legend={say('code-speed')}
            name="code-speed"
            value={speed}
            options={SPEEDS.map((one) => [one, say(`code-speed-${one}`)] as const)}
            onChoose={setSpeed}
          />
          <Numbers {...{ all, index, go }} />
          <p class="hint">{say('code-hint')}</p>
        </>
      )}
      {big && (
        <Big label={name} onClose={() => setBig(false)}>
          {picture}
          {buttons}
        </Big>
      )}
    </div>
  );
}

function Buttons(props: {
  readonly all: number;
  readonly index: number;
  readonly playing: boolean;
  readonly go: (to: number) => void;
  readonly onPlay: () => void;
  readonly onBig: (() => void) | null;
}): JSX.Element {
  const { all, index, playing, go } = props;
  return (
    <div class="row code-buttons">
      {all > 1 && (
        <>
          <strong class="code-number">{say('code-number', { number: index + 1, all })}</strong>
          <Button aria-label={say('code-back')} onClick={() => go(index - 1)}>
            ←
          </Button>
          <Button data-play onClick={props.onPlay}>
            {playing ? say('code-pause') : say('code-play')}
          </Button>
          <Button aria-label={say('code-next')} onClick={() => go(index + 1)}>
            →
          </Button>
        </>
      )}
      {props.onBig !== null && (
        <Button data-big onClick={props.onBig}>
          {say('code-big')}
        </Button>
      )}
    </div>
  );
}

/** Straight to a number, for the one that is missing. */
function Numbers(props: {
  readonly all: number;
  readonly index: number;
  readonly go: (to: number) => void;
}): JSX.Element | null {
  const { all, index, go } = props;
  if (all > MOST_BUTTONS) return null;
  return (
    <div class="wrap code-numbers">
      {Array.from({ length: all }, (_, i) => (
        <Button
          key={i}
          look="pick"
          aria-label={say('code-jump', { number: i + 1 })}
          aria-current={i === index ? 'true' : undefined}
          onClick={() => go(i)}
        >
          {i + 1}
        </Button>
      ))}
    </div>
  );
}

/** The code on the whole screen. */
function Big(props: {
  readonly label: string;
  readonly onClose: () => void;
  readonly children: readonly JSX.Element[];
}): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog
      ref={dialog}
      class="code-big"
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
    >
      {props.children}
      <Button look="button code-close" onClick={props.onClose}>
        {common('nav-close')}
      </Button>
    </dialog>
  );
}

/** A sequence that begins by itself is movement; who wants less of it begins it by hand. */
function wantsStillness(): boolean {
  return document.documentElement.dataset['motion'] === 'reduced';
}
