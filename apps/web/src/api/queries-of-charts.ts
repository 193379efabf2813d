import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

export const chartsQuery = queryOptions({
  queryKey: ['charts'],
  queryFn: ({ signal }) => ask('/api/charts', {}, { signal }),
});

export const chartQuery = (what: string, query: QueryOf<'/api/charts/:what'>) =>
  queryOptions({
    queryKey: ['charts', what, query],
    queryFn: ({ signal }) => ask('/api/charts/:what', { what }, { query, signal }),
  });
