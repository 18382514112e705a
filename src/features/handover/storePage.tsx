/**
 * A club's own store: what would be sent to whom, asked before anything is; then what has gone there, with a way to
 * stop. An address that came with a file or a code, or was kept here before people were asked, is only the beginning of
 * a form.
 */
import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Lines, Sheet } from '../../ui/parts.tsx';
import type { StoreAddress, StoreOffer } from '../../core/transfer/clubStore.ts';
import type { ClubStore } from './services.ts';
import { originOf, storeLink } from './storeCode.ts';
import { GiveSettings, TakeSettings } from './storeSettings.tsx';
import { writeMoment } from '../../words/dates.ts';
import { words } from '../../words/words.ts';
import { hostOf, sentSentence, storeSentence } from './storeLine.tsx';
import './handover.css';
import { Button } from '../../ui/controls.tsx';

const say = words('handover');

interface StorePageProps {
  readonly store: ClubStore;
  /** Address of this page. */
  readonly here: string;
  /** What other devices can open; null where there is nothing. */
  readonly site: string | null;
  /** Settings came in the address of the page, and not whole. */
  readonly cut?: boolean;
  /** Sends and fetches at once. */
  readonly onFetch: () => void;
}

type Agreed = NonNullable<ReturnType<ClubStore['agreed']>>;

const EMPTY: StoreAddress = { url: '', database: '', name: '', password: '' };

export function StorePage(props: StorePageProps): JSX.Element {
  const { store, here, site, cut = false, onFetch } = props;
  const agreed = store.agreed();
  const offered = store.offered();
  const [draft, setDraft] = useState(offered?.address ?? agreed?.address ?? EMPTY);
  const [told, setTold] = useState('');
  const test = (): void => {
    setTold(say('store-testing'));
    store.test().then(
      (problem) => setTold(problem === null ? say('store-works') : say(`store-${problem}`)),
      () => setTold(say('store-unreachable')),
    );
  };
  const agree = async (): Promise<void> => {
    const answer = await store.agree(trimmed(draft));
    if (answer === 'bad-address') return setTold(say('store-badAddress'));
    onFetch();
    return test();
  };
  const stop = (): void => {
    setTold('');
    void store.stop();
  };
  const forget = (): void => {
    setDraft(EMPTY);
    setTold('');
    void store.turnDown();
  };
  const asks = agreed === null || offered !== null;
  return (
    <Sheet title={say('store-title')} intro={say('store-intro')}>
      <div class="handover">
        {asks && offered === null && (
          <TakeSettings {...{ here, cut }} onTake={(address) => store.offer(address, 'code')} />
        )}
        {asks ? (
          <Asking {...{ agreed, offered, here, draft, told }} onAgree={() => void agree()} onForget={forget}>
            <Fields
              draft={draft}
              set={(key, value) => {
                setDraft({ ...draft, [key]: value });
                setTold('');
              }}
            />
          </Asking>
        ) : (
          <Going {...{ store, agreed, here, site, told, onFetch }} onStop={stop} onTest={test} />
        )}
      </div>
    </Sheet>
  );
}

/** The question: who would get what, before anything is sent. */
function Asking(
  props: Pick<StorePageProps, 'here'> & {
    readonly agreed: Agreed | null;
    readonly offered: StoreOffer | null;
    readonly draft: StoreAddress;
    readonly told: string;
    readonly onAgree: () => void;
    readonly onForget: () => void;
    readonly children: ComponentChildren;
  },
): JSX.Element {
  const { draft, agreed, offered } = props;
  const host = hostOf(draft.url);
  const to = { typed: host === null ? 'no' : 'yes', host: host ?? '' } as const;
  const before = agreed === null ? null : hostOf(agreed.address.url);
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
          {say(`store-offered-${offered.from}`, { host: hostOf(offered.address.url) ?? offered.address.url })}
          {before === null ? '' : ` ${say('store-instead', { host: before })}`}
        </p>
      )}
      {offered?.from === 'code' ? (
        <details>
          <summary>{say('store-details')}</summary>
          {props.children}
        </details>
      ) : (
        props.children
      )}
      <Warnings draft={draft} here={props.here} />
      <section class="store-consent" data-store-consent>
        <h2>{say('store-consent')}</h2>
        <Lines lines={[say('store-consent-sends', to), ...say.lines('store-consent-more')]} />
      </section>
      <div class="buttons">
        <Button strong submit data-agree-store>
          {say('store-agree', to)}
        </Button>
        {offered !== null && (
          <Button data-forget-store onClick={props.onForget}>
            {say('store-forget')}
          </Button>
        )}
      </div>
      <output data-store-told>{props.told}</output>
      <p data-store>{before === null ? say('store-off') : say('store-goesTo', { host: before })}</p>
    </form>
  );
}

/** What goes where as it is now, and the way to stop. */
function Going(
  props: Pick<StorePageProps, 'store' | 'here' | 'site' | 'onFetch'> & {
    readonly agreed: Agreed;
    readonly told: string;
    readonly onStop: () => void;
    readonly onTest: () => void;
  },
): JSX.Element {
  const { store, agreed, here, site } = props;
  const sent = store.sent();
  const { url, database } = agreed.address;
  return (
    <section class="paper store-form">
      <h2>{say('store-goesTo', { host: hostOf(url) ?? url })}</h2>
      <dl class="store-facts">
        <dt>{say('store-what')}</dt>
        <dd>{say('store-whatIs')}</dd>
        <dt>{say('store-where')}</dt>
        <dd>
          <bdi>{`${url} · ${database}`}</bdi>
        </dd>
        <dt>{say('store-soFar')}</dt>
        <dd data-store-sent={sent.rides}>{sentSentence(sent)}</dd>
        <dt>{say('store-agreed')}</dt>
        <dd>{writeMoment(agreed.atMs)}</dd>
      </dl>
      <div class="buttons">
        <Button strong data-fetch-store onClick={props.onFetch}>
          {say('store-fetch')}
        </Button>
        <Button data-stop-store onClick={props.onStop}>
          {say('store-stop')}
        </Button>
        <Button data-test-store onClick={props.onTest}>
          {say('store-test')}
        </Button>
      </div>
      <output data-store-told>{props.told}</output>
      <p data-store>{storeSentence(store.state())}</p>
      <p class="hint">{say('store-stopHint')}</p>
      <GiveSettings link={site === null ? null : storeLink(agreed.address, here, site)} />
    </section>
  );
}

function Fields(props: {
  readonly draft: StoreAddress;
  readonly set: (key: keyof StoreAddress, value: string) => void;
}): JSX.Element {
  const { draft, set } = props;
  const field = (key: keyof StoreAddress, kind: 'text' | 'url' | 'password', hint?: string): JSX.Element => (
    <label>
      <span>{say(`store-${key}`)}</span>
      <input
        {...(kind === 'password' ? { type: kind } : { type: 'text' as const })}
        inputMode={kind === 'url' ? kind : undefined}
        autocapitalize="off"
        name={key}
        required={key === 'url' || key === 'database'}
        maxLength={400}
        autocomplete="off"
        spellcheck={false}
        value={draft[key]}
        onInput={(event) => set(key, event.currentTarget.value)}
      />
      {hint !== undefined && <span class="hint">{hint}</span>}
    </label>
  );
  return (
    <>
      {field('url', 'url', say('store-urlHint'))}
      {field('database', 'text')}
      {field('name', 'text')}
      {field('password', 'password', say('store-passwordHint'))}
    </>
  );
}

function Warnings(props: { readonly draft: StoreAddress; readonly here: string }): JSX.Element | null {
  const { draft, here } = props;
  if (!isPlainHttp(draft.url)) return null;
  // The computer the page came from may be asked, but everybody in the network can read along.
  if (originOf(draft.url) === originOf(here)) return <p class="notice">{say('store-plainHere')}</p>;
  return (
    <p class="reader-problem" role="alert">
      {here.startsWith('https:') ? say('store-mixed') : say('store-plainHttp')}
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
