import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** How often it is looked again at figures while they are recomputed. */
const RECOMPUTED_MS = 5_000;

/** Where a lot went. */
export const lotTraceQuery = (lot: string) =>
  queryOptions({
    queryKey: ['lot trace', lot],
    queryFn: ({ signal }) => ask('/api/lots/:lot/trace', { lot }, { signal }),
    refetchInterval: ({ state }) => (state.data?.recomputing ? RECOMPUTED_MS : false),
  });

/** Where what is in one or some hulls came from. */
export const hullTraceQuery = (number: string, also: string) =>
  queryOptions({
    queryKey: ['hull trace', number, also],
    queryFn: ({ signal }) => ask('/api/hulls/:number/trace', { number }, { query: { also }, signal }),
    refetchInterval: ({ state }) => (state.data?.recomputing ? RECOMPUTED_MS : false),
  });
