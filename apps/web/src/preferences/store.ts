import { readPreferences, type Preferences } from './preferences.js';

const KEY = 'hull-record.preferences';

/** What was kept on this device; null where the browser keeps nothing for pages. */
const kept = (): string | null => {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
};

let now: Preferences = readPreferences(kept(), navigator.languages);
const listeners = new Set<() => void>();

/** What the person at this device chose, kept on the device; another window of it follows. */
export const preferenceStore = {
  get: (): Preferences => now,
  /** Chooses; a device that keeps nothing keeps the choice until the page is left. */
  set: (chosen: Partial<Preferences>): void => {
    now = { ...now, ...chosen };
    try {
      localStorage.setItem(KEY, JSON.stringify(now));
    } catch {
      // The choice holds for this visit.
    }
    listeners.forEach((tell) => tell());
  },
  subscribe: (tell: () => void): (() => void) => {
    listeners.add(tell);
    return () => listeners.delete(tell);
  },
};

addEventListener('storage', ({ key }) => {
  if (key !== KEY) return;
  now = readPreferences(kept(), navigator.languages);
  listeners.forEach((tell) => tell());
});
