import type {
  DefectSuspects,
  DefectView,
  HullLots,
  HullPage,
  HullView,
  LotPage,
  LotView,
  MaterialView,
  ModelView,
  PartView,
  ReachPage,
  SharedLotsPage,
} from '@hull-record/contracts';
import { ask, withQuery } from './ask.js';

type Query = Readonly<Record<string, string | undefined>>;
const seg = encodeURIComponent;

/** How far the demo plant is; `detail` says what went wrong. */
export interface Readiness {
  readonly ready: boolean;
  readonly demo: {
    readonly state: 'off' | 'loading' | 'loaded' | 'failed';
    readonly done: number;
    readonly total: number;
    readonly detail?: string;
  };
}

export const readiness = () => ask<Readiness>('/health/ready');
export const listHulls = (query: Query) => ask<HullPage>(withQuery('/api/hulls', query));
export const readHull = (number: string) => ask<HullView>(`/api/hulls/${seg(number)}`);
export const lotsOfHull = (number: string) => ask<HullLots>(`/api/hulls/${seg(number)}/lots`);
export const readPart = (part: string) => ask<PartView>(`/api/parts/${seg(part)}`);
export const listModels = () => ask<readonly ModelView[]>('/api/models');
export const listMaterials = () => ask<readonly MaterialView[]>('/api/materials');
export const listLots = (query: Query) => ask<LotPage>(withQuery('/api/lots', query));
export const readLot = (lot: string) => ask<LotView>(`/api/lots/${seg(lot)}`);
export const hullsOfLot = (lot: string, query: Query) =>
  ask<ReachPage>(withQuery(`/api/lots/${seg(lot)}/hulls`, query));
export const readDefect = (defect: string) => ask<DefectView>(`/api/defects/${seg(defect)}`);
export const suspectsOf = (defect: string) => ask<DefectSuspects>(`/api/defects/${seg(defect)}/lots`);
export const sharedLots = (hulls: readonly string[], cursor?: string) =>
  ask<SharedLotsPage>('/api/shared-lots', { hulls, ...(cursor === undefined ? {} : { cursor }) });

/** Where the build record of a hull is to be had. */
export const buildRecordPath = (number: string): string => `/api/hulls/${seg(number)}/build-record.pdf`;

/** Where the papers of a lot and of a part are to be had. */
export const lotReportPath = (lot: string): string => `/api/lots/${seg(lot)}/report.pdf`;
export const holdPointsPath = (part: string): string => `/api/parts/${seg(part)}/hold-points.pdf`;
export const repairOrderPath = (part: string): string => `/api/parts/${seg(part)}/repair-order.pdf`;
