import { createRoute, lazyRouteComponent } from '@tanstack/react-router';
import { under } from './root-route.js';
import { texts } from './search-texts.js';

const store = createRoute({
  ...under,
  path: '/store',
  validateSearch: texts('material'),
  component: lazyRouteComponent(() => import('../store/store-page.js'), 'StorePage'),
});
const receive = createRoute({
  ...under,
  path: '/store/receive',
  component: lazyRouteComponent(() => import('../store/receive-page.js'), 'ReceivePage'),
});
const mix = createRoute({
  ...under,
  path: '/store/mix',
  component: lazyRouteComponent(() => import('../store/mix-page.js'), 'MixPage'),
});
const kit = createRoute({
  ...under,
  path: '/store/kit',
  component: lazyRouteComponent(() => import('../store/kit-page.js'), 'KitPage'),
});
const materials = createRoute({
  ...under,
  path: '/store/materials',
  component: lazyRouteComponent(() => import('../store/materials-page.js'), 'MaterialsPage'),
});
const storeLot = createRoute({
  ...under,
  path: '/store/lots/$lot',
  component: lazyRouteComponent(() => import('../store/store-lot-page.js'), 'StoreLotPage'),
});
const tank = createRoute({
  ...under,
  path: '/tanks/$tank',
  component: lazyRouteComponent(() => import('../store/tank-page.js'), 'TankPage'),
});
const labels = createRoute({
  ...under,
  path: '/labels',
  validateSearch: texts('of', 'codes'),
  component: lazyRouteComponent(() => import('../labels/print-labels-page.js'), 'PrintLabelsPage'),
});

/** The pages of the desk by their addresses: store, labels, quality, people, equipment. */
export const deskRoutes = [...[store, receive, mix, kit, materials, storeLot, tank, labels]] as const;
