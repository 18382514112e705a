/** Words about a club's own store: its settings, and how it stands in one sentence. */

/** What stands in the way, as the store's room calls it. */
export type StoreProblem =
  | 'unreachable'
  | 'busy'
  | 'disk-full'
  | 'wrong-password'
  | 'not-allowed'
  | 'no-database'
  | 'bad-address'
  | 'not-a-store'
  | 'some-refused';

const rides = (n: number): string => (n === 1 ? '1 ride' : `${n} rides`);

/** English. */
export const sharedWords = {
  title: 'A store of your club',
  intro:
    'Off unless you turn it on; everything works without. A club with many groups can give the address of a CouchDB-compatible database it hosts or rents. Rides are put there and fetched from there. Nothing else is contacted.',
  on: 'Use a store',
  url: 'Address',
  urlHint: 'for example https://rides.our-club.example',
  database: 'Database',
  name: 'Name',
  password: 'Password',
  passwordHint: 'Stays on this device, readable by whoever uses it. Take a name that may do nothing else.',
  plainHttp:
    'Over plain http the name, the password and the rides can be read by others on the way. Use https.',
  mixed: 'This page was opened over https, so the browser will not talk to a store over http. Use https.',
  badAddress:
    'An address begins with https:// and holds no name or password; a database has small letters and digits.',
  test: 'Test the connection',
  testing: 'Asking …',
  works: 'The store answers and lets you in.',
  save: 'Save',
  saved: 'Saved on this device.',
  off: 'No store is used.',
  nothing: 'Nothing is waiting for the store.',
  done: (n: number): string => `All ${rides(n)} and reports are in the store.`,
  sending: (left: number): string => `Sending to the store: ${left} to go.`,
  again: (seconds: number): string => `Next try in ${seconds} s.`,
  safe: (left: number): string => `${left} to go; they are safe on this device.`,
  problems: {
    unreachable:
      'The store does not answer: no network, switched off, or this page is not among its allowed origins.',
    busy: 'The store has no time now.',
    'disk-full': 'The store’s disk is full. Tell whoever looks after it.',
    'wrong-password': 'The store does not accept this name and password.',
    'not-allowed': 'This name may not write into this database.',
    'no-database': 'There is no such database. It has to be made first.',
    'bad-address': 'The address or the name of the database cannot be right.',
    'not-a-store': 'Something answers there, but it is no such store.',
    'some-refused':
      'The store would not take some of the rides. They are safe on this device; hand them over as a file.',
  } satisfies Record<StoreProblem, string>,
};

export type SharedWords = typeof sharedWords;

/** How a store stands, for a sentence. */
export interface StoreStanding {
  readonly phase: 'sending' | 'waiting' | 'stopped' | 'done';
  readonly there: number;
  readonly left: number;
  readonly problem: StoreProblem | null;
  readonly nextTryMs: number | null;
}

/** One line for the coach: what is wrong, if anything, and that nothing is lost. */
export function storeSentence(words: SharedWords, standing: StoreStanding | null): string {
  if (standing === null) return words.off;
  const { phase, there, left, problem, nextTryMs } = standing;
  if (problem === 'some-refused') return words.problems[problem];
  if (problem !== null) {
    const next = phase === 'waiting' && nextTryMs !== null ? words.again(Math.ceil(nextTryMs / 1_000)) : '';
    return [words.problems[problem], words.safe(left), next].filter((part) => part !== '').join(' ');
  }
  if (phase === 'done') return there === 0 ? words.nothing : words.done(there);
  return words.sending(left);
}
