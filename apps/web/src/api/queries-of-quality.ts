import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

const pages = { initialPageParam: '', getNextPageParam: ({ next }: { next: string | null }) => next };

export const waitingQuery = (query: QueryOf<'/api/waiting'>) =>
  infiniteQueryOptions({
    queryKey: ['waiting', query],
    queryFn: ({ pageParam, signal }) =>
      ask('/api/waiting', {}, { query: { ...query, limit: '30', cursor: pageParam }, signal }),
    ...pages,
  });

export const openNonconformitiesQuery = infiniteQueryOptions({
  queryKey: ['open nonconformities'],
  queryFn: ({ pageParam, signal }) =>
    ask('/api/nonconformities', {}, { query: { open: 'yes', limit: '30', cursor: pageParam }, signal }),
  ...pages,
});

export const unprovedQuery = queryOptions({
  queryKey: ['unproved entries'],
  queryFn: ({ signal }) => ask('/api/unproved-entries', {}, { signal }),
});

export const keptEntriesQuery = queryOptions({
  queryKey: ['kept entries'],
  queryFn: ({ signal }) => ask('/api/kept-entries', {}, { signal }),
});

export const concessionsQuery = infiniteQueryOptions({
  queryKey: ['concessions'],
  queryFn: ({ pageParam, signal }) =>
    ask('/api/concessions', {}, { query: { limit: '50', cursor: pageParam }, signal }),
  ...pages,
});

export const defectCountsQuery = (query: QueryOf<'/api/defect-counts'>) =>
  queryOptions({
    queryKey: ['defect counts', query],
    queryFn: ({ signal }) => ask('/api/defect-counts', {}, { query, signal }),
  });

export const hullCountsQuery = queryOptions({
  queryKey: ['hull counts'],
  queryFn: ({ signal }) => ask('/api/hull-counts', {}, { signal }),
});
