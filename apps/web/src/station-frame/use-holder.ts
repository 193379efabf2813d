import { useSyncExternalStore } from 'react';
import { holding, type Holder } from '../device/holder.js';

/** Who has this tablet; null: nobody, so that nothing may be entered. */
export const useHolder = (): Holder | null => useSyncExternalStore(holding.subscribe, holding.get);
