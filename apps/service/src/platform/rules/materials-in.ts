import type { EntityManager } from 'typeorm';
import type { MakerData } from '@hull-record/contracts';
import { resolveComposition } from '@hull-record/genealogy';
import type { MaterialRole } from '@hull-record/trade';
import { loadUpstream } from '../composition/load-upstream.js';
import { standing } from '../facts/standing.js';
import { makerDataAt } from './maker-data.sql.js';

/** Kilograms of one material in something, whatever lots they came in, with what its maker says of it. */
export interface MaterialIn {
  readonly code: string;
  readonly name: string;
  readonly role: MaterialRole;
  readonly kg: number;
  readonly densityKgPerL: number | null;
  readonly lossAllowance: number | null;
  readonly makerData: MakerData;
}

const MATERIALS = `
  select l.root as lot, l.code as "lotCode", l.certified, m.code, m.name, m.role, m.density_kg_per_l as "densityKgPerL", m.loss_allowance as "lossAllowance", ${makerDataAt('m', '$2')} as "makerData"
  from fact.lot l join fact.material m on m.root = l.material_id and ${standing('m')}
  where l.root = any($1) and ${standing('l')}`;

type Row = Omit<MaterialIn, 'kg'> & {
  readonly lot: string;
  readonly lotCode: string;
  readonly certified: Omit<MakerData, 'dataSheet' | 'dosing'> | null;
};

/**
 * The materials in some amounts of lots, the most of each role first. What is unidentified has no material. Limits that
 * the certificate of a lot names stand above those of the data sheet: of several lots, those of the one that most is of.
 *
 * @param at what the makers said by then
 */
export const materialsIn = async (
  tx: EntityManager,
  taken: readonly { readonly lot: string; readonly kg: number }[],
  at: Date,
): Promise<readonly MaterialIn[]> => {
  const graph = await loadUpstream(tx, [...new Set(taken.map(({ lot }) => lot))]);
  const kgOf = new Map<string, number>();
  for (const { lot, kg } of taken)
    for (const { source, fraction } of resolveComposition(lot, graph))
      if (source !== null) kgOf.set(source, (kgOf.get(source) ?? 0) + kg * fraction);
  const rows = await tx.query<Row[]>(MATERIALS, [[...kgOf.keys()], at]);
  const found = new Map<string, MaterialIn>();
  const most = [...rows].sort((a, b) => (kgOf.get(b.lot) ?? 0) - (kgOf.get(a.lot) ?? 0) || (a.lot < b.lot ? -1 : 1));
  for (const { lot, lotCode, certified, ...material } of most) {
    const before = found.get(material.code);
    const makerData = before?.makerData ?? certifiedOver(material, lotCode, certified);
    found.set(material.code, { ...material, makerData, kg: (before?.kg ?? 0) + (kgOf.get(lot) ?? 0) });
  }
  return [...found.values()].sort((a, b) => b.kg - a.kg || (a.code < b.code ? -1 : 1));
};

const certifiedOver = (
  { name, makerData }: Pick<MaterialIn, 'name' | 'makerData'>,
  lotCode: string,
  certified: Row['certified'],
): MakerData =>
  certified === null
    ? makerData
    : {
        ...makerData,
        ...certified,
        dataSheet: `Certificate of lot ${lotCode}; ${makerData.dataSheet ?? `data of ${name} as registered`}.`,
      };
