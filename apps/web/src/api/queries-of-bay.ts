import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** The acceptance table of flaws, by which a defect is judged while it is entered. */
export const flawLimitsQuery = queryOptions({
  queryKey: ['flaw limits'],
  queryFn: ({ signal }) => ask('/api/flaw-limits', {}, { signal }),
});

/** The newest hulls that have open defects. */
export const openHullsQuery = queryOptions({
  queryKey: ['hulls with open defects'],
  queryFn: async ({ signal }) => {
    const { items } = await ask('/api/hulls', {}, { query: { limit: '200' }, signal });
    return items.filter(({ openDefects }) => openDefects > 0);
  },
});
