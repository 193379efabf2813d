import { weakestBasis, type Basis } from '@hull-record/trade';
import type { Fact, Found } from '../facts/fact.js';
import { Unprocessable } from '../refusals.js';
import { warnOfStock } from '../store/stock-warnings.js';
import { brokenLotRules } from './break-of-lot-rules.js';
import { NOT_SPRAYED } from './drawn-row.js';
import { LotInputEntity } from './lot-input.entity.js';
import { IDENTIFIED, LotEntity } from './lot.entity.js';
import type { ResolvedTaken } from './resolved-taken.js';

/** A lot to be made of others. */
export interface LotToMake {
  readonly code: string;
  readonly origin: 'mixed' | 'tank' | 'cut';
  readonly tank?: { readonly id: string; readonly fillNumber: number };
  readonly inputs: readonly ResolvedTaken[];
}

export interface MadeLot extends Found {
  readonly code: string;
  readonly kg: number;
}

/**
 * Makes a lot of others: the lot, its inputs, and a nonconformity for each input that was expired or not released.
 *
 * A bucket or kit must be used by the first day on which one of its inputs expires; a tank turns over and has no day.
 *
 * @throws Unprocessable `lot-made-of-itself` when an input has the code of the lot that is made
 */
export const makeLot = async (fact: Fact, { code, origin, tank, inputs }: LotToMake): Promise<MadeLot> => {
  assertNotItself(code, inputs);
  const kg = inputs.reduce((sum, { amount }) => sum + amount.kg, 0);
  const lotId = await fact.insert(LotEntity, {
    code,
    origin,
    materialId: null,
    supplier: null,
    supplierLot: null,
    madeOn: null,
    expiresOn: origin === 'tank' ? null : firstExpiry(inputs),
    certificate: {},
    certified: null,
    ...IDENTIFIED,
    tankId: tank?.id ?? null,
    fillNumber: tank?.fillNumber ?? null,
    quantity: sumOfDecimals(kg),
    unit: 'kg',
    basis: weakest(inputs),
    kg,
  });
  await fact.insertMany(
    LotInputEntity,
    inputs.map(({ lot, drawn, amount, spray }) => ({
      lotId,
      inputId: lot.id,
      ...drawn,
      ...(spray ?? NOT_SPRAYED),
      ...amount,
    })),
  );
  await openBroken(fact, lotId, inputs);
  await warnOfStock(fact, inputs, fact.happenedAt);
  return { code, kg, ...fact.found() };
};

const assertNotItself = (code: string, inputs: readonly ResolvedTaken[]): void => {
  const i = inputs.findIndex(({ lot }) => lot.code === code);
  if (i >= 0)
    throw new Unprocessable(
      'lot-made-of-itself',
      `Lot ${code} cannot be made of itself: give the new lot a code of its own.`,
      `/inputs/${i}/lot`,
    );
};

const openBroken = async (fact: Fact, lotId: string, inputs: readonly ResolvedTaken[]): Promise<void> => {
  for (const { lot } of inputs) {
    for (const broken of brokenLotRules(lot))
      await fact.open({ ...broken, aboutKind: 'lot', aboutId: lotId, partId: null });
  }
};

const firstExpiry = (inputs: readonly ResolvedTaken[]): string | null =>
  inputs.flatMap(({ lot }) => lot.expiresOn ?? []).sort()[0] ?? null;

/** A sum of doubles as people write it: to a microgram, without the noise of adding in binary. */
export const sumOfDecimals = (kg: number): string => String(Number(kg.toPrecision(15)));

const weakest = (inputs: readonly ResolvedTaken[]): string =>
  weakestBasis(inputs.map(({ amount }) => amount.basis as Basis));
