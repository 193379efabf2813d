import { useSyncExternalStore } from 'react';
import type { Preferences } from './preferences.js';
import { preferenceStore } from './store.js';

/** What the person at this device chose, and how to choose anew. */
export const usePreferences = (): readonly [Preferences, (chosen: Partial<Preferences>) => void] => [
  useSyncExternalStore(preferenceStore.subscribe, preferenceStore.get),
  preferenceStore.set,
];
