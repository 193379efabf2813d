export { drawBuildRecord } from './build-record.js';
export type * from './build-record-view.js';
export type * from './hull-map-view.js';
export type * from './layer-view.js';
