import { SplitImpossible, splitByCatalyst } from '@hull-record/trade';
import { CorrectionEntity } from '../facts/correction.entity.js';
import type { Fact } from '../facts/fact.js';
import { insertVersion } from '../facts/new-version.js';
import { standing } from '../facts/standing.js';
import { childId } from '../ids.js';
import { standingPlaces } from '../places/places.js';
import { UsedEntity } from '../used/used.entity.js';
import { brokenLotRules } from './break-of-lot-rules.js';
import { drawFromGun } from './draw.js';
import { forgetUnidentified } from './forget-unidentified.js';
import { kilogramsOf } from './known-amount.js';
import { LotInputEntity } from './lot-input.entity.js';
import type { DrawnTable } from './redraw.js';
import { settingAt } from './spray.js';

/** Parts of the sprays of gun `$1`, of one table, with what the gun was set to then, as far as nobody set them right by hand. */
const sprayed = (table: DrawnTable): string => `
  select * from (
    select d.id, d.spray_id as spray, d.sprayed::text, d.feed, d.quantity::text, d.unit, d.basis, d.happened_at as at, d.${INTO[table]} as into,
      ${table === 'used' ? 'd.into_kind' : 'null::text'} as "intoKind", ${settingAt('d.gun_id', 'd.happened_at')} as percent,
      sum(d.quantity) over spray = d.sprayed and min(d.happened_at) over spray = max(d.happened_at) over spray as whole
    from fact.${table} d where d.gun_id = $1 and d.spray_id is not null and ${standing('d')}
    window spray as (partition by d.spray_id)) part
  where whole order by at, spray, feed desc`;

const INTO = { used: 'into_id', lot_input: 'lot_id' } as const;

interface Part {
  readonly id: string;
  readonly spray: string;
  /** Of resin and catalyst together. */
  readonly sprayed: string;
  readonly feed: 'resin' | 'catalyst';
  readonly quantity: string;
  readonly unit: Parameters<typeof kilogramsOf>[0]['unit'];
  readonly basis: Parameters<typeof kilogramsOf>[0]['basis'];
  readonly at: Date;
  readonly into: string;
  readonly intoKind: UsedEntity['intoKind'] | null;
  readonly percent: number | null;
}

/**
 * Splits what a gun sprayed into resin and catalyst by what it was set to then, after a setting was recorded late or
 * withdrawn, or a spray was moved in time. What nobody set right by hand, and is not split so, is corrected.
 */
export const splitAgain = async (fact: Fact, gunId: string, reason: string): Promise<void> => {
  for (const table of ['used', 'lot_input'] as const) {
    const parts = await fact.tx.query<Part[]>(sprayed(table), [gunId]);
    const sprays = new Map<string, Part[]>();
    for (const part of parts) sprays.set(part.spray, [...(sprays.get(part.spray) ?? []), part]);
    for (const spray of sprays.values()) await splitOne({ fact, table, gunId, reason }, spray);
  }
};

interface Splitting {
  readonly fact: Fact;
  readonly table: DrawnTable;
  readonly gunId: string;
  readonly reason: string;
}

const splitOne = async (of: Splitting, parts: readonly Part[]): Promise<void> => {
  const [first] = parts as [Part, ...Part[]];
  const due = dueOf(first);
  if (!due) return;
  for (const feed of ['resin', 'catalyst'] as const) {
    const part = parts.find((each) => each.feed === feed);
    const quantity = due[feed];
    if (part && quantity === null) await withdraw(of, part);
    else if (part && quantity !== null && Number(part.quantity) !== Number(quantity))
      await setQuantity(of, part, quantity);
    else if (!part && quantity !== null) await add(of, first, feed, quantity);
  }
};

/** null: as good as none; undefined: so little that it cannot be split, and stays as it is. */
const dueOf = ({ sprayed, percent }: Part): Record<'resin' | 'catalyst', string | null> | undefined => {
  if (percent === null || percent === 0) return { resin: sprayed, catalyst: null };
  try {
    return splitByCatalyst(sprayed, percent);
  } catch (error) {
    if (error instanceof SplitImpossible) return undefined;
    throw error;
  }
};

const weighed = ({ unit, basis }: Part, quantity: string) =>
  kilogramsOf({ quantity, unit, basis }, { code: 'the gun' }, '');

const setQuantity = async ({ fact, table, reason }: Splitting, part: Part, quantity: string): Promise<void> => {
  const replacement = childId(fact.id, `split again/${part.id}`);
  await fact.insert(CorrectionEntity, { corrects: part.id, correctsTable: table, replacement, reason });
  const { kg } = weighed(part, quantity);
  if (table === 'used') await insertVersion(fact, UsedEntity, part.id, replacement, { quantity, kg });
  else await insertVersion(fact, LotInputEntity, part.id, replacement, { quantity, kg });
};

const withdraw = async ({ fact, table, reason }: Splitting, { id }: Part): Promise<void> => {
  await fact.insert(CorrectionEntity, { corrects: id, correctsTable: table, replacement: null, reason });
  await forgetUnidentified(fact, table, id, reason);
};

/** Catalyst that nobody knew of: used, or put into a lot, as if it had been entered on time. */
const add = async (
  { fact, table, gunId }: Splitting,
  beside: Part,
  feed: 'resin' | 'catalyst',
  quantity: string,
): Promise<void> => {
  const { at, spray: sprayId, sprayed, into, unit, basis } = beside;
  const taken = await drawFromGun(fact, gunId, feed, {
    amount: { quantity, unit, basis },
    at,
    pointer: `/${beside.id}`,
  });
  const drawn = { ...taken.drawn, ...taken.amount, sprayId, sprayed, happenedAt: at };
  const { lot } = taken;
  if (table === 'lot_input') {
    await fact.insert(LotInputEntity, { lotId: into, inputId: lot.id, ...drawn });
    for (const broken of brokenLotRules(lot))
      await fact.open({ ...broken, aboutKind: 'lot', aboutId: into, partId: null });
    return;
  }
  const intoKind = beside.intoKind as UsedEntity['intoKind'];
  await fact.insert(UsedEntity, { lotId: lot.id, intoKind, intoId: into, ...drawn });
  const [place] = await fact.tx.query<{ part_id: string }[]>(standingPlaces('p.root = $1'), [into]);
  for (const broken of brokenLotRules(lot))
    await fact.open({ ...broken, aboutKind: intoKind, aboutId: into, partId: place?.part_id ?? null });
};
