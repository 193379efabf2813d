import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAmounts } from './judge-amounts.js';
import { judgeDefect } from './judge-defect.js';
import { judgeHardness } from './judge-hardness.js';
import { judgeMix } from './judge-mix.js';
import { judgeRepairGeometry } from './judge-repair-geometry.js';
import { judgeShopClimate } from './judge-shop-climate.js';
import { judgeSprayed } from './judge-sprayed.js';
import { judgeSurface } from './judge-surface.js';
import { judgeLayUp } from './lay-up-window.js';

/**
 * Judges by the rules of the trade what a fact says was made, or was made otherwise: what it wrote, what it corrected
 * and what it put in its place. Verdicts that are as they were stay.
 */
export const judgeMade = async (fact: Fact): Promise<void> => {
  const versions = (table: string): readonly unknown[] => [
    ...fact.wrote(table).map(({ id }) => id),
    ...fact
      .wrote('correction')
      .flatMap(({ values }) => (values['corrects_table'] === table ? [values['corrects']] : [])),
  ];
  const found = async (sql: string, ids: readonly unknown[]): Promise<readonly Found[]> =>
    ids.length === 0 ? [] : fact.tx.query<Found[]>(sql, [ids]);
  const layers = await found(LAYERS, versions('layer_record'));
  const used = versions('used');
  for (const id of sorted(layers.map((layer) => layer.id))) await judgeSurface(fact, id);
  const readHere = await found(READ_ON_LAYERS, versions('reading'));
  const usedHere = await found(USED_IN_LAYERS, used);
  for (const id of sorted([...layers, ...readHere, ...usedHere].map((layer) => layer.id))) await judgeAmounts(fact, id);
  const airOf = await found(LAYERS_IN_AREA, versions('climate_point'));
  for (const id of sorted([...layers, ...airOf].map((layer) => layer.id))) await judgeShopClimate(fact, id);
  const under = [...layers, ...(await found(UNDER, used))];
  const moved = fact.wrote('correction').some(({ values }) => values['corrects_table'] === 'layer_record');
  for (const part of sorted(under.map((layer) => layer.part)))
    await judgeLayUp(fact, part, moved ? undefined : new Set(under.map(({ id }) => id)));
  for (const { id } of await found(REPAIRS, versions('repair'))) await judgeRepairGeometry(fact, id);
  const read = [...(await found(READ, versions('reading'))), ...(await found(READ_WHERE_USED, used))];
  const kinds = new Map(read.map(({ id, kind }) => [id, kind]));
  for (const id of sorted([...kinds.keys()])) await judgeHardness(fact, kinds.get(id) as string, id);
  for (const { id, kind } of await found(SPRAYED, used)) await judgeSprayed(fact, kind, id);
  for (const { id } of await found(DEFECTS, versions('defect'))) await judgeDefect(fact, id);
  for (const { id } of await found(MIXED, versions('lot_input'))) await judgeMix(fact, id);
};

interface Found {
  readonly id: string;
  readonly kind: string;
  readonly part: string;
}

/** Each once, in one order for everybody. */
const sorted = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort();

/** Layers of these versions, and the parts they are or were of. */
const LAYERS = `select distinct r.root as id, r.part_id as part from fact.layer_record r where r.id = any($1) order by 1, 2`;

/** Layers made in the area of these points of a log, and so near to them that they are judged by them. */
const LAYERS_IN_AREA = `
  select distinct r.root as id, r.part_id as part from (
    select c.plant_id, c.area, min(c.happened_at) as first, max(c.happened_at) as last from fact.climate_point c
    where c.id = any($1) group by c.plant_id, c.area) log
  join fact.layer_record r on r.plant_id = log.plant_id and r.area = log.area
    and r.ended_at >= log.first and r.started_at <= log.last + interval '26 hours' and ${standing('r')} order by 1`;

/** Layers in which these were used, and whose window for the next is that of their material. */
const UNDER = `
  select distinct r.root as id, r.part_id as part from fact.used u
  join fact.layer_record r on r.root = u.into_id and ${standing('r')}
  join fact.schedule_layer y on y.id = r.schedule_layer_id and y.lay_up_window is null
  where u.id = any($1) order by 1`;

const READ_ON_LAYERS = `
  select distinct g.of_id as id from fact.reading g
  where g.id = any($1) and g.of_kind = 'layer' and g.what in ('wet film', 'thickness') order by 1`;

const USED_IN_LAYERS = `
  select distinct r.root as id from fact.used u join fact.layer_record r on r.root = u.into_id and ${standing('r')}
  where u.id = any($1) order by 1`;

const REPAIRS = 'select distinct r.root as id from fact.repair r where r.id = any($1) order by 1';

const READ = `
  select distinct g.of_id as id, g.of_kind as kind from fact.reading g
  where g.id = any($1) and g.what = 'Barcol hardness' order by 1`;

/** From what was used to its readings, whatever the database thinks of how few readings there are. */
const READ_WHERE_USED = `
  select distinct g.id, g.kind from (select u.into_id from fact.used u where u.id = any($1) offset 0) u
  cross join lateral (
    select g.of_id as id, g.of_kind as kind from fact.reading g
    where g.of_id = u.into_id and g.what = 'Barcol hardness' and ${standing('g')} offset 0) g
  order by 1`;

const SPRAYED = `
  select distinct u.into_id as id, u.into_kind as kind from fact.used u
  where u.id = any($1) and u.spray_id is not null and u.into_kind in ('layer', 'repair') order by 1`;

const DEFECTS = 'select distinct d.root as id from fact.defect d where d.id = any($1) order by 1';

const MIXED = `
  select distinct l.root as id from (select i.lot_id from fact.lot_input i where i.id = any($1) offset 0) i
  cross join lateral (select l.root from fact.lot l where l.root = i.lot_id and l.origin = 'mixed' offset 0) l
  order by 1`;
