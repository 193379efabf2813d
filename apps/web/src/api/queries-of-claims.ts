import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

export const claimsQuery = (query: QueryOf<'/api/claims'>) =>
  infiniteQueryOptions({
    queryKey: ['claims', query],
    queryFn: ({ pageParam, signal }) => ask('/api/claims', {}, { query: { ...query, cursor: pageParam }, signal }),
    initialPageParam: '',
    getNextPageParam: ({ next }: { next: string | null }) => next,
  });

export const claimQuery = (claim: string) =>
  queryOptions({
    queryKey: ['claim', claim],
    queryFn: ({ signal }) => ask('/api/claims/:claim', { claim }, { signal }),
  });

export const dealersQuery = queryOptions({
  queryKey: ['dealers'],
  queryFn: ({ signal }) => ask('/api/dealers', {}, { signal }),
});

export const warrantyTermsQuery = (model: string) =>
  queryOptions({
    queryKey: ['warranty terms', model],
    queryFn: ({ signal }) => ask('/api/models/:model/warranty-terms', { model }, { signal }),
  });
