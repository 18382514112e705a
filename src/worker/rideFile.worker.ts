/** Entry of the worker that reads files of rides. */
import { rideFileService } from './rideFileWork.ts';
import { serve } from './rpc.ts';

serve(rideFileService);
