/** The settings of a club's own store, going from device to device: shown as a code and a link, scanned or pasted. */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { CameraBox } from './cameraBox.tsx';
import { CodeShow } from './carry.tsx';
import type { StoreAddress } from '../../core/transfer/clubStore.ts';
import { readStoreLink } from './storeCode.ts';
import { words } from '../../words/words.ts';
import { Button } from '../../ui/controls.tsx';

const say = words('handover');

/** A code to scan and a link to paste, behind a button, because whoever sees them can read all rides. */
export function GiveSettings(props: {
  /** Null where this page has no address that others can open. */
  readonly link: string | null;
}): JSX.Element {
  const { link } = props;
  const [shown, setShown] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  if (!shown)
    return (
      <Button data-give-settings onClick={() => setShown(true)}>
        {say('store-give')}
      </Button>
    );
  return (
    <section class="store-give">
      <h3>{say('store-give-title')}</h3>
      <p>{say('store-give-hint')}</p>
      {link === null ? (
        <p class="reader-problem" data-only-here>
          {say('store-give-onlyHere')}
        </p>
      ) : (
        <>
          <CodeShow frames={[link]} name={say('store-give-title')} />
          <label>
            <span>{say('carry-link')}</span>
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
      <Button onClick={() => setShown(false)}>{say('store-give-hide')}</Button>
    </section>
  );
}

/** Scan or paste; the settings are shown and asked about, and nothing else. */
export function TakeSettings(props: {
  /** Address of this page. */
  readonly here: string;
  /** Settings came in the address of the page, and not whole. */
  readonly cut: boolean;
  readonly onTake: (address: StoreAddress) => void;
}): JSX.Element {
  const { here, onTake } = props;
  const [text, setText] = useState('');
  const [told, setTold] = useState(props.cut ? say('store-take-none') : '');
  const take = (found: string): void => {
    const address = readStoreLink(found, here);
    if (address === null) setTold(say('store-take-none'));
    else onTake(address);
  };
  return (
    <section class="paper store-form">
      <h2>{say('store-take-title')}</h2>
      <p>{say('store-take-hint')}</p>
      {window.isSecureContext && <CameraBox onText={take} />}
      <form
        class="reader-way"
        onSubmit={(event) => {
          event.preventDefault();
          take(text);
        }}
      >
        <label>
          <span>{say('store-take-paste')}</span>
          <input
            type="text"
            data-store-link
            autocomplete="off"
            spellcheck={false}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </label>
        <Button submit data-take-settings>
          {say('reader-take')}
        </Button>
      </form>
      <output data-settings-told>{told}</output>
    </section>
  );
}
