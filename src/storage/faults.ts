/**
 * Names for what goes wrong with a browser's database, and waiting that ends. What to do about a fault is
 * decided by those who meet it.
 */
import type { ProblemCode } from './types.ts';

/** A problem with a code, the only thing the connection throws. */
export class Fault extends Error {
  readonly code: ProblemCode;

  constructor(code: ProblemCode, cause?: unknown) {
    super(code, { cause });
    this.code = code;
  }
}

function nameOf(error: unknown): string {
  return error instanceof Error ? error.name : '';
}

/** Whether there was no room. Chromium calls it `UnknownError` in mid-write, with FILE_ERROR_NO_SPACE in its text. */
export function isFull(error: unknown): boolean {
  return nameOf(error) === 'QuotaExceededError' || /no.?space|disk.?full|full disk/i.test(String(error));
}

/** Browsers lose connections and say so in different ways; after these a new one is worth a try. */
const LOST = ['InvalidStateError', 'AbortError', 'TransactionInactiveError', 'UnknownError'];

/** Whether opening the database anew may help. */
export function isLost(error: unknown): boolean {
  if (error instanceof Fault) return error.code === 'connection-lost';
  return LOST.includes(nameOf(error)) && !isFull(error);
}

/** The fault behind an error while the database was being opened. */
export function faultWhileOpening(error: unknown): Fault {
  if (error instanceof Fault) return error;
  if (isFull(error)) return new Fault('disk-full', error);
  switch (nameOf(error)) {
    case 'SecurityError':
    case 'NotAllowedError':
    // An older Firefox answers so in a private window.
    case 'InvalidStateError':
      return new Fault('private-window', error);
    case 'VersionError':
      return new Fault('newer-version', error);
    case 'AbortError':
      return new Fault('connection-lost', error);
    default:
      return new Fault(/connection/i.test(String(error)) ? 'connection-lost' : 'corrupt', error);
  }
}

/** The fault behind an error while the open database was being used. */
export function faultWhileUsing(error: unknown): Fault {
  if (error instanceof Fault) return error;
  if (isFull(error)) return new Fault('disk-full', error);
  // A store that should be there and is not.
  if (nameOf(error) === 'NotFoundError') return new Fault('corrupt', error);
  return new Fault('connection-lost', error);
}

/** Waits at most `limitMs`; afterwards `late` says what to throw. The promise itself goes on. */
export function inTime<T>(promise: Promise<T>, limitMs: number, late: () => Fault): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(late()), limitMs);
    promise.then(
      (value) => {
        clearTimeout(timer);
        resolve(value);
      },
      (error: unknown) => {
        clearTimeout(timer);
        reject(error instanceof Error ? error : new Error(String(error)));
      },
    );
  });
}
