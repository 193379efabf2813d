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
const holds = createRoute({
  ...under,
  path: '/holds',
  validateSearch: texts('which'),
  component: lazyRouteComponent(() => import('../holds/holds-page.js'), 'HoldsPage'),
});
const hold = createRoute({
  ...under,
  path: '/holds/$hold',
  component: lazyRouteComponent(() => import('../holds/hold-page.js'), 'HoldPage'),
});
const notice = createRoute({
  ...under,
  path: '/notices/$notice',
  component: lazyRouteComponent(() => import('../notices/notice-page.js'), 'NoticePage'),
});
const claims = createRoute({
  ...under,
  path: '/claims',
  validateSearch: texts('which', 'kind', 'prompted', 'hull'),
  component: lazyRouteComponent(() => import('../claims/claims-page.js'), 'ClaimsPage'),
});
const newClaim = createRoute({
  ...under,
  path: '/claims/new',
  validateSearch: texts('hull'),
  component: lazyRouteComponent(() => import('../claims/new-claim-page.js'), 'NewClaimPage'),
});
const claim = createRoute({
  ...under,
  path: '/claims/$claim',
  component: lazyRouteComponent(() => import('../claims/claim-page.js'), 'ClaimPage'),
});
const warranty = createRoute({
  ...under,
  path: '/warranty',
  validateSearch: texts('model'),
  component: lazyRouteComponent(() => import('../warranty/warranty-page.js'), 'WarrantyPage'),
});
const cases = createRoute({
  ...under,
  path: '/cases',
  component: lazyRouteComponent(() => import('../cases/cases-page.js'), 'CasesPage'),
});
const oneCase = createRoute({
  ...under,
  path: '/cases/$case',
  validateSearch: texts('look'),
  component: lazyRouteComponent(() => import('../cases/case-page.js'), 'CasePage'),
});
const labels = createRoute({
  ...under,
  path: '/labels',
  validateSearch: texts('of', 'codes'),
  component: lazyRouteComponent(() => import('../labels/print-labels-page.js'), 'PrintLabelsPage'),
});

const quality = createRoute({
  ...under,
  path: '/quality',
  validateSearch: texts('about', 'act', 'name'),
  component: lazyRouteComponent(() => import('../quality/quality-page.js'), 'QualityPage'),
});
const release = createRoute({
  ...under,
  path: '/quality/release',
  validateSearch: texts('hull'),
  component: lazyRouteComponent(() => import('../quality/release-page.js'), 'ReleasePage'),
});
const counts = createRoute({
  ...under,
  path: '/quality/counts',
  validateSearch: texts('by', 'from', 'to'),
  component: lazyRouteComponent(() => import('../quality/counts-page.js'), 'CountsPage'),
});
const concessions = createRoute({
  ...under,
  path: '/quality/concessions',
  component: lazyRouteComponent(() => import('../quality/concessions-page.js'), 'ConcessionsPage'),
});
const charts = createRoute({
  ...under,
  path: '/charts',
  component: lazyRouteComponent(() => import('../charts/charts-page.js'), 'ChartsPage'),
});
const chart = createRoute({
  ...under,
  path: '/charts/$what',
  validateSearch: texts('model', 'part', 'layer', 'mold', 'gun', 'area', 'from', 'to', 'rules', 'run'),
  component: lazyRouteComponent(() => import('../charts/chart-page.js'), 'ChartPage'),
});
const people = createRoute({
  ...under,
  path: '/people',
  component: lazyRouteComponent(() => import('../people/people-page.js'), 'PeoplePage'),
});
const person = createRoute({
  ...under,
  path: '/people/$badge',
  component: lazyRouteComponent(() => import('../people/person-page.js'), 'PersonPage'),
});
const devices = createRoute({
  ...under,
  path: '/devices',
  component: lazyRouteComponent(() => import('../people/devices-page.js'), 'DevicesPage'),
});
const tokens = createRoute({
  ...under,
  path: '/tokens',
  component: lazyRouteComponent(() => import('../people/tokens-page.js'), 'TokensPage'),
});
const equipment = createRoute({
  ...under,
  path: '/equipment',
  validateSearch: texts('guns', 'others'),
  component: lazyRouteComponent(() => import('../equipment/equipment-page.js'), 'EquipmentPage'),
});
const oneEquipment = createRoute({
  ...under,
  path: '/equipment/$code',
  component: lazyRouteComponent(() => import('../equipment/one-equipment-page.js'), 'OneEquipmentPage'),
});
const molds = createRoute({
  ...under,
  path: '/molds',
  component: lazyRouteComponent(() => import('../equipment/molds-page.js'), 'MoldsPage'),
});
const mold = createRoute({
  ...under,
  path: '/molds/$mold',
  component: lazyRouteComponent(() => import('../equipment/mold-page.js'), 'MoldPage'),
});

const models = createRoute({
  ...under,
  path: '/models',
  component: lazyRouteComponent(() => import('../models/models-page.js'), 'ModelsPage'),
});
const newModel = createRoute({
  ...under,
  path: '/models/new',
  component: lazyRouteComponent(() => import('../models/new-model-page.js'), 'NewModelPage'),
});
const model = createRoute({
  ...under,
  path: '/models/$model',
  validateSearch: texts('part', 'version'),
  component: lazyRouteComponent(() => import('../models/model-page.js'), 'ModelPage'),
});
const newSchedule = createRoute({
  ...under,
  path: '/models/$model/schedule',
  validateSearch: texts('part'),
  component: lazyRouteComponent(() => import('../models/schedule/new-version-page.js'), 'NewVersionPage'),
});

const owners = createRoute({
  ...under,
  path: '/owners',
  validateSearch: texts('hull'),
  component: lazyRouteComponent(() => import('../owners/owners-page.js'), 'OwnersPage'),
});
const redactable = createRoute({
  ...under,
  path: '/owners/hulls/$hull',
  component: lazyRouteComponent(() => import('../owners/redactable-page.js'), 'RedactablePage'),
});
const owner = createRoute({
  ...under,
  path: '/owners/$owner',
  component: lazyRouteComponent(() => import('../owners/owner-page.js'), 'OwnerPage'),
});

/** The pages of the desk by their addresses: store, labels, quality, people, equipment. */
export const deskRoutes = [
  ...[store, receive, mix, kit, materials, storeLot, tank, labels],
  ...[quality, release, counts, concessions, charts, chart],
  ...[people, person, devices, tokens],
  ...[equipment, oneEquipment, molds, mold],
  ...[models, newModel, model, newSchedule],
  ...[holds, hold, notice],
  ...[claims, newClaim, claim, warranty, cases, oneCase],
  ...[owners, owner, redactable],
] as const;
