/** A station that stays open for days asks so often whether there is a newer version, ms. */
const ASK_EVERY_MS = 60 * 60_000;

/** Whether this device can work with no network: not in this browser, not before all files are here, from now on. */
export type Readiness = 'never' | 'soon' | 'ready';

let readiness: Readiness = 'soon';
let waiting: ServiceWorker | null = null;
const listeners = new Set<() => void>();

const isWaiting = (worker: ServiceWorker | null): void => {
  // The very first one has nothing to wait for.
  if (worker === null || navigator.serviceWorker.controller === null) return;
  waiting = worker;
  listeners.forEach((tell) => tell());
};

const becomes = (now: Readiness): void => {
  readiness = now;
  listeners.forEach((tell) => tell());
};

const follow = (worker: ServiceWorker | null): void => {
  worker?.addEventListener('statechange', () => {
    if (worker.state === 'installed') isWaiting(worker);
  });
};

/** The worker that keeps the station's own files: with it, the station starts with no network from the second visit on. */
export const shellWorker = {
  /** Whether a newer version of the app is here, to be loaded when a person says so. */
  isNewer: (): boolean => waiting !== null,
  subscribe: (tell: () => void): (() => void) => {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
  readiness: (): Readiness => readiness,
  /** A browser without workers, or a page that is not served securely, goes without. */
  register: async (): Promise<void> => {
    if (!('serviceWorker' in navigator)) return becomes('never');
    void navigator.serviceWorker.ready.then(() => becomes('ready'));
    // The network may go while the files are fetched: it is tried anew when it is back.
    const again = (): void => void (readiness === 'soon' && shellWorker.register());
    addEventListener('online', again, { once: true });
    try {
      const found = await navigator.serviceWorker.register('/service-worker.js', { scope: '/station' });
      isWaiting(found.waiting);
      follow(found.installing);
      found.addEventListener('updatefound', () => follow(found.installing));
      setInterval(() => void found.update().catch(() => undefined), ASK_EVERY_MS);
    } catch {
      // The station works as long as there is a network.
    }
  },
  /** Loads the newer version. */
  loadNewer: (): void => {
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
    waiting?.postMessage('take over');
  },
};
