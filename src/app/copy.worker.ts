/** Entry of the worker that opens copies: joins the opening to the messages of this thread. */
import { openCopy } from './copyWork.ts';
import { serveWork } from '../worker/longWork.ts';

serveWork(openCopy);
