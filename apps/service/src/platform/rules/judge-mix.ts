import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts } from '../verdicts/keep-verdict.js';
import { CATALYST, judgeCatalystIn } from './judge-catalyst.js';
import { materialsIn } from './materials-in.js';

const BUCKET = `select l.happened_at as at from fact.lot l where l.root = $1 and l.origin = 'mixed' and ${standing('l')}`;

const INPUTS = `select i.input_id as lot, i.kg from fact.lot_input i where i.lot_id = $1 and ${standing('i')}`;

/** Judges the catalyst in a bucket, by what the makers said when it was mixed. Other lots are not judged. */
export const judgeMix = async (fact: Fact, lot: string): Promise<void> => {
  await judgeAlone(fact, CATALYST, lot);
  const [bucket] = await fact.tx.query<{ at: Date }[]>(BUCKET, [lot]);
  if (!bucket) return;
  const materials = await materialsIn(fact.tx, await fact.tx.query(INPUTS, [lot]), bucket.at);
  const about = { aboutKind: 'lot', aboutId: lot, partId: null };
  await keepVerdicts(fact, about, [CATALYST], judgeCatalystIn(materials));
};
