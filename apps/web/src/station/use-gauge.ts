import { useSyncExternalStore } from 'react';
import { smallStore } from '../device/small-store.js';

const chosen = smallStore<Readonly<Record<string, string>>>('hull-record.gauges', {});

/** The gauge that this tablet reads with, by what is read; it is chosen once and remembered. */
export const useGauge = (what: string): readonly [string | null, (gauge: string) => void] => {
  const gauges = useSyncExternalStore(chosen.subscribe, chosen.get);
  return [gauges[what] ?? null, (gauge) => chosen.set({ ...chosen.get(), [what]: gauge })];
};
