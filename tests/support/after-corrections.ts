import type { CertificateView } from '@hull-record/contracts';
import type { RunningService } from './service.js';
import type { Shop } from './shop.js';

/** Returns when every look at certificates that corrections asked for has been done. */
export const lookedAt = async (service: RunningService): Promise<void> => {
  for (;;) {
    const left = await service.asOwner<{ last_error: string | null }>(
      `select j.last_error from graphile_worker._private_jobs j join graphile_worker._private_tasks t on t.id = j.task_id
       where t.identifier = 'after correction'`,
    );
    if (left.length === 0) return;
    const failed = left.find(({ last_error: error }) => error !== null);
    if (failed) throw new Error(String(failed.last_error));
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
};

/** Keeps those looks from being taken until it is called, as when the service was ended right after a correction. */
export const keepLooksWaiting = async (service: RunningService): Promise<() => Promise<void>> => {
  await service.asOwner(
    `insert into graphile_worker._private_job_queues (queue_name, locked_at, locked_by)
     select 'after correction ' || id, now(), 'another' from fact.plant
     on conflict (queue_name) do update set locked_at = excluded.locked_at, locked_by = excluded.locked_by`,
  );
  return async () => {
    await service.asOwner(`select graphile_worker.force_unlock_workers(array['another'])`);
    await service.asOwner(`select pg_notify('jobs:insert', '{"r":1,"count":1}')`);
  };
};

/** The newest issue of the certificate of a hull. */
export const newestOf = async (shop: Shop, hull: string): Promise<CertificateView> =>
  (await shop.read<CertificateView[]>(`/api/hulls/${hull}/certificates`))[0] as CertificateView;
