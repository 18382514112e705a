/**
 * The pages that carry plans and results, joined to a real storage and nothing else: `#plan`, `#join/…`, `#tablet`,
 * `#collect/…` and `#store`. What tests put in and look at hangs on `window.lab`.
 */
import { readRideFile } from '../../../src/core/transfer/rideFile.ts';
import '../../../src/ui/theme.css';
import '../../../src/ui/parts.css';
import '../../../src/ui/dialogs.css';
import '../../../src/ui/kept.css';
import { render } from 'preact';
import type { ClinicPlan } from '../../../src/core/group/plan.ts';
import { READY_PLANS } from '../../../src/core/group/readyPlans.ts';
import type { RideRecord } from '../../../src/core/group/records/record.ts';
import { parseLevel } from '../../../src/core/level/parse.ts';
import { createGroupVerifier } from '../../../src/worker/verifierClient.ts';
import { createVerifier } from '../../../src/worker/verifier.ts';
import { bringWords } from '../../../src/app/device/language.ts';
import { openHandoverDesk } from '../../../src/app/group/handoverDesk.ts';
import { createFormat } from '../../../src/words/format.ts';
import { offerFile } from '../../../src/ui/file.ts';
import { thisHost } from '../../../src/features/handover/readiness.ts';
import { Collect } from '../../../src/features/handover/collect.tsx';
import { HandBack } from '../../../src/features/handover/handOut.tsx';
import { HandOut } from '../../../src/features/handover/handOut.tsx';
import { Join } from '../../../src/features/handover/join.tsx';
import { StoreLine } from '../../../src/features/handover/storeLine.tsx';
import { StorePage } from '../../../src/features/handover/storePage.tsx';
import { createAgreementStore } from '../../../src/storage/shared/index.ts';
import { openSharedDesk } from '../../../src/app/group/sharedDesk.ts';
import { createCarriedSessions } from '../../../src/storage/sessions.ts';
import { openStorage } from '../../../src/storage/index.ts';
import onePitch from '../../../levels/one-pitch-announced.json' with { type: 'json' };

/** What tests can do. */
export interface Lab {
  /** Makes this device one that has ridden these. */
  ride(plan: ClinicPlan, deviceId: string, records: readonly RideRecord[]): Promise<void>;
  /** Everything collected here. */
  collected(): ReturnType<Awaited<ReturnType<typeof openHandoverDesk>>['collected']>;
  sync(): Promise<void>;
  joined(): readonly ClinicPlan[];
}

declare global {
  interface Window {
    lab: Lab;
  }
}

await bringWords();
const parsed = parseLevel(onePitch);
const levels = parsed.ok ? [parsed.level] : [];
const storage = await openStorage();
const sessions = createCarriedSessions(storage);
const read = <T,>(key: string, otherwise: T): T =>
  (JSON.parse(sessionStorage.getItem(key) ?? 'null') as T | null) ?? otherwise;
let plan = read<ClinicPlan>('plan', READY_PLANS[0] as ClinicPlan);
let deviceId = read('device', 'coach');
let joined: readonly ClinicPlan[] = [];
const open = () =>
  openHandoverDesk(plan, {
    sessions,
    verifier: createGroupVerifier({ start: () => null, here: async () => createVerifier() }, levels),
    now: () => Date.now(),
    onChanged: draw,
  });
let desk = await open();
const shared = await openSharedDesk({
  storage,
  agreement: createAgreementStore(() => window.localStorage),
  now: () => Date.now(),
  fetch: (url, init) => fetch(url, init),
  sleep: (ms) => new Promise((resolve) => setTimeout(resolve, ms / 20)),
});

window.lab = {
  async ride(next, device, records) {
    sessionStorage.setItem('plan', JSON.stringify(next));
    sessionStorage.setItem('device', JSON.stringify(device));
    plan = next;
    deviceId = device;
    for (const data of records)
      await storage.putRecord({
        kind: 'clinic-record',
        id: `own-${data.deviceId}-${data.seq}`,
        schema: 1,
        data,
      });
    desk = await open();
    desk.subscribe(draw);
    draw();
  },
  collected: () => desk.collected(),
  sync: () =>
    shared.sync({
      planId: plan.id,
      handOver: () => desk.everything(deviceId),
      take: (found) => desk.take(found),
    }),
  joined: () => joined,
};

function draw(): void {
  const [view = '', rest = ''] = location.hash.slice(1).split(/\/(.*)/s);
  const send = (): void => undefined;
  const site = location.href.replace(/#.*/, '');
  const onSaveFile = (name: string, text: string): void => offerFile(new Blob([text]), name);
  const carry = { site, send, onSaveFile, onCopy: async () => false };
  const format = createFormat('metric', 'en-GB');
  const app = document.getElementById('app') as HTMLElement;
  if (view === 'plan') render(<HandOut {...carry} plan={plan} host={thisHost()} />, app);
  else if (view === 'tablet')
    render(<HandBack {...carry} plan={plan} handOver={desk.handOver(deviceId)} store={null} />, app);
  else if (view === 'join')
    render(
      <Join
        readRides={async (text) => readRideFile(text)}
        {...{ send, levels, format, joined }}
        arrived={rest}
        onJoin={(next) => {
          joined = [...joined, next];
          draw();
        }}
        onGo={() => undefined}
      />,
      app,
    );
  else if (view === 'store')
    render(<StorePage store={shared} here={location.href} site={site} onFetch={() => undefined} />, app);
  else
    render(
      <Collect
        readRides={async (text) => readRideFile(text)}
        {...{ plan, format, send }}
        collected={desk.collected()}
        arrived={rest}
        nameOf={(nickname) => nickname.replace(/^~/, '')}
        now={() => Date.now()}
        onTake={(found) => desk.take(found)}
        store={<StoreLine store={shared} standing={shared.state()} onFetch={() => undefined} />}
      />,
      app,
    );
}

desk.subscribe(draw);
shared.subscribe(draw);
window.addEventListener('hashchange', draw);
draw();
document.body.dataset['ready'] = 'true';
