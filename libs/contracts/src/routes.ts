import { accessRoutes } from './access-routes.js';
import { askingRoutes } from './asking-routes.js';
import { boatRoutes } from './boat-routes.js';
import { daySheetRoutes } from './day-sheet-routes.js';
import { gunRoutes } from './gun-routes.js';
import { hullMapRoutes } from './hull-map-routes.js';
import { makingRoutes } from './making-routes.js';
import { shopRoutes } from './shop-routes.js';
import { stockRoutes } from './stock-routes.js';
import { traceGraphRoutes } from './trace-graph-routes.js';
import { touchUpRoutes } from './touch-up-routes.js';
import { newsRoutes, privacyRoutes, redactionRoutes } from './privacy-routes.js';
import { certificateRoutes } from './certificate-routes.js';
import { checkRoutes } from './check-routes.js';
import { chartRoutes } from './chart-routes.js';
import { caseRoutes } from './case-routes.js';
import { claimRoutes } from './claim-routes.js';
import { ownRepairRoutes } from './own-repair-routes.js';
import { qualityRoutes } from './quality-routes.js';
import { ownerRoutes } from './owner-routes.js';
import { figureRoutes } from './figure-routes.js';
import { ruleRoutes } from './rule-routes.js';
import { labelRoutes } from './label-routes.js';
import { moldRoutes } from './mold-routes.js';
import { holdRoutes } from './hold-routes.js';
import { noticeRoutes } from './notice-routes.js';
import { storeRoutes } from './store-routes.js';
import { paperRoutes } from './paper-routes.js';

export type { BuildRecordQuery, RecordCut } from './asking-routes.js';
export type { Route } from './route.js';

/** Every call of the HTTP API, by name. */
export const routes = {
  ...accessRoutes,
  ...shopRoutes,
  ...storeRoutes,
  ...boatRoutes,
  ...makingRoutes,
  ...daySheetRoutes,
  ...gunRoutes,
  ...stockRoutes,
  ...touchUpRoutes,
  ...checkRoutes,
  ...qualityRoutes,
  ...chartRoutes,
  ...ownerRoutes,
  ...claimRoutes,
  ...ownRepairRoutes,
  ...caseRoutes,
  ...holdRoutes,
  ...certificateRoutes,
  ...privacyRoutes,
  ...redactionRoutes,
  ...newsRoutes,
  ...noticeRoutes,
  ...moldRoutes,
  ...ruleRoutes,
  ...figureRoutes,
  ...labelRoutes,
  ...askingRoutes,
  ...hullMapRoutes,
  ...traceGraphRoutes,
  ...paperRoutes,
} as const;
