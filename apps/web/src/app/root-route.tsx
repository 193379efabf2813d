import { createRootRoute } from '@tanstack/react-router';
import { NoPage } from './no-page.js';
import { Shell } from './shell.js';

/** What every page stands in. */
export const root = createRootRoute({ component: Shell, notFoundComponent: NoPage });

/** Says that a route stands in it. */
export const under = { getParentRoute: () => root };
