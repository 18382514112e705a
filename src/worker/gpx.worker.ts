/** Entry of the worker that reads GPX files. */
import { createGpxDesk } from './gpxDesk.ts';
import { serve } from './rpc.ts';

serve(createGpxDesk());
