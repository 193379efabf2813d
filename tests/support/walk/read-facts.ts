import type { WalkFacts } from './facts.js';

/** Asks the database, as whoever may read facts. */
export type Ask = <Row extends object>(sql: string) => Promise<readonly Row[]>;

const stands = (alias: string): string => `not exists (select 1 from fact.correction c where c.corrects = ${alias}.id)`;

/** A double as a plain decimal, digit by digit what its shortest text says. */
const plain = (kg: number): string => {
  const [digits = '', exponent = '0'] = String(kg).split('e');
  const [whole = '0', fraction = ''] = digits.split('.');
  const places = fraction.length - Number(exponent);
  const all = `${whole}${fraction}`;
  if (places <= 0) return `${all}${'0'.repeat(-places)}`;
  const padded = all.padStart(places + 1, '0');
  return `${padded.slice(0, -places)}.${padded.slice(-places)}`;
};

/** Reads the facts that stand, straight from the tables, for the walk: nothing derived, nothing of the service. */
export const readFacts = async (ask: Ask): Promise<WalkFacts> => {
  const lots = await ask<{ id: string; role: string; received: boolean }>(`
    select l.root as id, coalesce(m.role, l.role, '') as role, l.origin = 'received' as received from fact.lot l
    left join fact.material m on m.root = l.material_id and ${stands('m')} where ${stands('l')}`);
  const inputs = await ask<{ lot: string; input: string; kg: number }>(`
    select i.lot_id as lot, i.input_id as input, i.kg from fact.lot_input i where ${stands('i')}`);
  const uses = await ask<{ place: string; part: string; lot: string; kg: number }>(`
    select u.into_id as place, p.part_id as part, u.lot_id as lot, u.kg from fact.used u
    join (select r.root, r.part_id from fact.layer_record r where ${stands('r')}
      union all select j.root, j.part_id from fact.joint j where ${stands('j')}
      union all select f.root, f.part_id from fact.repair f where ${stands('f')}
      union all select t.root, t.part_id from fact.touch_up t where ${stands('t')}) p on p.root = u.into_id
    where ${stands('u')}`);
  const joins = await ask<{ part: string; hull: string }>(`
    select j.part_id as part, j.hull_id as hull from fact.joint j where ${stands('j')}`);
  return {
    lots,
    inputs: inputs.map(({ lot, input, kg }) => ({ lot, input, quantity: plain(kg) })),
    uses: uses.map(({ kg, ...use }) => ({ ...use, kg: plain(kg) })),
    joins,
  };
};
