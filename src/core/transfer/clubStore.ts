/**
 * A club's own store as plain types, the same for those who ask it and for the pages that tell of it: where it is, what
 * went there, what stands in the way. Asking it is left to the storage, the words to the pages.
 */

/** Where the store is. Kept on this device and sent to nobody but the store. */
export interface StoreAddress {
  /** `https://host[:port][/path]`, without the name of the database. */
  readonly url: string;
  readonly database: string;
  /** Empty for a store that asks for none. */
  readonly name: string;
  readonly password: string;
}

/** An address nobody has agreed to: it came with a file or a code, or was kept here before people were asked. */
export interface StoreOffer {
  readonly address: StoreAddress;
  readonly from: 'file' | 'code' | 'before';
}

/** What has gone to the store so far. */
export interface StoreSent {
  readonly rides: number;
  /** When something went there last (milliseconds since 1970), or null for never. */
  readonly atMs: number | null;
}

/** What stands in the way. */
export type StoreProblem =
  /** No answer: no network, the server is down, or it does not let this page in. */
  | 'unreachable'
  /** It answers, but has no time now. */
  | 'busy'
  | 'disk-full'
  | 'wrong-password'
  | 'not-allowed'
  | 'no-database'
  /** The address cannot be one. */
  | 'bad-address'
  /** Something answers that is no such store. */
  | 'not-a-store'
  /** It gives more than can be taken in at once. */
  | 'endless'
  /** Single rides were refused; the others went through. */
  | 'some-refused';

export interface StoreStanding {
  readonly phase: 'sending' | 'waiting' | 'stopped' | 'done';
  /** Pieces that are there for certain. */
  readonly there: number;
  readonly left: number;
  readonly problem: StoreProblem | null;
  /** Milliseconds until the next try, while waiting. */
  readonly nextTryMs: number | null;
}
