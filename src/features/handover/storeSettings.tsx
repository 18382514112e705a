/** The settings of a club's own store, going from device to device: shown as a code and a link, scanned or pasted. */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { CameraBox } from './cameraBox.tsx';
import { CodeShow } from './codeShow.tsx';
import { readStoreLink, type StoreAddress } from './storeCode.ts';
import type { SharedWords } from './storeWords.ts';
import type { HandoverWords } from './words.ts';

/** A code to scan and a link to paste, behind a button, because whoever sees them can read all rides. */
export function GiveSettings(props: {
  /** Null where this page has no address that others can open. */
  readonly link: string | null;
  readonly words: SharedWords;
  readonly handover: HandoverWords;
}): JSX.Element {
  const { link, words, handover } = props;
  const [shown, setShown] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  if (!shown)
    return (
      <button type="button" class="button" data-give-settings onClick={() => setShown(true)}>
        {words.give.button}
      </button>
    );
  return (
    <section class="store-give">
      <h3>{words.give.title}</h3>
      <p>{words.give.hint}</p>
      {link === null ? (
        <p class="reader-problem" data-only-here>
          {words.give.onlyHere}
        </p>
      ) : (
        <>
          <CodeShow frames={[link]} name={words.give.title} words={handover} />
          <label>
            <span>{words.give.link}</span>
            <input
              type="text"
              readOnly
              data-settings-link
              ref={field}
              value={link}
              onFocus={(event) => event.currentTarget.select()}
            />
          </label>
        </>
      )}
      <button type="button" class="button" onClick={() => setShown(false)}>
        {words.give.hide}
      </button>
    </section>
  );
}

/** Scan or paste; the settings are shown and asked about, and nothing else. */
export function TakeSettings(props: {
  /** Address of this page. */
  readonly here: string;
  /** Settings came in the address of the page, and not whole. */
  readonly cut: boolean;
  readonly words: SharedWords;
  readonly handover: HandoverWords;
  readonly onTake: (address: StoreAddress) => void;
}): JSX.Element {
  const { here, words, handover, onTake } = props;
  const [text, setText] = useState('');
  const [told, setTold] = useState(props.cut ? words.take.none : '');
  const take = (found: string): void => {
    const address = readStoreLink(found, here);
    if (address === null) setTold(words.take.none);
    else onTake(address);
  };
  return (
    <section class="paper store-form">
      <h2>{words.take.title}</h2>
      <p>{words.take.hint}</p>
      {window.isSecureContext && <CameraBox words={handover} onText={take} />}
      <form
        class="reader-way"
        onSubmit={(event) => {
          event.preventDefault();
          take(text);
        }}
      >
        <label>
          <span>{words.take.paste}</span>
          <input
            type="text"
            data-store-link
            autocomplete="off"
            spellcheck={false}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="button" data-take-settings>
          {words.take.read}
        </button>
      </form>
      <output data-settings-told>{told}</output>
    </section>
  );
}
