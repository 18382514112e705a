/**
 * The reader of a page: camera, pictures and files, pasted text. Shows which codes have been read, names those that
 * are missing or damaged, and hands on what has become complete.
 */
import { Button, Choice, FileButton } from '../../ui/controls.tsx';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
import type { DamagedFrame } from '../../core/transfer/frames.ts';
import { CameraBox } from './cameraBox.tsx';
import { type Arrive, openDamage, openMessages, type UsedReading, useReading } from './reading.ts';
import type { ReadRidesAway } from './services.ts';

const say = words('handover');

/** What a link that lost its end looks like. */
const CUT: readonly string[] = ['checksum', 'not-a-frame'];

type Way = 'camera' | 'picture' | 'text';
const WAYS: readonly Way[] = ['camera', 'picture', 'text'];

interface ReaderProps {
  /** What was in the link that opened the page, or empty. */
  readonly arrived: string;
  /** Something is complete; a sentence that comes back is shown. */
  readonly onArrival: Arrive;
  readonly readRides: ReadRidesAway;
}

export function Reader({ arrived, onArrival, readRides }: ReaderProps): JSX.Element {
  const reading = useReading(onArrival, readRides);
  const [way, setWay] = useState<Way>('camera');
  const { take } = reading;
  useEffect(() => {
    if (arrived !== '') take(`#join/${arrived}`);
  }, [arrived, take]);
  return (
    <section class="paper reader" data-busy={reading.busy}>
      <Choice
        legend={say('reader-ways')}
        name="reader-way"
        value={way}
        options={WAYS.map((one) => [one, say(`reader-${one}`)] as const)}
        onChoose={setWay}
      />
      {way === 'camera' && <CameraBox onText={take} />}
      {way === 'picture' && <FileBox onFiles={reading.takeFiles} />}
      {way === 'text' && <TextBox onText={take} />}
      {reading.share !== null && (
        <p class="reader-way" data-long-reading>
          <progress value={reading.share} max={1} aria-label={say('reader-reading')} />
          <Button data-stop-reading onClick={reading.stop}>
            {say('reader-stopReading')}
          </Button>
        </p>
      )}
      <Progress reading={reading} cut={arrived !== ''} />
    </section>
  );
}

function FileBox(props: { readonly onFiles: (files: readonly File[]) => void }): JSX.Element {
  return (
    <div class="reader-way">
      <p>{say('reader-chooseHint')}</p>
      <FileButton
        name="data-read-files"
        class="button strong"
        multiple
        accept="image/*,.json,.jsonl,.txt,application/json,text/plain"
        onFiles={props.onFiles}
      >
        {say('reader-choose')}
      </FileButton>
    </div>
  );
}

function TextBox(props: { readonly onText: (text: string) => void }): JSX.Element {
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
        <span>{say('reader-paste')}</span>
        <textarea
          rows={4}
          data-read-text
          spellcheck={false}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <Button strong submit data-take-text>
        {say('reader-take')}
      </Button>
    </form>
  );
}

/** How far every message has come, what is damaged, and what was told last. */
function Progress(props: {
  readonly reading: UsedReading;
  /** What is damaged came in a link. */
  readonly cut: boolean;
}): JSX.Element {
  const { reading, sentences } = props.reading;
  return (
    <output class="reader-told">
      {openMessages(reading).map(({ id, count, missing }) => (
        <span key={id} data-open-message={id}>
          <Squares count={count} missing={missing} />
          <strong>{say('reader-read', { read: count - missing.length, count })}</strong>{' '}
          {say('reader-missing', { count: missing.length, numbers: missing.join(', ') })}
        </span>
      ))}
      {openDamage(reading).map((frame) => (
        <span key={`${frame.code} ${frame.messageId} ${frame.number}`} data-damaged-frame>
          {props.cut && CUT.includes(frame.code) ? say('reader-cut') : damageSentence(frame)}
        </span>
      ))}
      {sentences.map((sentence) => (
        <span key={sentence} data-told>
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
    <span class="wrap reader-squares" aria-hidden="true">
      {Array.from({ length: Math.min(count, 60) }, (_, i) => (
        <i key={i} class={open.has(i + 1) ? '' : 'read'} />
      ))}
    </span>
  );
}

function damageSentence({ code, number }: DamagedFrame): string {
  return say.coded(`damaged-${code}`, { number: number ?? 0 });
}
