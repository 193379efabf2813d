import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

const pages = { initialPageParam: '', getNextPageParam: ({ next }: { next: string | null }) => next };

export const tanksQuery = queryOptions({
  queryKey: ['tanks'],
  queryFn: ({ signal }) => ask('/api/tanks', {}, { signal }),
});

/** Stock of a material in the order in which it is to be used; nothing is asked before a material is chosen. */
export const stockQuery = (material: string) =>
  queryOptions({
    queryKey: ['stock', material],
    queryFn: ({ signal }) => ask('/api/materials/:material/stock', { material }, { signal }),
    enabled: material !== '',
  });

export const storeOfLotQuery = (lot: string) =>
  queryOptions({
    queryKey: ['store of lot', lot],
    queryFn: ({ signal }) => ask('/api/lots/:lot/store', { lot }, { signal }),
  });

export const balanceQuery = (lot: string) =>
  queryOptions({
    queryKey: ['balance', lot],
    queryFn: ({ signal }) => ask('/api/lots/:lot/balance', { lot }, { signal }),
  });

export const balancesQuery = infiniteQueryOptions({
  queryKey: ['balances'],
  queryFn: ({ pageParam, signal }) => ask('/api/balances', {}, { query: { limit: '50', cursor: pageParam }, signal }),
  ...pages,
});

/** What a mix takes of catalyst; nothing is asked before resin, catalyst and an amount are known. */
export const doseQuery = (material: string, query: QueryOf<'/api/materials/:material/dose'>) =>
  queryOptions({
    queryKey: ['dose', material, query],
    queryFn: ({ signal }) => ask('/api/materials/:material/dose', { material }, { query, signal }),
    enabled: material !== '' && Object.values(query).every((each) => each !== ''),
  });
