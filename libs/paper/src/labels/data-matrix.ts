// The encoder's matrix is a method of its default export; its named export `raw` is another thing.
import bwipp from 'bwip-js/generic';

/** Dark modules side by side in one row. */
export interface Run {
  readonly row: number;
  readonly from: number;
  readonly length: number;
}

/** A Data Matrix symbol (ISO/IEC 16022, ECC 200) without its quiet zone. */
export interface Matrix {
  /** Modules along each side; it is square. */
  readonly size: number;
  readonly runs: readonly Run[];
}

/**
 * Empty modules that stay around a symbol. One is the least of ISO/IEC 16022 (from memory); two forgive a cut that
 * wanders.
 */
export const QUIET_MODULES = 2;

/** Encodes an ASCII text. Throws an Error when it is longer than the largest symbol holds, far beyond any path of ours. */
export const dataMatrix = (text: string): Matrix => {
  const [symbol] = bwipp.raw({ bcid: 'datamatrix', text });
  if (symbol === undefined || !('pixs' in symbol)) throw new Error('The encoder gave no Data Matrix.');
  const { pixs, pixx } = symbol;
  const rows = Array.from({ length: pixs.length / pixx }, (_, row) => pixs.slice(row * pixx, (row + 1) * pixx));
  return { size: pixx, runs: rows.flatMap(runsOf) };
};

/** Dark modules side by side in a row of modules, 1 for a dark one. */
export const runsOf = (modules: readonly number[], row: number): readonly Run[] =>
  modules.flatMap((module, from): Run[] => {
    if (module === 0 || modules[from - 1] === 1) return [];
    const end = modules.indexOf(0, from);
    return [{ row, from, length: (end < 0 ? modules.length : end) - from }];
  });
