/** The page that rides recordings again in a browser engine; it does nothing until it is asked. */
import { rideAgain } from '../rideAgain.ts';

Object.assign(window, { rideAgain });
