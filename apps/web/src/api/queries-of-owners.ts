import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

export const ownersQuery = (query: QueryOf<'/api/owners'>) =>
  infiniteQueryOptions({
    queryKey: ['owners', query],
    queryFn: ({ pageParam, signal }) => ask('/api/owners', {}, { query: { ...query, cursor: pageParam }, signal }),
    initialPageParam: '',
    getNextPageParam: ({ next }: { next: string | null }) => next,
  });

export const ownerQuery = (owner: string) =>
  queryOptions({
    queryKey: ['owner', owner],
    queryFn: ({ signal }) => ask('/api/owners/:owner', { owner }, { signal }),
  });

export const redactableQuery = (number: string) =>
  queryOptions({
    queryKey: ['redactable', number],
    queryFn: ({ signal }) => ask('/api/hulls/:number/redactable', { number }, { signal }),
  });
