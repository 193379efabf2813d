import type { EntityManager } from 'typeorm';
import { standing } from '../facts/standing.js';
import { NotThere } from '../refusals.js';

/** Facts that routes and requests name by id. */
export type Named =
  | 'layer_record'
  | 'repair'
  | 'joint'
  | 'defect'
  | 'reading'
  | 'nonconformity'
  | 'equipment_check'
  | 'hold'
  | 'notice_mailing'
  | 'touch_up'
  | 'disposition'
  | 'fitted_item'
  | 'owner'
  | 'claim';

const isUuid = (text: string): boolean => /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(text);

/**
 * The version of a fact that stands now, by the id of any of its versions.
 *
 * @throws NotThere when there is none, or when it was withdrawn
 */
export const findStanding = async <Row extends { id: string; root: string }>(
  tx: EntityManager,
  what: Named,
  id: string,
  pointer?: string,
): Promise<Row> => {
  const rows = isUuid(id)
    ? await tx.query<Row[]>(
        `select x.* from fact.${what} x where x.root = (select root from fact.${what} where id = $1) and ${standing('x')}`,
        [id],
      )
    : [];
  const [found] = rows;
  if (!found) throw new NotThere(what.replaceAll('_', ' '), id, pointer);
  return found;
};
