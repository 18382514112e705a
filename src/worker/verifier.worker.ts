/** Entry of the worker that rides the rides of a group again. */
import { serve } from './rpc.ts';
import { createVerifier } from './verifier.ts';

serve(createVerifier());
