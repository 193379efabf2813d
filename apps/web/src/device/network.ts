/** Whether the service was reached when it was last tried, and since when it is so. */
export interface Network {
  readonly reached: boolean;
  /** ms since 1970, by this device's clock. */
  readonly since: number;
}

let now: Network = { reached: navigator.onLine, since: Date.now() };
const listeners = new Set<() => void>();

/** What the browser says of the network is a hint; whether the service answered is the fact. */
export const network = {
  get: (): Network => now,
  tried: (reached: boolean): void => {
    if (reached === now.reached) return;
    now = { reached, since: Date.now() };
    listeners.forEach((tell) => tell());
  },
  subscribe: (tell: () => void): (() => void) => {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
};

addEventListener('offline', () => network.tried(false));
