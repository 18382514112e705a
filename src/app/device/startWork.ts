/** Starts one of the workers the build made. */
import { trustedScript } from './trustedScripts.ts';
import workAddress from './work.worker.ts?worker&url';

/** A worker for any of the services, or null where there are none or it does not start. */
export function startWork(): Worker | null {
  if (typeof Worker === 'undefined') return null;
  try {
    return new Worker(trustedScript(workAddress), { type: 'module' });
  } catch {
    return null;
  }
}
