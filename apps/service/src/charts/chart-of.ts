import type { Charted } from '@hull-record/contracts';
import type { EntityManager } from 'typeorm';
import { findByCode } from '../platform/lookups/find-by-code.js';

/** Which chart is asked for, as a request names it. */
export interface ChartNamed {
  readonly what: Charted;
  readonly model: string;
  readonly part: string;
  readonly layer?: string | undefined;
  readonly mold?: string | undefined;
  readonly gun?: string | undefined;
  readonly area?: string | undefined;
}

/** A chart with the ids of what narrows it; null where nothing does. */
export interface ChartOf {
  readonly what: Charted;
  readonly modelId: string;
  readonly partKind: string;
  readonly layer: string | null;
  readonly moldId: string | null;
  readonly gunId: string | null;
  readonly area: string | null;
}

/**
 * Finds what a chart is of.
 *
 * @throws NotThere when there is no such model, mold or gun
 */
export const chartOf = async (tx: EntityManager, plantId: string, named: ChartNamed): Promise<ChartOf> => {
  const { what, model, part, layer, mold, gun, area } = named;
  const find = (kind: 'mold' | 'equipment', code: string | undefined, pointer: string): Promise<string | null> =>
    code === undefined ? Promise.resolve(null) : findByCode(tx, kind, plantId, code, pointer);
  return {
    what,
    modelId: await findByCode(tx, 'model', plantId, model, '/model'),
    partKind: part,
    layer: layer ?? null,
    moldId: await find('mold', mold, '/mold'),
    gunId: await find('equipment', gun, '/gun'),
    area: area ?? null,
  };
};

/** The parameters $1 to $6 of the queries that follow a chart: model, part, layer, mold, gun, area. */
export const parametersOf = ({ modelId, partKind, layer, moldId, gunId, area }: ChartOf): readonly unknown[] => [
  ...[modelId, partKind, layer, moldId, gunId, area],
];
