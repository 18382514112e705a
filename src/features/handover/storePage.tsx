/**
 * A club's own store: what would be sent to whom, asked before anything is; then what has gone there, with a way to
 * stop. An address that came with a file, or was kept here before people were asked, is only the beginning of a form.
 */
import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Sheet } from '../../ui/parts.tsx';
import {
  hostOf,
  type SharedWords,
  storeSentence,
  type StoreProblem,
  type StoreSent,
  type StoreStanding,
} from './storeWords.ts';
import './handover.css';

/** Where a store is. */
export interface StoreAddress {
  readonly url: string;
  readonly database: string;
  readonly name: string;
  readonly password: string;
}

/** An address to ask about. */
export interface StoreOffer {
  readonly address: StoreAddress;
  readonly from: 'file' | 'before';
}

/** What came of agreeing. `this-page`: it holds, and will be forgotten with the page. */
export type StoreAgreed = 'kept' | 'this-page' | 'bad-address';

/** What the page is given. */
export interface StorePageProps {
  /** What was agreed to on this device; null where nothing is sent. */
  readonly agreed: { readonly address: StoreAddress; readonly atMs: number } | null;
  readonly offered: StoreOffer | null;
  readonly sent: StoreSent;
  readonly standing: StoreStanding | null;
  /** This page itself came over https. */
  readonly overHttps: boolean;
  readonly words: SharedWords;
  readonly onAgree: (address: StoreAddress) => Promise<StoreAgreed>;
  readonly onStop: () => void;
  /** Asks the agreed store whether it would take rides; null where it would. */
  readonly onTest: () => Promise<StoreProblem | null>;
}

const EMPTY: StoreAddress = { url: '', database: '', name: '', password: '' };

/** The page. */
export function StorePage(props: StorePageProps): JSX.Element {
  const { agreed, offered, words, onAgree, onTest } = props;
  const [draft, setDraft] = useState(agreed?.address ?? offered?.address ?? EMPTY);
  const [told, setTold] = useState('');
  const test = (): void => {
    setTold(words.testing);
    onTest().then(
      (problem) => setTold(problem === null ? words.works : words.problems[problem]),
      () => setTold(words.problems.unreachable),
    );
  };
  const agree = async (): Promise<void> => {
    const answer = await onAgree(trimmed(draft));
    if (answer === 'bad-address') setTold(words.badAddress);
    else test();
  };
  const stop = (): void => {
    setTold('');
    props.onStop();
  };
  return (
    <Sheet title={words.title} intro={words.intro}>
      <div class="handover">
        {agreed === null ? (
          <Asking {...props} draft={draft} told={told} onAgree={() => void agree()}>
            <Fields
              draft={draft}
              set={(key, value) => {
                setDraft({ ...draft, [key]: value });
                setTold('');
              }}
              words={words}
            />
            {offered !== null && (
              <button
                type="button"
                class="quiet-button"
                data-forget-store
                onClick={() => {
                  setDraft(EMPTY);
                  stop();
                }}
              >
                {words.forget}
              </button>
            )}
          </Asking>
        ) : (
          <Going {...props} agreed={agreed} told={told} onStop={stop} onTest={test} />
        )}
      </div>
    </Sheet>
  );
}

/** The question: who would get what, before anything is sent. */
function Asking(
  props: Pick<StorePageProps, 'offered' | 'overHttps' | 'words'> & {
    readonly draft: StoreAddress;
    readonly told: string;
    readonly onAgree: () => void;
    readonly children: ComponentChildren;
  },
): JSX.Element {
  const { draft, offered, words } = props;
  const host = hostOf(draft.url);
  return (
    <form
      class="paper store-form"
      onSubmit={(event) => {
        event.preventDefault();
        props.onAgree();
      }}
    >
      {offered !== null && (
        <p class="notice" data-store-offered={offered.from}>
          {words.offered[offered.from](hostOf(offered.address.url) ?? offered.address.url)}
        </p>
      )}
      {props.children}
      <Warnings draft={draft} overHttps={props.overHttps} words={words} />
      <section class="store-consent" data-store-consent>
        <h2>{words.consent.title}</h2>
        <ul>
          {words.consent.lines(host).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <div class="buttons">
        <button type="submit" class="button strong" data-agree-store>
          {words.agree(host)}
        </button>
      </div>
      <output data-store-told>{props.told}</output>
      <p data-store>{words.off}</p>
    </form>
  );
}

/** What goes where as it is now, and the way to stop. */
function Going(
  props: Pick<StorePageProps, 'sent' | 'standing' | 'words' | 'onStop'> & {
    readonly agreed: NonNullable<StorePageProps['agreed']>;
    readonly told: string;
    readonly onTest: () => void;
  },
): JSX.Element {
  const { agreed, sent, words } = props;
  const { url, database } = agreed.address;
  return (
    <section class="paper store-form">
      <h2>{words.goesTo(hostOf(url) ?? url)}</h2>
      <dl class="store-facts">
        <dt>{words.facts.what}</dt>
        <dd>{words.facts.whatIs}</dd>
        <dt>{words.facts.where}</dt>
        <dd>
          <bdi>{`${url} · ${database}`}</bdi>
        </dd>
        <dt>{words.facts.sofar}</dt>
        <dd data-store-sent={sent.rides}>{words.sofar(sent)}</dd>
        <dt>{words.facts.agreed}</dt>
        <dd>{words.moment(agreed.atMs)}</dd>
      </dl>
      <div class="buttons">
        <button type="button" class="button strong" data-stop-store onClick={props.onStop}>
          {words.stop}
        </button>
        <button type="button" class="button" data-test-store onClick={props.onTest}>
          {words.test}
        </button>
      </div>
      <output data-store-told>{props.told}</output>
      <p data-store>{storeSentence(words, props.standing)}</p>
      <p class="code-hint">{words.stopHint}</p>
    </section>
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
