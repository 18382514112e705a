/**
 * The door to a club's own store: sending, fetching, trying the connection. How a CouchDB server differs from the
 * one in the tests stands in `SERVERS.md` beside this file.
 */
export { type AgreementStore, createAgreementStore } from './agreement.ts';
export { fetchRides, testStore } from './fetch.ts';
export type { Fetch } from './http.ts';
export { piecesOf, sentSoFar } from './pieces.ts';
export { progressFor, sendPieces, type SendTools } from './send.ts';
export type * from '../sharedKept.ts';
export { databaseUrl, OLD_ADDRESS, passes, PROGRESS } from '../sharedKept.ts';
