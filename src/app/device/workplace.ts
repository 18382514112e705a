/** Where long work is done: in workers the build made, or on this thread where there are none or they fail. */
import type { Workplace } from '../../worker/line.ts';
import { trustedScript } from './trustedScripts.ts';
import type { createServices } from './work.worker.ts';
import workAddress from './work.worker.ts?worker&url';

/** A worker for any of the services, or null where there are none or it does not start. */
function start(): Worker | null {
  if (typeof Worker === 'undefined') return null;
  try {
    return new Worker(trustedScript(workAddress), { type: 'module' });
  } catch {
    return null;
  }
}

/** The workplace of every service. */
export const workplace: Workplace<ReturnType<typeof createServices>> = {
  start,
  here: async () => (await import('./work.worker.ts')).createServices(),
};
