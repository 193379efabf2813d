import { infiniteQueryOptions, keepPreviousData, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';
import type { QueryOf } from './contract.js';

/** How often it is looked again at figures while they are recomputed. */
const RECOMPUTED_MS = 5_000;

type Filter = QueryOf<'/api/models/:model/defect-map'>;

/** The defects of a model on its skin. What was drawn stays while a narrower map is asked for. */
export const defectMapQuery = (model: string, filter: Filter) =>
  queryOptions({
    queryKey: ['defect map', model, filter],
    queryFn: ({ signal }) => ask('/api/models/:model/defect-map', { model }, { query: filter, signal }),
    placeholderData: keepPreviousData,
    refetchInterval: ({ state }) => (state.data?.recomputing ? RECOMPUTED_MS : false),
  });

/** The same as a list. */
export const mappedDefectsQuery = (model: string, filter: QueryOf<'/api/models/:model/defects'>) =>
  infiniteQueryOptions({
    queryKey: ['mapped defects', model, filter],
    queryFn: ({ pageParam, signal }) =>
      ask('/api/models/:model/defects', { model }, { query: { ...filter, cursor: pageParam }, signal }),
    initialPageParam: '',
    getNextPageParam: ({ next }: { next: string | null }) => next,
    refetchInterval: ({ state }) => (state.data?.pages[0]?.recomputing ? RECOMPUTED_MS : false),
  });

export const moldsQuery = queryOptions({
  queryKey: ['molds'],
  queryFn: ({ signal }) => ask('/api/molds', {}, { signal }),
});

export const defectKindsQuery = queryOptions({
  queryKey: ['defect kinds'],
  queryFn: ({ signal }) => ask('/api/defect-kinds', {}, { signal }),
  staleTime: Infinity,
});
