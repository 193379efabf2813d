import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** Every version of a fact that was corrected. */
export const versionsQuery = (fact: string) =>
  queryOptions({
    queryKey: ['versions', fact],
    queryFn: ({ signal }) => ask('/api/facts/:fact/versions', { fact }, { signal }),
  });

/** Items with a serial number that are or were fitted to a hull. */
export const fittedItemsQuery = (hull: string) =>
  queryOptions({
    queryKey: ['fitted items', hull],
    queryFn: ({ signal }) => ask('/api/fitted-items', {}, { query: { hull }, signal }),
  });
