/**
 * One line on every page of a session from which something is sent: to whom, what, how much so far, and a way to stop.
 * Where nothing is sent there is none; an address nobody here has agreed to is asked about in one sentence.
 */
import type { JSX } from 'preact';
import { words } from '../../words/words.ts';
import type { StoreSent, StoreStanding } from '../../core/transfer/clubStore.ts';
import type { ClubStore } from './services.ts';
import { Button } from '../../ui/controls.tsx';
import { writeMoment } from '../../words/dates.ts';
import './handover.css';

const say = words('handover');

const STORE_PAGE = '#clinic/store';

/** The line; `store` is followed by whoever draws it. */
export function StoreLine(props: {
  readonly store: Pick<ClubStore, 'agreed' | 'offered' | 'sent' | 'stop'> | null;
  /** What the store and this device have of each other. */
  readonly standing: StoreStanding | null;
  /** Sends and fetches at once. */
  readonly onFetch: () => void;
}): JSX.Element | null {
  const { store, standing } = props;
  const agreed = store?.agreed() ?? null;
  const offered = store?.offered() ?? null;
  if (store !== null && agreed !== null) {
    const host = hostOf(agreed.address.url) ?? agreed.address.url;
    return (
      <aside class="row store-line" data-store-line="agreed">
        <p>
          {say('store-line', { host })} {sentSentence(store.sent())}
        </p>
        {(standing?.phase !== 'done' || standing.problem !== null) && (
          <p data-store>{storeSentence(standing)}</p>
        )}
        <span class="row store-line-ways">
          <Button look="quiet-button" data-fetch-store onClick={props.onFetch}>
            {say('store-fetch')}
          </Button>
          <a href={STORE_PAGE}>{say('store-look')}</a>
          <Button look="quiet-button" data-stop-store onClick={() => void store.stop()}>
            {say('store-stop')}
          </Button>
        </span>
      </aside>
    );
  }
  if (offered === null) return null;
  return (
    <aside class="row store-line" data-store-line="offered">
      <p>
        {say(`store-offered-${offered.from}`, { host: hostOf(offered.address.url) ?? offered.address.url })}
      </p>
      <span class="row store-line-ways">
        <a href={STORE_PAGE}>{say('store-look')}</a>
      </span>
    </aside>
  );
}

/** The host of an address as browsers write it, so that no look-alike letters hide in it; null where it has none. */
export function hostOf(url: string): string | null {
  try {
    const { host, protocol } = new URL(url.trim());
    return host === '' || !/^https?:$/.test(protocol) ? null : host;
  } catch {
    return null;
  }
}

/** One line for the coach: what is wrong, if anything, and that nothing is lost. */
export function storeSentence(standing: StoreStanding | null): string {
  if (standing === null) return say('store-notAsked');
  const { phase, there, left, problem, nextTryMs } = standing;
  if (problem === 'some-refused') return say(`store-${problem}`);
  if (problem !== null) {
    const sentences = [say(`store-${problem}`), say('store-safe', { left })];
    if (phase === 'waiting' && nextTryMs !== null)
      sentences.push(say('store-again', { seconds: Math.ceil(nextTryMs / 1_000) }));
    return sentences.join(' ');
  }
  if (phase === 'done') return there === 0 ? say('store-nothing') : say('store-done', { rides: there });
  return say('store-sending', { left });
}

/** What has gone there so far, and when. */
export function sentSentence({ rides, atMs }: StoreSent): string {
  return say('store-sent', {
    rides: atMs === null ? 0 : rides,
    moment: atMs === null ? '' : writeMoment(atMs),
  });
}
