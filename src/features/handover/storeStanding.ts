/** How a club's own store stands: in which words, what has gone there, and which host an address names. */
import type { StoreSent, StoreStanding } from '../../core/transfer/clubStore.ts';
import { writeMoment } from '../../words/dates.ts';
import { words } from '../../words/words.ts';

const say = words('handover');

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
