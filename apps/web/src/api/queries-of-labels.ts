import { queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

export const labelStockQuery = queryOptions({
  queryKey: ['label stock'],
  queryFn: ({ signal }) => ask('/api/label-stock', {}, { signal }),
  staleTime: 3_600_000,
});
