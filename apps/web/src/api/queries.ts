import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask, post } from './ask.js';
import { session } from './session.js';
import type { QueryOf } from './contract.js';

/** How often it is looked again at what is on its way: the demo while it loads, figures while they are recomputed. */
const DEMO_MS = 1_500;
const RECOMPUTED_MS = 5_000;

interface Figures {
  readonly recomputing?: unknown;
}
const whileRecomputing = (answer: Figures | undefined): number | false => (answer?.recomputing ? RECOMPUTED_MS : false);
const pages = { initialPageParam: '', getNextPageParam: ({ next }: { next: string | null }) => next };

/** Who is signed in here. What it tells goes with every write. */
export const sessionQuery = queryOptions({
  queryKey: ['session'],
  queryFn: async ({ signal }) => {
    const view = await ask('/api/session', {}, { signal });
    session.told(view);
    return view;
  },
  staleTime: 60_000,
});

export const ownHullsQuery = infiniteQueryOptions({
  queryKey: ['own hulls'],
  queryFn: ({ pageParam, signal }) => ask('/api/own-hulls', {}, { query: { limit: '50', cursor: pageParam }, signal }),
  ...pages,
});

export const readinessQuery = queryOptions({
  queryKey: ['ready'],
  queryFn: ({ signal }) => ask('/health/ready', {}, { signal }),
  refetchInterval: ({ state }) => (state.data?.demo.state === 'loading' ? DEMO_MS : false),
});

export const hullsQuery = (query: QueryOf<'/api/hulls'>) =>
  infiniteQueryOptions({
    queryKey: ['hulls', query],
    queryFn: ({ pageParam, signal }) => ask('/api/hulls', {}, { query: { ...query, cursor: pageParam }, signal }),
    ...pages,
  });

export const hullQuery = (number: string) =>
  queryOptions({
    queryKey: ['hull', number],
    queryFn: ({ signal }) => ask('/api/hulls/:number', { number }, { signal }),
  });

export const hullLotsQuery = (number: string) =>
  queryOptions({
    queryKey: ['hull lots', number],
    queryFn: ({ signal }) => ask('/api/hulls/:number/lots', { number }, { signal }),
    refetchInterval: ({ state }) => whileRecomputing(state.data),
  });

export const partQuery = (part: string) =>
  queryOptions({
    queryKey: ['part', part],
    queryFn: ({ signal }) => ask('/api/parts/:part', { part }, { signal }),
    refetchInterval: ({ state }) => whileRecomputing(state.data),
  });

export const modelsQuery = queryOptions({
  queryKey: ['models'],
  queryFn: ({ signal }) => ask('/api/models', {}, { signal }),
});

export const materialsQuery = queryOptions({
  queryKey: ['materials'],
  queryFn: ({ signal }) => ask('/api/materials', {}, { signal }),
});

export const lotsQuery = (query: QueryOf<'/api/lots'>) =>
  infiniteQueryOptions({
    queryKey: ['lots', query],
    queryFn: ({ pageParam, signal }) => ask('/api/lots', {}, { query: { ...query, cursor: pageParam }, signal }),
    ...pages,
  });

export const lotQuery = (lot: string) =>
  queryOptions({
    queryKey: ['lot', lot],
    queryFn: ({ signal }) => ask('/api/lots/:lot', { lot }, { signal }),
    refetchInterval: ({ state }) => whileRecomputing(state.data),
  });

export const lotHullsQuery = (lot: string, query: QueryOf<'/api/lots/:lot/hulls'>) =>
  infiniteQueryOptions({
    queryKey: ['lot hulls', lot, query],
    queryFn: ({ pageParam, signal }) =>
      ask('/api/lots/:lot/hulls', { lot }, { query: { ...query, cursor: pageParam }, signal }),
    ...pages,
    refetchInterval: ({ state }) => whileRecomputing(state.data?.pages[0]),
  });

export const defectQuery = (defect: string) =>
  queryOptions({
    queryKey: ['defect', defect],
    queryFn: ({ signal }) => ask('/api/defects/:defect', { defect }, { signal }),
  });

export const suspectsQuery = (defect: string) =>
  queryOptions({
    queryKey: ['suspects', defect],
    queryFn: ({ signal }) => ask('/api/defects/:defect/lots', { defect }, { signal }),
    refetchInterval: ({ state }) => whileRecomputing(state.data),
  });

export const sharedLotsQuery = (hulls: readonly string[]) =>
  infiniteQueryOptions({
    queryKey: ['shared lots', hulls],
    queryFn: ({ pageParam, signal }) =>
      post('/api/shared-lots', {}, { hulls: [...hulls], ...(pageParam === '' ? {} : { cursor: pageParam }) }, signal),
    ...pages,
    refetchInterval: ({ state }) => whileRecomputing(state.data?.pages[0]),
  });

export const labelTargetQuery = (path: string) =>
  queryOptions({
    queryKey: ['label', path],
    queryFn: ({ signal }) => ask('/api/label-target', {}, { query: { path }, signal }),
  });
