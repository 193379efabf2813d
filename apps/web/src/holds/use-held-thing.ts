import type { HeldThing } from '@hull-record/contracts';
import { useWords } from '../words/use-words.js';

/** Says what a hold is on. */
export const useHeldThing = (): ((on: HeldThing) => string) => {
  const { t } = useWords();
  return ({ what, code, lot, state }) => {
    const name = code ?? '';
    if (what === 'lot') return t('holds.onLot', { lot: name });
    if (what === 'container') return t('holds.onContainer', { container: name, lot: lot ?? '' });
    if (what === 'equipment') return t('holds.onEquipment', { equipment: name });
    if (what === 'mold state') return t('holds.onMold', { mold: name, state: state ?? 1 });
    return t('holds.onPeriod');
  };
};
