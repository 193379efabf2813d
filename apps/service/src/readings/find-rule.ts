import type { EntityManager } from 'typeorm';
import type { Limits, ReadJoint, RequiredReading } from '@hull-record/contracts';
import type { ReadKind } from './find-read.js';
import { standing } from '../platform/facts/standing.js';

/** The limits a reading is judged by, and where they come from; kept with the verdict for ever. */
export interface JudgingRule {
  readonly limits: Limits | null;
  readonly text: string;
}

const FIND = `
  select y.readings, y.name, s.version, m.code as model
  from fact.layer_record r
  join fact.schedule_layer y on y.id = r.schedule_layer_id
  join fact.schedule s on s.id = y.schedule_id
  join fact.model m on m.id = s.model_id
  where r.root = $1 and ${standing('r')}`;

/** Finds the limits for a kind of reading: those of the layer in the schedule version it was made by. */
export const findRule = async (
  tx: EntityManager,
  of: ReadKind,
  id: string,
  what: string,
  given?: Pick<ReadJoint, 'limits' | 'source'>,
): Promise<JudgingRule> => {
  if (of === 'joint' || of === 'part' || of === 'lot')
    return given?.limits === undefined
      ? { limits: null, text: `No limit was named for this ${of}.` }
      : { limits: given.limits, text: `${given.source ?? ''}. Each spot is judged by itself, unrounded.` };
  if (of === 'repair')
    return { limits: null, text: 'No limit is set for readings of a repair; the one who accepts it judges them.' };
  const [layer] = await tx.query<{ readings: RequiredReading[]; name: string; version: number; model: string }[]>(
    FIND,
    [id],
  );
  const required = layer?.readings.find((reading) => reading.what === what);
  if (!layer || !required) return { limits: null, text: 'The schedule sets no limit for this kind of reading.' };
  const source = required.source === undefined ? '' : ` Source: ${required.source}.`;
  return {
    limits: required.limits,
    text: `Schedule ${layer.model} version ${layer.version}, layer ${layer.name}. Each spot is judged by itself, unrounded; of a gauge interval, the highest wetted step.${source}`,
  };
};
