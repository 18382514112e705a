/** Entry of the worker that opens copies. */
import { copyService } from './copyWork.ts';
import { serve } from '../worker/rpc.ts';

serve(copyService);
