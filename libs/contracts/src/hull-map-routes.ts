import * as map from './hull-map.js';
import { get } from './route.js';

/** The hull map of many hulls: the defects of a model at their places on its skin. */
export const hullMapRoutes = {
  readDefectMap: get({
    path: '/api/models/:model/defect-map',
    tag: 'hull map',
    summary: 'Where on the skin of a model defects were found, over all its hulls.',
    query: map.MapFilter,
    response: map.DefectMap,
  }),
  listMappedDefects: get({
    path: '/api/models/:model/defects',
    tag: 'hull map',
    summary: 'The same defects as a list, the newest first.',
    query: map.MappedDefectsQuery,
    response: map.MappedDefectsPage,
  }),
} as const;
