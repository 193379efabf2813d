import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';

/** What a part is started with: model, mold, and the schedule version it follows. */
export interface Tooling {
  readonly modelId: string;
  readonly moldId: string;
  readonly scheduleId: string;
  readonly version: number;
}

interface Asked {
  readonly model: string;
  readonly mold: string;
  readonly kind: string;
  readonly scheduleVersion?: number | undefined;
}

const FIND = `
  select m.root as model_id, d.root as mold_id, d.model_id as mold_model, d.part_kind as mold_kind,
    s.root as schedule_id, s.version
  from (select) nothing
  left join fact.model m on m.plant_id = $1 and m.code = $2 and ${standing('m')}
  left join fact.mold d on d.plant_id = $1 and d.code = $3 and ${standing('d')}
  left join fact.schedule s on s.model_id = m.root and s.part_kind = $4 and ($5::int is null or s.version = $5) and ${standing('s')}
  order by s.version desc nulls last limit 1`;

interface Row {
  readonly model_id: string | null;
  readonly mold_id: string | null;
  readonly mold_model: string;
  readonly mold_kind: string;
  readonly schedule_id: string | null;
  readonly version: number;
}

/**
 * Finds model, mold and schedule, and sees that they belong together.
 *
 * @throws NotThere, Unprocessable `mold-of-another-part`
 */
export const findTooling = async (fact: Fact, asked: Asked): Promise<Tooling> => {
  const [row] = await fact.tx.query<Row[]>(FIND, [
    fact.author.plantId,
    asked.model,
    asked.mold,
    asked.kind,
    asked.scheduleVersion ?? null,
  ]);
  if (!row?.model_id) throw new NotThere('model', asked.model, '/model');
  if (!row.mold_id) throw new NotThere('mold', asked.mold, '/mold');
  if (row.mold_model !== row.model_id || row.mold_kind !== asked.kind) {
    throw new Unprocessable(
      'mold-of-another-part',
      `Mold ${asked.mold} is for another part: name a mold for the ${asked.kind} of ${asked.model}.`,
      '/mold',
    );
  }
  if (!row.schedule_id) {
    const which =
      asked.scheduleVersion === undefined ? 'published schedule' : `schedule version ${asked.scheduleVersion}`;
    throw new NotThere(`${which} for the ${asked.kind} of`, asked.model, '/scheduleVersion');
  }
  return { modelId: row.model_id, moldId: row.mold_id, scheduleId: row.schedule_id, version: row.version };
};
