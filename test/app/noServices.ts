/** Services for tests of pages that ask for nothing: each says that nobody is there. */
import type { Services } from '../../src/app/services.ts';

const nobody = (): Promise<never> => Promise.reject(new Error('nobody is there in this test'));

export const noServices: Services = {
  checkGears: () => () => undefined,
  rideTogether: nobody,
  judgeRide: nobody,
  carry: { session: nobody, store: nobody, sync: nobody, readRides: nobody },
  clinic: () => new Promise(() => undefined),
  bench: () => new Promise(() => undefined),
  onTheRoad: () => new Promise(() => undefined),
  paintRider: nobody,
  keepUnfinished: nobody,
  letUnfinishedGo: nobody,
  saveReport: () => undefined,
  saveSessionPlan: () => undefined,
  print: () => undefined,
  loadNewer: () => undefined,
  saveEverything: nobody,
  takeBack: nobody,
  deleteEverything: nobody,
};
