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

/** Asked for as it is typed: only when nothing more was typed for a while. */
const PAUSE_MS = 300;

interface GroupsAsked {
  readonly models: string;
  readonly builtFrom: string;
  readonly builtTo: string;
  readonly origin: string;
}

export const groupsQuery = (code: string, asked: GroupsAsked) =>
  queryOptions({
    queryKey: ['case groups', code, asked],
    queryFn: async ({ signal }) => {
      await new Promise((done) => setTimeout(done, PAUSE_MS));
      signal.throwIfAborted();
      return ask('/api/cases/:case/groups', { case: code }, { query: { ...asked }, signal });
    },
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
