/**
 * The page's side of the offline worker: registers it, tells when a newer version waits, and lets it take over when
 * a person asks for it. Does nothing by itself to a page that is open; when to ask is decided by `main`.
 */

interface OfflineOptions {
  /** Address of the worker, trusted by the page. */
  readonly worker: string;
  /** A newer version is complete on this device and waits. */
  readonly onNewer: () => void;
}

const BETWEEN_LOOKS_MS = 60 * 60_000;

/** Registers the worker; a browser that cannot, or a page that is not secure, simply stays online. */
export function registerOffline({ worker, onNewer }: OfflineOptions) {
  // Missing on plain http from another computer.
  const container = 'serviceWorker' in navigator ? navigator.serviceWorker : null;
  let registration: ServiceWorkerRegistration | null = null;
  let lastLookMs = Date.now();

  const follow = (found: ServiceWorkerRegistration | undefined): void => {
    // Some browsers pretend to register where the person or a policy has forbidden it.
    if (found === undefined) return;
    registration = found;
    // Without a controller this is the first visit, and nothing is being replaced.
    const tell = (): void => {
      if (found.waiting !== null && container?.controller !== null) onNewer();
    };
    tell();
    found.addEventListener('updatefound', () => found.installing?.addEventListener('statechange', tell));
  };
  container?.register(worker, { scope: './', updateViaCache: 'none' }).then(follow, () => undefined);

  return {
    /** Looks for a newer version, at most once an hour. */
    look(): void {
      if (Date.now() - lastLookMs < BETWEEN_LOOKS_MS) return;
      lastLookMs = Date.now();
      registration?.update().catch(() => undefined);
    },
    /** Lets the waiting version take over and loads the page anew. */
    takeOver(): void {
      const waiting = registration?.waiting ?? null;
      // Another tab may have asked already; then this page only has to be loaded anew.
      if (waiting === null) return location.reload();
      container?.addEventListener('controllerchange', () => location.reload(), { once: true });
      waiting.postMessage('take-over');
    },
    /** Takes the worker off this device; it comes back with the next visit. */
    forget: async (): Promise<void> => {
      await registration?.unregister();
    },
  };
}
export type Offline = ReturnType<typeof registerOffline>;
