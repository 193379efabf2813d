import { Injectable } from '@nestjs/common';
import type { ReceiveLot as Request } from '@hull-record/contracts';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { IDENTIFIED, LotEntity } from '../platform/lots/lot.entity.js';
import type { MadeLot } from '../platform/lots/make-lot.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { findMaterial } from './find-material.js';
import { LotStateEntity } from './lot-state.entity.js';

/** Receives a lot from a supplier. It is quarantined until quality releases it, unless it comes released. */
@Injectable()
export class ReceiveLot {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<MadeLot>> {
    return this.record.run('lot received', request, async (fact) => {
      const material = await findMaterial(fact, request.material, request.madeOn ?? null, '/material');
      const amount = kilogramsOf(request.amount, material, '/amount');
      const lotId = await fact.insert(LotEntity, {
        code: request.code,
        origin: 'received',
        materialId: material.id,
        supplier: request.supplier,
        supplierLot: request.supplierLot,
        madeOn: request.madeOn ?? null,
        expiresOn: request.expiresOn ?? material.expiresOn,
        certificate: request.certificate,
        certified: request.certified ?? null,
        ...IDENTIFIED,
        tankId: null,
        fillNumber: null,
        ...amount,
      });
      await fact.insert(LotStateEntity, { lotId, state: request.state, reason: 'received' });
      return { code: request.code, kg: amount.kg, ...fact.found() };
    });
  }
}
