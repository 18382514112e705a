/** Entry of the worker that plans and judges. */
import { serve } from './rpc.ts';
import { createWorkshop } from './workshop.ts';

serve(createWorkshop());
