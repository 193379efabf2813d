import { createRouter } from '@tanstack/react-router';
import { session } from '../api/session.js';
import { PageOnItsWay, PageTrouble } from './page-trouble.js';
import { routeTree } from './routes.js';
import { parseQuery, writeQuery } from './search-texts.js';

/** Leads from an address to its page. */
export const router = createRouter({
  routeTree,
  defaultPreload: 'intent',
  scrollRestoration: true,
  parseSearch: parseQuery,
  stringifySearch: writeQuery,
  defaultErrorComponent: PageTrouble,
  defaultPendingComponent: PageOnItsWay,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}

/** Old addresses stood after a #: `/#/hulls/86-1?x=y` is `/hulls/86-1?x=y` now. */
const followOldAddress = (): void => {
  if (location.hash.startsWith('#/')) router.history.replace(location.hash.slice(1));
};

/** After a link was followed, reading begins at the heading of the page it led to. */
const readFromHeading = (): void => {
  router.subscribe('onRendered', ({ fromLocation, pathChanged }) => {
    if (fromLocation === undefined || !pathChanged) return;
    document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true });
  });
};

/** Makes ready what surrounds the routes: old addresses, where reading begins, and where a sign-in is asked for. */
export const prepareRouter = (): void => {
  followOldAddress();
  addEventListener('hashchange', followOldAddress);
  readFromHeading();
  session.signInAsked = () => {
    const { pathname } = router.state.location;
    // The station goes on with nobody signed in: what is entered waits, and its frame says so.
    if (pathname === '/sign-in' || pathname.startsWith('/station')) return;
    void router.navigate({ to: '/sign-in', search: { from: router.state.location.href } });
  };
};
