/** Entry of the worker that reads files of rides: joins the reading to the messages of this thread. */
import { readRidesOf } from './rideFileWork.ts';
import { serveWork } from './longWork.ts';

serveWork(readRidesOf);
