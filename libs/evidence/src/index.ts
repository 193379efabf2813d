export * from './canonical-json.js';
export * from './commitment.js';
export * from './read-canonical-json.js';
