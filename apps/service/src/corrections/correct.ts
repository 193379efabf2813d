import { Injectable } from '@nestjs/common';
import type { Correct as Request } from '@hull-record/contracts';
import { assertAct } from '../platform/access/assert-act.js';
import { Composition } from '../platform/composition/composition.js';
import { Amendments } from '../platform/facts/amendments.js';
import { CorrectionEntity } from '../platform/facts/correction.entity.js';
import type { Fact } from '../platform/facts/fact.js';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { childId } from '../platform/ids.js';
import { followDraws } from '../platform/lots/follow-draws.js';
import { followTank } from '../platform/lots/follow-tank.js';
import { splitAgain } from '../platform/lots/split-again.js';
import { reweighLot } from '../platform/lots/reweigh-lot.js';
import { Unprocessable } from '../platform/refusals.js';
import { assertWithdrawable } from './assert-withdrawable.js';
import { CORRECTABLE } from './correctable.js';
import { findFact } from './find-fact.js';
import { withdrawWith } from './withdraw-with.js';

/** Kinds of fact whose note lies apart. */
const APART = new Set<string>(['defect', 'life fact']);

export interface Corrected {
  readonly replacement: string | null;
  readonly recomposedLots: number;
  readonly recomputedPlaces: number;
}

/** Corrects a fact: appends the version that takes its place, or withdraws it, with the reason. Nothing is edited. */
@Injectable()
export class Correct {
  constructor(
    private readonly record: RecordFact,
    private readonly amendments: Amendments,
    private readonly composition: Composition,
  ) {}

  run(request: Request): Promise<Receipt<Corrected>> {
    const { corrects, reason, set } = request;
    const decide = async (fact: Fact): Promise<Corrected> => {
      const { table, root, enteredBy } = await findFact(fact.tx, corrects);
      if (enteredBy !== fact.author.personId) assertAct(fact, 'correct what another entered');
      assertKind(table, set?.kind);
      const replacement = set === undefined ? null : childId(fact.id, 'replacement');
      if (set === undefined) await assertWithdrawable(fact.tx, table, root);
      await fact.insert(CorrectionEntity, { corrects, correctsTable: table, replacement, reason });
      if (set === undefined) await withdrawWith(fact, table, corrects, root, reason);
      else await this.amendments.amend(fact, corrects, replacement as string, set);
      if (table === 'hook_up') await followGunOf(fact, root, reason);
      if (table === 'gun_setting') await splitGunOf(fact, root, reason);
      if (table === 'lot') await followTankOf(fact, root, reason);
      if (table === 'lot_input') await reweighLot(fact, corrects, reason);
      const reached = await this.composition.reachOf(fact);
      return { replacement, recomposedLots: reached.tankLots.length, recomputedPlaces: reached.places.length };
    };
    const freeTexts = set !== undefined && APART.has(set.kind) ? ['set.note'] : [];
    return this.record.run('correction', request, decide, { genealogy: 'alone', freeTexts });
  }
}

/** What was drawn from a tank follows when one of its fills is withdrawn. */
const followTankOf = async (fact: Fact, lot: string, reason: string): Promise<void> => {
  const [of] = await fact.tx.query<{ tank_id: string | null }[]>('select tank_id from fact.lot where id = $1', [lot]);
  if (of && of.tank_id !== null) await followTank(fact, of.tank_id, reason);
};

/** What was sprayed follows when a hook-up is corrected or withdrawn. */
const followGunOf = async (fact: Fact, hookUp: string, reason: string): Promise<void> => {
  const [of] = await fact.tx.query<{ gun_id: string }[]>('select gun_id from fact.hook_up where id = $1', [hookUp]);
  if (of) await followDraws(fact, 'gun_id', of.gun_id, reason);
};

/** What was sprayed is split anew when a setting of the gun is withdrawn. */
const splitGunOf = async (fact: Fact, setting: string, reason: string): Promise<void> => {
  const [of] = await fact.tx.query<{ gun_id: string }[]>('select gun_id from fact.gun_setting where id = $1', [
    setting,
  ]);
  if (of) await splitAgain(fact, of.gun_id, reason);
};

const assertKind = (table: string, kind: string | undefined): void => {
  if (kind === undefined || CORRECTABLE[table] === kind) return;
  const can = CORRECTABLE[table] ?? null;
  const remedy = can === null ? 'withdraw it, and record it as it was' : `set the values of a ${can}`;
  throw new Unprocessable(
    'kind-of-another-fact',
    `This fact is a ${table.replaceAll('_', ' ')}: ${remedy}.`,
    '/set/kind',
  );
};
