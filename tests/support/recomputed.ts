import type { RunningService } from './service.js';

/** Returns when nothing is being worked out anew. */
export const recomputed = async (service: RunningService): Promise<void> => {
  const unfinished = 'select trouble from work.recomputation where finished_at is null';
  for (;;) {
    const [left] = await service.asOwner<{ trouble: string | null }>(unfinished);
    if (!left) return;
    if (left.trouble !== null) throw new Error(left.trouble);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
};

/**
 * Keeps the jobs of the plant from running until it is called, as a worker does that took them and is slow: the answers
 * in between can be looked at.
 */
export const keepJobsWaiting = async (service: RunningService): Promise<() => Promise<void>> => {
  await service.asOwner(
    `insert into graphile_worker._private_job_queues (queue_name, locked_at, locked_by)
     select 'recompute ' || id, now(), 'another' from fact.plant
     on conflict (queue_name) do update set locked_at = excluded.locked_at, locked_by = excluded.locked_by`,
  );
  return async () => {
    await service.asOwner(`select graphile_worker.force_unlock_workers(array['another'])`);
    await service.asOwner(`select pg_notify('jobs:insert', '{"r":1,"count":1}')`);
  };
};
