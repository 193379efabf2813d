import { Injectable } from '@nestjs/common';
import type { ReceiveLot as Request } from '@hull-record/contracts';
import type { Fact } from '../platform/facts/fact.js';
import { standing } from '../platform/facts/standing.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { LotEntity } from '../platform/lots/lot.entity.js';
import type { MadeLot } from '../platform/lots/make-lot.js';
import { kilogramsOf } from '../platform/lots/resolve-taken.js';
import { NotThere } from '../platform/refusals.js';
import { LotStateEntity } from './lot-state.entity.js';

interface Material {
  readonly root: string;
  readonly density_kg_per_l: number | null;
  readonly areal_mass_kg_per_m2: number | null;
  readonly piece_mass_kg: number | null;
  readonly expires_on: string | null;
}

/** Receives a lot from a supplier. It is quarantined until quality releases it, unless it comes released. */
@Injectable()
export class ReceiveLot {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<MadeLot>> {
    return this.record.run('lot received', request, async (fact) => {
      const material = await findMaterial(fact, request);
      const amount = kilogramsOf(request.amount, conversionsOf(request.material, material), '/amount');
      const lotId = await fact.insert(LotEntity, {
        code: request.code,
        origin: 'received',
        materialId: material.root,
        supplier: request.supplier,
        supplierLot: request.supplierLot,
        madeOn: request.madeOn ?? null,
        expiresOn: request.expiresOn ?? material.expires_on,
        certificate: request.certificate,
        tankId: null,
        fillNumber: null,
        ...amount,
      });
      await fact.insert(LotStateEntity, { lotId, state: request.state, reason: 'received' });
      return { code: request.code, kg: amount.kg, nonconformities: [] };
    });
  }
}

/** The material, and the last day of use that its shelf life gives. */
const findMaterial = async (fact: Fact, request: Request): Promise<Material> => {
  const [material] = await fact.tx.query<Material[]>(
    `select m.root, m.density_kg_per_l, m.areal_mass_kg_per_m2, m.piece_mass_kg,
       ($3::date + m.shelf_life_days)::text as expires_on
     from fact.material m where m.plant_id = $1 and m.code = $2 and ${standing('m')}`,
    [fact.author.plantId, request.material, request.madeOn ?? null],
  );
  if (!material) throw new NotThere('material', request.material, '/material');
  return material;
};

const conversionsOf = (code: string, material: Material) => ({
  code,
  ...(material.density_kg_per_l === null ? {} : { densityKgPerL: material.density_kg_per_l }),
  ...(material.areal_mass_kg_per_m2 === null ? {} : { arealMassKgPerM2: material.areal_mass_kg_per_m2 }),
  ...(material.piece_mass_kg === null ? {} : { pieceMassKg: material.piece_mass_kg }),
});
