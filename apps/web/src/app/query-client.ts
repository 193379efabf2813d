import { QueryClient } from '@tanstack/react-query';

/** For so long an answer is shown again without asking anew, ms. */
const FRESH_MS = 10_000;

/**
 * Keeps answers while they are of use.
 *
 * Nothing is asked twice by itself when it was refused: a person sees what went wrong and asks again. What the browser
 * thinks of the network is a hint and not a fact, so it is asked in any case.
 */
export const queryClient = new QueryClient({
  defaultOptions: { queries: { staleTime: FRESH_MS, retry: false, networkMode: 'always' } },
});
