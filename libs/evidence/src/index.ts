export * from './canonical-json.js';
export * from './commitment.js';
export * from './read-canonical-json.js';
export type { Hash } from './sha-256.js';
export * from './tree/consistency.js';
export * from './tree/growing-tree.js';
export * from './tree/inclusion.js';
export type { ReadSubtree, Subtree } from './tree/subtrees.js';
export * from './tree/tree-hash.js';
