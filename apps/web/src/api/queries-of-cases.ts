import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { ask } from './ask.js';

/** How often it is looked again at a look that is worked out. */
const LOOK_MS = 1_500;

interface OnItsWay {
  readonly progress: { readonly state: string };
}
const isOnItsWay = ({ progress }: OnItsWay): boolean => ['waiting', 'running'].includes(progress.state);

export const casesQuery = infiniteQueryOptions({
  queryKey: ['cases'],
  queryFn: ({ pageParam, signal }) => ask('/api/cases', {}, { query: { limit: '50', cursor: pageParam }, signal }),
  initialPageParam: '',
  getNextPageParam: ({ next }: { next: string | null }) => next,
});

export const caseQuery = (code: string) =>
  queryOptions({
    queryKey: ['case', code],
    queryFn: ({ signal }) => ask('/api/cases/:case', { case: code }, { signal }),
    refetchInterval: ({ state }) => (state.data?.history.some(isOnItsWay) ? LOOK_MS : false),
  });

export const lookQuery = (code: string, look: string) =>
  queryOptions({
    queryKey: ['look', code, look],
    queryFn: ({ signal }) => ask('/api/cases/:case/looks/:look', { case: code, look }, { signal }),
    refetchInterval: ({ state }) => (state.data && isOnItsWay(state.data) ? LOOK_MS : false),
  });

/** Works a look out again; asked for by a person, and not by itself. */
export const lookAgainQuery = (code: string, look: string) =>
  queryOptions({
    queryKey: ['look again', code, look],
    queryFn: ({ signal }) => ask('/api/cases/:case/looks/:look/again', { case: code, look }, { signal }),
    enabled: false,
  });
