import { weakestBasis, type Basis } from '@hull-record/trade';
import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { insertVersion } from '../facts/new-version.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';
import { LotEntity } from './lot.entity.js';
import { sumOfDecimals } from './make-lot.js';

const WEIGHED = `
  select l.id, sum(i.kg) as kg, array_agg(i.basis) as bases
  from fact.lot_input corrected
  join fact.lot l on l.root = corrected.lot_id and ${standing('l')}
  join fact.lot_input i on i.lot_id = l.root and ${standing('i')}
  where corrected.id = $1 group by l.id, l.kg having sum(i.kg) <> l.kg`;

/** A made lot weighs what went into it: when one of its inputs was corrected, the lot is too. */
export const reweighLot = async (fact: Fact, inputId: string, reason: string): Promise<void> => {
  const [lot] = await fact.tx.query<{ id: string; kg: number; bases: Basis[] }[]>(WEIGHED, [inputId]);
  if (!lot) return;
  const replacement = childId(fact.id, `weighs/${lot.id}`);
  await fact.insert(CorrectionEntity, { corrects: lot.id, correctsTable: 'lot', replacement, reason });
  const { kg, bases } = lot;
  await insertVersion(fact, LotEntity, lot.id, replacement, {
    ...{ quantity: sumOfDecimals(kg), unit: 'kg', kg, basis: weakestBasis(bases) },
  });
};
