import { Injectable } from '@nestjs/common';
import type { Amount, CorrectedValues } from '@hull-record/contracts';
import { Amendments } from '../platform/facts/amendments.js';
import type { Fact } from '../platform/facts/fact.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { assertNotAhead } from '../platform/facts/not-ahead.js';
import { LotEntity } from '../platform/lots/lot.entity.js';
import { kilogramsOf } from '../platform/lots/known-amount.js';
import { InvalidRequest } from '../platform/refusals.js';
import { followTank } from '../platform/lots/follow-tank.js';
import { findMaterial } from './find-material.js';
import { moveInputs } from './move-inputs.js';

type SetLot = Extract<CorrectedValues, { kind: 'lot' }>;

/**
 * Sets what is known of a lot anew: supplier's number, material, dates. What went into a made lot went into it when it
 * was made, and what was drawn from a tank follows its fills.
 */
@Injectable()
export class AmendLot {
  constructor(amendments: Amendments) {
    amendments.of('lot', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, LotEntity, oldId);
      assertNotAhead(set.happenedAt, '/set/happenedAt');
      assertSound(set, old);
      const happenedAt = set.happenedAt === undefined ? undefined : new Date(set.happenedAt);
      await insertVersion(fact, LotEntity, oldId, newId, {
        ...(set.material === undefined ? {} : await ofMaterial(fact, set.material, old)),
        supplierLot: set.supplierLot,
        supplier: set.supplier,
        madeOn: set.madeOn,
        expiresOn: set.expiresOn,
        happenedAt,
      });
      if (happenedAt) await moveInputs(fact, old, happenedAt);
      if (happenedAt && old.tankId !== null)
        await followTank(fact, old.tankId, `Lot ${old.code} was filled at another time.`);
    });
  }
}

const OF_RECEIVED = ['supplierLot', 'supplier', 'material', 'madeOn'] as const;

const assertSound = (set: SetLot, old: LotEntity): void => {
  const foreign = old.origin === 'received' ? [] : OF_RECEIVED.filter((field) => set[field] !== undefined);
  const madeOn = set.madeOn ?? old.madeOn;
  const expiresOn = set.expiresOn ?? old.expiresOn;
  const early = madeOn !== null && expiresOn !== null && expiresOn < madeOn;
  const wrong = [
    ...foreign.map((field) => ({
      pointer: `/set/${field}`,
      detail: 'only a received lot has this: a made lot is what it is made of; correct its inputs',
    })),
    ...(early ? [{ pointer: '/set/expiresOn', detail: `must not be before madeOn, ${madeOn}` }] : []),
  ];
  if (wrong.length > 0) throw new InvalidRequest(wrong);
};

/** The material as set, and the kilograms that the amount as entered is by its data. */
const ofMaterial = async (fact: Fact, code: string, old: LotEntity) => {
  const material = await findMaterial(fact, code, null, '/set/material');
  const entered = { quantity: old.quantity, unit: old.unit, basis: old.basis } as Amount;
  return { materialId: material.id, kg: kilogramsOf(entered, material, '/set/material').kg };
};
