/** Settings of a club's own store: off until somebody turns it on, tried before it is saved, no hidden traffic. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Tick } from '../../ui/controls.tsx';
import { Sheet } from '../../ui/parts.tsx';
import { type SharedWords, storeSentence, type StoreProblem, type StoreStanding } from '../words/shared.ts';
import './handover.css';

/** Where a store is. */
export interface StoreAddress {
  readonly url: string;
  readonly database: string;
  readonly name: string;
  readonly password: string;
}

/** What the page is given. */
export interface StorePageProps {
  /** Null where no store is used. */
  readonly address: StoreAddress | null;
  readonly standing: StoreStanding | null;
  /** This page itself came over https. */
  readonly overHttps: boolean;
  readonly words: SharedWords;
  /** Asks the store whether it would take rides; null where it would. */
  readonly onTest: (address: StoreAddress) => Promise<StoreProblem | null>;
  /** Keeps the address, or turns the store off with null. */
  readonly onSave: (address: StoreAddress | null) => void;
}

const EMPTY: StoreAddress = { url: '', database: '', name: '', password: '' };

/** The page. */
export function StorePage(props: StorePageProps): JSX.Element {
  const { address, standing, words, onSave, onTest } = props;
  const [on, setOn] = useState(address !== null);
  const [draft, setDraft] = useState(address ?? EMPTY);
  const [told, setTold] = useState('');
  const set = (key: keyof StoreAddress, value: string): void => {
    setDraft({ ...draft, [key]: value });
    setTold('');
  };
  const test = (): void => {
    setTold(words.testing);
    onTest(trimmed(draft)).then(
      (problem) => setTold(problem === null ? words.works : words.problems[problem]),
      () => setTold(words.problems.unreachable),
    );
  };
  return (
    <Sheet title={words.title} intro={words.intro}>
      <div class="handover">
        <form
          class="paper store-form"
          onSubmit={(event) => {
            event.preventDefault();
            onSave(trimmed(draft));
            setTold(words.saved);
          }}
        >
          <Tick
            label={words.on}
            checked={on}
            onChange={(checked) => {
              setOn(checked);
              if (!checked) onSave(null);
            }}
          />
          {on && <Fields draft={draft} set={set} words={words} />}
          {on && <Warnings draft={draft} overHttps={props.overHttps} words={words} />}
          {on && (
            <div class="buttons">
              <button type="submit" class="button strong" data-save-store>
                {words.save}
              </button>
              <button type="button" class="button" data-test-store onClick={test}>
                {words.test}
              </button>
            </div>
          )}
          <output data-store-told>{told}</output>
          <p data-store>{storeSentence(words, address === null ? null : standing)}</p>
        </form>
      </div>
    </Sheet>
  );
}

function Fields(props: {
  readonly draft: StoreAddress;
  readonly set: (key: keyof StoreAddress, value: string) => void;
  readonly words: SharedWords;
}): JSX.Element {
  const { draft, set, words } = props;
  const parts = (key: keyof StoreAddress) => ({
    name: key,
    required: key === 'url' || key === 'database',
    maxLength: 400,
    autocomplete: 'off',
    spellcheck: false,
    value: draft[key],
    onInput: (event: { readonly currentTarget: HTMLInputElement }) => set(key, event.currentTarget.value),
  });
  return (
    <>
      <label>
        <span>{words.url}</span>
        <input type="text" inputMode="url" autocapitalize="off" {...parts('url')} />
        <span class="code-hint">{words.urlHint}</span>
      </label>
      <label>
        <span>{words.database}</span>
        <input type="text" autocapitalize="off" {...parts('database')} />
      </label>
      <label>
        <span>{words.name}</span>
        <input type="text" autocapitalize="off" {...parts('name')} />
      </label>
      <label>
        <span>{words.password}</span>
        <input type="password" {...parts('password')} />
        <span class="code-hint">{words.passwordHint}</span>
      </label>
    </>
  );
}

function Warnings(props: {
  readonly draft: StoreAddress;
  readonly overHttps: boolean;
  readonly words: SharedWords;
}): JSX.Element | null {
  const { words } = props;
  if (!isPlainHttp(props.draft.url)) return null;
  return (
    <p class="reader-problem" role="alert">
      {props.overHttps ? words.mixed : words.plainHttp}
    </p>
  );
}

/** Plain http to another computer; the same computer overhears nothing. */
export function isPlainHttp(url: string): boolean {
  try {
    const { protocol, hostname } = new URL(url.trim());
    return protocol === 'http:' && !/^(localhost|127(\.\d+){3}|\[::1\])$/.test(hostname);
  } catch {
    return false;
  }
}

function trimmed({ url, database, name, password }: StoreAddress): StoreAddress {
  return { url: url.trim(), database: database.trim(), name: name.trim(), password };
}
