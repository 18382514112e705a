/**
 * Joins what is carried between devices to the clinic: one owner per session, fetched when it is wanted, and a club's
 * own store, asked after every ride and whenever the network is back, once somebody here has agreed to it.
 */
import type { StoreProblem } from '../../core/transfer/clubStore.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import type { RideRecord } from '../../core/group/records/record.ts';
import type { GroupVerifier } from '../../worker/verifierClient.ts';
import type { Keeping } from '../device/persistence.ts';
import type { HandoverDesk } from './handoverDesk.ts';
import type { SharedDesk } from './sharedDesk.ts';

/** Nothing is fetched yet. `onChanged` gets all rides of a session when some have come or gone. */
export function joinCarrying(
  keeping: Keeping,
  verifier: () => Promise<GroupVerifier>,
  onChanged: (planId: string, records: readonly RideRecord[]) => void,
) {
  const desks = new Map<string, Promise<HandoverDesk>>();
  let shared: Promise<SharedDesk> | null = null;

  const open = async (plan: ClinicPlan): Promise<HandoverDesk> => {
    const [{ openHandoverDesk }, { createCarriedSessions }] = await Promise.all([
      import('./handoverDesk.ts'),
      import('../../storage/sessions.ts'),
    ]);
    const desk: HandoverDesk = await openHandoverDesk(plan, {
      sessions: createCarriedSessions(await keeping.storage),
      verifier: await verifier(),
      now: () => Date.now(),
      onChanged: () => onChanged(plan.id, desk.collected().set.records),
    });
    return desk;
  };
  const session = (plan: ClinicPlan): Promise<HandoverDesk> => {
    const desk = desks.get(plan.id) ?? open(plan);
    desks.set(plan.id, desk);
    // What could not be fetched is asked for again.
    desk.catch(() => desks.delete(plan.id));
    return desk;
  };
  const clubStore = (): Promise<SharedDesk> => {
    shared ??= openStore(keeping);
    shared.catch(() => {
      shared = null;
    });
    return shared;
  };
  // Another tab has agreed to a store, or stopped it.
  window.addEventListener('storage', () => void shared?.then((club) => club.look()));
  return {
    session,
    store: clubStore,
    /**
     * Sends what is new in a session to the club's store and takes what is there; does nothing where nobody has agreed to
     * one. `inPassing`: nobody asked for it, so what a person has to see to first is not tried again.
     */
    async sync(plan: ClinicPlan, deviceId: string, inPassing = false): Promise<void> {
      const club = await clubStore();
      if (club.agreed() === null) return;
      const problem = club.state(plan.id)?.problem ?? null;
      if (inPassing && problem !== null && FOR_A_PERSON.includes(problem)) return;
      const desk = await session(plan);
      await club.sync(
        { planId: plan.id, handOver: () => desk.everything(deviceId), take: (read) => desk.take(read) },
        inPassing,
      );
    },
    /** Forgets what was fetched, because everything was deleted. */
    forget(): void {
      desks.clear();
      shared = null;
    },
  };
}

/** Asking again changes nothing; some stores even lock out who asks too often. */
const FOR_A_PERSON: readonly StoreProblem[] = [
  'wrong-password',
  'not-allowed',
  'no-database',
  'bad-address',
  'not-a-store',
];

async function openStore(keeping: Keeping): Promise<SharedDesk> {
  const [{ openSharedDesk }, { createAgreementStore }] = await Promise.all([
    import('./sharedDesk.ts'),
    import('../../storage/shared/index.ts'),
  ]);
  return openSharedDesk({
    storage: await keeping.storage,
    agreement: createAgreementStore(() => window.localStorage),
    fetch: (url, init) => fetch(url, init),
    sleep: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
    now: () => Date.now(),
  });
}
