/**
 * Entry of every worker. One file, because what they do shares most of the core; whoever starts one asks it for what it
 * was started for.
 */
import { createGpxDesk } from '../../worker/gpxDesk.ts';
import { rideFileService } from '../../worker/rideFileWork.ts';
import { serve } from '../../worker/rpc.ts';
import { createVerifier } from '../../worker/verifier.ts';
import { createWorkshop } from '../../worker/workshop.ts';
import { copyService } from './copyWork.ts';

serve({
  ...createWorkshop(),
  ...createVerifier(),
  ...createGpxDesk(),
  ...rideFileService,
  ...copyService,
});
