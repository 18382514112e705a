/**
 * What has to be done at home before a session without network, as far as a browser can tell about itself. Asked
 * live; what it cannot tell it says. The sentences are found by the page.
 */

/** Things to check, in the order they are best done. */
export const READINESS = ['secure', 'offline', 'camera', 'keeping'] as const;
export type ReadinessCheck = (typeof READINESS)[number];

/** `open`: can be done here and now. `wrong`: cannot work this way. */
export type CheckAnswer = 'done' | 'open' | 'wrong' | 'unknown';
export type ReadinessAnswers = Readonly<Record<ReadinessCheck, CheckAnswer>>;

/** What is asked; the browser, or a description of one. */
export interface ReadinessHost {
  readonly isSecureContext: boolean;
  readonly navigator: {
    readonly serviceWorker?: Pick<ServiceWorkerContainer, 'getRegistration'>;
    readonly permissions?: { query(what: { readonly name: 'camera' }): Promise<{ readonly state: string }> };
    readonly mediaDevices?: Pick<MediaDevices, 'getUserMedia' | 'enumerateDevices'>;
    readonly storage?: Pick<StorageManager, 'persisted' | 'persist'>;
  };
}

/** This browser. */
export function thisHost(): ReadinessHost {
  return window as unknown as ReadinessHost;
}

/** Asks for everything. Never rejects. */
export async function checkReadiness(host: ReadinessHost): Promise<ReadinessAnswers> {
  const secure = host.isSecureContext;
  const [offline, camera, keeping] = await Promise.all([
    ask(() => offlineCopy(host)),
    ask(() => cameraAllowed(host)),
    ask(() => keptForGood(host)),
  ]);
  return { secure: secure ? 'done' : 'wrong', offline, camera, keeping };
}

/** Asks for the camera and lets it go again, so that the question does not come in the field. */
export async function allowCamera(host: ReadinessHost): Promise<void> {
  try {
    const stream = await host.navigator.mediaDevices?.getUserMedia({ video: true });
    for (const track of stream?.getTracks() ?? []) track.stop();
  } catch {
    // Refused, or there is none; the check says so.
  }
}

/** Asks the browser not to clear by itself what is kept. */
export async function askKeeping(host: ReadinessHost): Promise<void> {
  try {
    await host.navigator.storage?.persist?.();
  } catch {
    // The check says what came of it.
  }
}

async function ask(question: () => Promise<CheckAnswer>): Promise<CheckAnswer> {
  try {
    return await question();
  } catch {
    return 'unknown';
  }
}

async function offlineCopy({ isSecureContext, navigator }: ReadinessHost): Promise<CheckAnswer> {
  if (!isSecureContext || navigator.serviceWorker === undefined) return 'wrong';
  const registration = await navigator.serviceWorker.getRegistration();
  return registration?.active ? 'done' : 'open';
}

async function cameraAllowed({ isSecureContext, navigator }: ReadinessHost): Promise<CheckAnswer> {
  if (!isSecureContext || navigator.mediaDevices === undefined) return 'wrong';
  const devices = await navigator.mediaDevices.enumerateDevices();
  if (!devices.some((device) => device.kind === 'videoinput')) return 'wrong';
  // Some browsers do not know the question; a camera with a name has been allowed before.
  try {
    const state = (await navigator.permissions?.query({ name: 'camera' }))?.state;
    if (state === 'granted') return 'done';
    if (state === 'denied') return 'wrong';
    if (state === 'prompt') return 'open';
  } catch {
    // Asked the other way below.
  }
  return devices.some((device) => device.kind === 'videoinput' && device.label !== '') ? 'done' : 'open';
}

async function keptForGood({ navigator }: ReadinessHost): Promise<CheckAnswer> {
  if (navigator.storage?.persisted === undefined) return 'unknown';
  return (await navigator.storage.persisted()) ? 'done' : 'open';
}
