/** Words about a club's own store: what would be sent to whom, what has been, and how it stands in one sentence. */

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
  | 'endless'
  | 'some-refused';

const rides = (n: number): string => (n === 1 ? '1 ride' : `${n} rides`);

/** English. */
export const sharedWords = {
  title: 'A store of your club',
  intro:
    'Everything works without it. With one, tablets meet by themselves: on a computer in the hall (“npm run club”), or in a CouchDB database the club hosts or rents. Nothing is sent anywhere before somebody agrees to it here, on this device.',
  take: {
    title: 'Scan or paste the settings',
    hint: 'The computer with the store shows them as a code, and so does every device that uses it. The tablet’s own camera opens the code as well.',
    paste: 'Or the link of the settings',
    read: 'Read it',
    none: 'These are no whole settings of a store. Scan the code once more, or copy all of the link.',
  },
  give: {
    button: 'Show the settings to another device',
    title: 'Settings of the store',
    hint: 'One code for all tablets and coaches. Whoever has it can read all rides and add some: show it to those who may, and take no photo.',
    link: 'Link',
    onlyHere:
      'This page was opened at localhost, which no tablet can open. Start it with “npm run club”, or open it under the address tablets use.',
    hide: 'Hide the settings',
  },
  details: 'Address, database, name and password',
  instead: (host: string): string => `It would take the place of ${host}.`,
  fetch: 'Fetch now',
  url: 'Address',
  urlHint: 'for example https://rides.our-club.example',
  database: 'Database',
  name: 'Name',
  password: 'Password',
  passwordHint: 'Stays on this device, readable by whoever uses it. Take a name that may do nothing else.',
  plainHttp:
    'This page may talk to https addresses, to the computer it came from and to this computer itself only: over plain http others could read the name, the password and the rides on the way. Use https.',
  plainHere:
    'Over plain http everybody in this network can read along. Use it in a network of your own, or start the store with https.',
  mixed: 'This page was opened over https, so the browser will not talk to a store over http. Use https.',
  badAddress:
    'An address begins with https:// and holds no name or password; a database has small letters and digits.',
  consent: {
    title: 'If you agree',
    lines: (host: string | null): readonly string[] => [
      `After every ride of a group session this device sends to ${host ?? 'that address'}: the nicknames, the number of this tablet, and the rides with their marks. It fetches what other tablets have put there.`,
      'Whoever looks after that store can read all of it. Nothing else is sent, and nobody else is asked.',
      'Ask your club first; with children, also those who decide for them. Use nicknames nobody can be known by.',
      'You can stop at any time. What has been sent stays there until the club deletes it.',
    ],
  },
  agree: (host: string | null): string => `I agree: send to ${host ?? 'this address'}`,
  forget: 'Forget this address',
  offered: {
    file: (host: string): string =>
      `A file that was taken back names ${host}. Nothing has been sent there. Agree only if you know that it is your club’s.`,
    code: (host: string): string =>
      `These are the settings of a store on ${host}. Nothing has been sent there.`,
    before: (host: string): string =>
      `An address is kept here from before: ${host}. Nothing is sent there until somebody here agrees once more.`,
  },
  goesTo: (host: string): string => `Rides go to ${host}`,
  facts: {
    what: 'What is sent',
    whatIs: 'Nicknames, the number of this tablet, and rides of group sessions with their marks',
    where: 'Where to',
    sofar: 'So far',
    agreed: 'Agreed here',
  },
  /** A moment as people of a place write it. */
  moment: (atMs: number): string =>
    new Date(atMs).toLocaleString(undefined, {
      day: 'numeric',
      month: 'long',
      hour: '2-digit',
      minute: '2-digit',
    }),
  sofar: ({ rides: n, atMs }: StoreSent): string =>
    atMs === null
      ? 'Nothing has gone there yet.'
      : `${rides(n)} went there, last on ${sharedWords.moment(atMs)}.`,
  line: (host: string): string =>
    `Rides of this group go to ${host}, with nicknames, marks and the number of this tablet.`,
  look: 'Look at it',
  stop: 'Stop sending',
  stopHint:
    'What has been sent stays there until the club deletes it. Rides on this device stay as they are.',
  test: 'Ask whether it answers',
  testing: 'Asking …',
  works: 'The store answers and lets you in.',
  off: 'Nothing is sent.',
  notAsked: 'No session has met the store since this page was opened.',
  nothing: 'Nothing is waiting for the store.',
  done: (n: number): string => `All ${rides(n)} and reports are in the store.`,
  sending: (left: number): string => `Sending to the store: ${left} to go.`,
  again: (seconds: number): string => `Next try in ${seconds} s.`,
  safe: (left: number): string =>
    left === 0
      ? 'All rides of this device are there, and safe on this device too.'
      : `${left} to go; they are safe on this device.`,
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
    endless:
      'The store gives more than can be taken in at once. What came is kept; the rest is asked for in a moment.',
    'some-refused':
      'The store would not take some of the rides. They are safe on this device; hand them over as a file.',
  } satisfies Record<StoreProblem, string>,
};

export type SharedWords = typeof sharedWords;

/** What has gone to a store so far. */
export interface StoreSent {
  readonly rides: number;
  /** Milliseconds since 1970, or null for never. */
  readonly atMs: number | null;
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
  if (standing === null) return words.notAsked;
  const { phase, there, left, problem, nextTryMs } = standing;
  if (problem === 'some-refused') return words.problems[problem];
  if (problem !== null) {
    const next = phase === 'waiting' && nextTryMs !== null ? words.again(Math.ceil(nextTryMs / 1_000)) : '';
    return [words.problems[problem], words.safe(left), next].filter((part) => part !== '').join(' ');
  }
  if (phase === 'done') return there === 0 ? words.nothing : words.done(there);
  return words.sending(left);
}
