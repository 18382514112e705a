/** The real services behind the pages: files to save and to take back, and deleting everything. */
import type { Clinic } from './group/clinic.ts';
import type { Judging } from './device/scoring.ts';
import type { Keeping } from './device/persistence.ts';
import type { Newer } from './device/updates.ts';
import { offerFile } from '../ui/file.ts';
import type { Services } from './services.ts';
import type { RideLook } from './ride/views.ts';
import type { State } from '../state/store.ts';
import { reportOf, type Trouble } from './device/trouble.ts';
import type { UnfinishedRides } from './ride/unfinishedRides.ts';
import { workplace } from './device/workplace.ts';
import { Cancelled } from '../worker/rpc.ts';
import { words } from '../words/words.ts';

const kept = words('kept');

interface Joined {
  readonly keeping: Keeping;
  readonly judging: Judging;
  readonly clinic: Clinic;
  readonly newer: Newer;
  readonly unfinished: UnfinishedRides;
  readonly troubles: () => readonly Trouble[];
  readonly state: () => State;
  readonly look: () => RideLook;
}

const keptDesk = () => import('./keptDesk.ts');

export function joinServices(joined: Joined): Services {
  const { keeping, judging, clinic, newer, unfinished, look } = joined;
  const { planner } = judging;
  void keeping.there.then((kept) =>
    kept.onDeletedElsewhere(() => {
      unfinished.forget();
      void keeping.forget();
      void clinic.reload();
    }),
  );
  return {
    loadNewer: () => newer.load(),
    letUnfinishedGo: (ride) => unfinished.letGo(ride),
    async keepUnfinished(ride) {
      const { state } = await unfinished.keep(ride);
      return state === 'saved'
        ? { ok: true, sentence: kept('unfinished-kept') }
        : { ok: false, sentence: kept('unfinished-notKept') };
    },
    saveReport: () => saveReport(joined),
    saveSessionPlan: (name, text) => offerFile(new Blob([text], { type: 'application/json' }), name),
    print: () => window.print(),
    rideTogether: async (wish) =>
      (await import('./ride/ridesTogether.ts')).startRidesTogether(wish, look, judging),
    async judgeRide(result, units) {
      const { level, recording } = result;
      const { report, reference } = await planner.judge(level, recording);
      const { adviceOf } = await import('../features/debrief/advice.ts');
      return { ride: { result, report, reference: reference.trace }, advice: adviceOf(level, report, units) };
    },
    checkGears: (question, told) => {
      const stopping = new AbortController();
      planner.checkGears(question, told, stopping.signal).then(told.onDone, (error: unknown) => {
        if (!(error instanceof Cancelled)) told.onFailed();
      });
      return () => stopping.abort();
    },
    saveEverything: async () => (await keptDesk()).saveEverything(keeping),
    clinic: () => clinic.desk(),
    carry: {
      session: clinic.carrying.session,
      store: clinic.carrying.store,
      sync: (...wish) => clinic.sync(...wish),
      readRides,
    },
    takeBack: async (...wish) => (await keptDesk()).takeBack(joined, ...wish),
    paintRider: async (...wish) => (await import('./portrait.ts')).paintRider(...wish),
    onTheRoad: async () => (await import('./roadDesk.ts')).openRoadDesk(keeping),
    bench: async () => (await import('./levelBench.ts')).openLevelBench(keeping, judging.planner),
    deleteEverything: async () => (await keptDesk()).deleteEverything(joined),
  };
}

/** The ride that stands still, or the one that is debriefed, goes along. */
function saveReport({ troubles, state }: Joined): void {
  const { trouble, last, levels } = state();
  const scripts = [...document.querySelectorAll<HTMLScriptElement>('script[src]')];
  const report = reportOf({
    build: scripts.map(({ src }) => src.split('/').at(-1) ?? ''),
    browser: navigator.userAgent,
    troubles: troubles(),
    recording: trouble?.ride?.recording ?? last?.recording ?? null,
    isBundled: (levelId) => levels.some(({ id }) => id === levelId),
  });
  offerFile(
    new Blob([JSON.stringify(report, null, 1)], { type: 'application/json' }),
    `${kept('fileReport')}.json`,
  );
}

/** Long texts of rides are read by a worker of their own. */
const readRides: Services['carry']['readRides'] = async (text, onShare, signal) => {
  const { readRidesAway } = await import('../worker/rideFileClient.ts');
  return readRidesAway(workplace, text, onShare, signal);
};
