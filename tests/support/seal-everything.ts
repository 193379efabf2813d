import { setTimeout as pause } from 'node:timers/promises';
import { SealJournal } from '../../apps/service/src/platform/journal/seal-journal.js';
import type { RunningService } from './service.js';

/** How many entries are not sealed yet. */
export const countUnsealed = async ({ asOwner }: RunningService): Promise<number> =>
  (
    await asOwner(
      'select from fact.journal j where not exists (select from fact.sealed_entry s where s.entry_id = j.id)',
    )
  ).length;

/** Seals all that is recorded. Another test on this server may hold a transaction open for a while: what is above it waits. */
export const sealEverything = async (service: RunningService): Promise<void> => {
  for (let tries = 0; tries < 250 && (await countUnsealed(service)) > 0; tries += 1) {
    await service.get(SealJournal).all();
    await pause(100);
  }
};
