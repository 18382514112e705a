/**
 * The reader of a page: camera, pictures and files, pasted text. Shows which codes have been read, names those that
 * are missing or damaged, and hands on what has become complete.
 */
import { FileButton } from '../../ui/fileButton.tsx';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Choice } from '../../ui/controls.tsx';
import type { HandoverWords } from './words.ts';
import { CameraBox } from './cameraBox.tsx';
import { openDamage, openMessages } from './reading.ts';
import type { ReadRidesAway } from './services.ts';
import { type Arrive, type UsedReading, useReading } from './useReading.ts';

/** What a link that lost its end looks like. */
const CUT: readonly string[] = ['checksum', 'not-a-frame'];

type Way = 'camera' | 'picture' | 'text';
const WAYS: readonly Way[] = ['camera', 'picture', 'text'];

/** What a reader is given. */
interface ReaderProps {
  readonly words: HandoverWords;
  /** What was in the link that opened the page, or empty. */
  readonly arrived: string;
  /** Something is complete; a sentence that comes back is shown. */
  readonly onArrival: Arrive;
  readonly readRides: ReadRidesAway;
}

/** The reader. */
export function Reader({ words, arrived, onArrival, readRides }: ReaderProps): JSX.Element {
  const say = words.reader;
  const reading = useReading(words, onArrival, readRides);
  const [way, setWay] = useState<Way>('camera');
  const { take } = reading;
  useEffect(() => {
    if (arrived !== '') take(`#join/${arrived}`);
  }, [arrived, take]);
  return (
    <section class="paper reader" data-busy={reading.busy}>
      <Choice
        legend={say.ways}
        name="reader-way"
        value={way}
        options={WAYS.map((one) => [one, say[one]] as const)}
        onChoose={setWay}
      />
      {way === 'camera' && <CameraBox words={words} onText={take} />}
      {way === 'picture' && <FileBox words={words} onFiles={reading.takeFiles} />}
      {way === 'text' && <TextBox words={words} onText={take} />}
      {reading.share !== null && (
        <p class="reader-way" data-long-reading>
          <progress value={reading.share} max={1} aria-label={say.reading} />
          <button type="button" class="button" data-stop-reading onClick={reading.stop}>
            {say.stopReading}
          </button>
        </p>
      )}
      <Progress reading={reading} words={words} cut={arrived !== ''} />
    </section>
  );
}

function FileBox(props: {
  readonly words: HandoverWords;
  readonly onFiles: (files: readonly File[]) => void;
}): JSX.Element {
  const say = props.words.reader;
  return (
    <div class="reader-way">
      <p>{say.chooseHint}</p>
      <FileButton
        name="data-read-files"
        class="button strong"
        multiple
        accept="image/*,.json,.jsonl,.txt,application/json,text/plain"
        onFiles={props.onFiles}
      >
        {say.choose}
      </FileButton>
    </div>
  );
}

function TextBox(props: {
  readonly words: HandoverWords;
  readonly onText: (text: string) => void;
}): JSX.Element {
  const say = props.words.reader;
  const [text, setText] = useState('');
  return (
    <form
      class="reader-way"
      onSubmit={(event) => {
        event.preventDefault();
        props.onText(text);
        setText('');
      }}
    >
      <label>
        <span>{say.paste}</span>
        <textarea
          rows={4}
          data-read-text
          spellcheck={false}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <button type="submit" class="button strong" data-take-text>
        {say.take}
      </button>
    </form>
  );
}

/** How far every message has come, what is damaged, and what was told last. */
function Progress(props: {
  readonly reading: UsedReading;
  readonly words: HandoverWords;
  /** What is damaged came in a link. */
  readonly cut: boolean;
}): JSX.Element {
  const say = props.words.reader;
  const { reading, sentences } = props.reading;
  return (
    <output class="reader-told">
      {openMessages(reading).map(({ id, count, missing }) => (
        <span key={id} class="reader-line" data-open-message={id}>
          <Squares count={count} missing={missing} />
          <strong>{say.read(count - missing.length, count)}</strong> {say.missing(missing)}
        </span>
      ))}
      {openDamage(reading).map((frame) => (
        <span key={`${frame.code} ${frame.messageId} ${frame.number}`} class="reader-line" data-damaged-frame>
          {props.cut && CUT.includes(frame.code) ? say.cut : say.damaged(frame)}
        </span>
      ))}
      {sentences.map((sentence) => (
        <span key={sentence} class="reader-line" data-told>
          {sentence}
        </span>
      ))}
    </output>
  );
}

/** One square a code, filled when it has been read; the sentence beside it says the same. */
function Squares({
  count,
  missing,
}: {
  readonly count: number;
  readonly missing: readonly number[];
}): JSX.Element {
  const open = new Set(missing);
  return (
    <span class="reader-squares" aria-hidden="true">
      {Array.from({ length: Math.min(count, 60) }, (_, i) => (
        <i key={i} class={open.has(i + 1) ? '' : 'read'} />
      ))}
    </span>
  );
}
