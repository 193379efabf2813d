import type { NoticeView } from '@hull-record/contracts';
import type { ConcernedHull } from './load-notice-state.js';

/**
 * The models of hulls with the inclusive months of their manufacture, YYYY-MM (33 CFR 179.09): from the month in which the
 * first was begun to that in which the last was done.
 */
export const modelsOf = (hulls: readonly ConcernedHull[]): NoticeView['models'] =>
  [...new Set(hulls.map(({ modelName }) => modelName))].sort().map((model) => {
    const own = hulls.filter(({ modelName }) => modelName === model);
    const months = own
      .flatMap(({ startedOn, builtOn }) => [startedOn, builtOn ?? startedOn])
      .map((day) => day.slice(0, 7));
    const [from = '', ...rest] = [...months].sort();
    return { model, from, until: rest.at(-1) ?? from };
  });
