import type { SessionView } from '@hull-record/contracts';
import { useQueryClient } from '@tanstack/react-query';
import { useRouter } from '@tanstack/react-router';
import { session } from '../api/session.js';
import { ownAddress } from './own-address.js';

/** Goes on as whoever is there now: what was shown to somebody else is forgotten first. */
export const useArrival = (): ((view: SessionView, to: string) => void) => {
  const client = useQueryClient();
  const router = useRouter();
  return (view, to) => {
    session.told(view);
    client.setQueryData(['session'], view);
    client.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' });
    router.history.push(ownAddress(to));
  };
};
