export * from './canonical-json.js';
export * from './commitment.js';
