export { drawBuildRecord } from './build-record.js';
export type * from './build-record-view.js';
export type * from './hull-map-view.js';
export type * from './layer-view.js';
export { drawLotReport } from './lot-report/draw-lot-report.js';
export type * from './lot-report/lot-report-view.js';
export type * from './papers/paper-view.js';
export { drawHoldPoints } from './hold-points/draw-hold-points.js';
export type * from './hold-points/hold-points-view.js';
