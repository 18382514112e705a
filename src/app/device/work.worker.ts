/**
 * All long work in one file, because its services share most of the core: in a worker it answers what is asked, and a
 * page that has no worker takes the services from the same file (`workplace.ts`), so that it is built and fetched once.
 */
import { createGpxDesk } from '../../worker/gpxDesk.ts';
import { rideFileService } from '../../worker/rideFileWork.ts';
import { serve } from '../../worker/rpc.ts';
import { createVerifier } from '../../worker/verifier.ts';
import { createWorkshop } from '../../worker/workshop.ts';
import { copyService } from './copyWork.ts';

/** The services, with nothing in their hands yet. */
export const createServices = () => ({
  ...createWorkshop(),
  ...createVerifier(),
  ...createGpxDesk(),
  ...rideFileService,
  ...copyService,
});

if (typeof document === 'undefined') serve(createServices());
