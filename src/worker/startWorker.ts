/** Starts one of the workers the build made. Which addresses may be run is decided by whoever owns the page. */

/** Turns the address of a script into one that this page may run; throws where it may not. */
export type Trust = (address: string) => string;

/** The worker, or null where there are none or it does not start. */
export function startWorker(address: string, trust: Trust): Worker | null {
  if (typeof Worker === 'undefined') return null;
  try {
    return new Worker(trust(address), { type: 'module' });
  } catch {
    return null;
  }
}
