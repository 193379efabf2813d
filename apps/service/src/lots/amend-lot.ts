import { Injectable } from '@nestjs/common';
import { Amendments } from '../platform/facts/amendments.js';
import { insertVersion } from '../platform/facts/new-version.js';
import { findByCode } from '../platform/lookups/find-by-code.js';
import { LotEntity } from '../platform/lots/lot.entity.js';

/** Sets what is known of a lot anew: supplier's number, material, dates. */
@Injectable()
export class AmendLot {
  constructor(amendments: Amendments) {
    amendments.of('lot', async (fact, oldId, newId, set) => {
      const materialId =
        set.material === undefined
          ? undefined
          : await findByCode(fact.tx, 'material', fact.author.plantId, set.material, '/set/material');
      await insertVersion(fact, LotEntity, oldId, newId, {
        supplierLot: set.supplierLot,
        supplier: set.supplier,
        materialId,
        madeOn: set.madeOn,
        expiresOn: set.expiresOn,
        happenedAt: set.happenedAt === undefined ? undefined : new Date(set.happenedAt),
      });
    });
  }
}
