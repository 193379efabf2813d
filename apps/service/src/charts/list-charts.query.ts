import { Injectable } from '@nestjs/common';
import { CLIMATE_KINDS, type ChartList } from '@hull-record/contracts';
import { DataSource } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { UNITS_AT_FIRST } from './unit-of.js';

/** The layers of the newest schedule of each part, with what they ask to be read and whether they take what is catalysed. */
const LAYERS = `
  with newest as (
    select distinct on (s.model_id, s.part_kind) s.id, s.model_id, s.part_kind from fact.schedule s
    where ${standing('s')} order by s.model_id, s.part_kind, s.version desc)
  select m.code as model, n.part_kind as part, y.code as layer, y.name as "layerName", y.readings,
    exists (select from jsonb_array_elements(y.materials) t join fact.material a on a.code = t ->> 'material'
      and a.role in ('gel coat', 'resin') and ${standing('a')}) as catalysed
  from newest n join fact.model m on m.root = n.model_id and ${standing('m')}
  join fact.schedule_layer y on y.schedule_id = n.id order by m.code, n.part_kind, y.position`;

const FROZEN = `
  select m.code as model, c.part_kind as part, c.layer, c.what, max(c.happened_at) as at
  from fact.chart_limits c join fact.model m on m.id = c.model_id
  where c.mold_id is null and c.gun_id is null and c.area is null and ${standing('c')} group by 1, 2, 3, 4`;

type Chart = ChartList[number];
type Named = Omit<Chart, 'frozenAt'>;

interface LayerRow extends Pick<Chart, 'model' | 'part'> {
  readonly layer: string;
  readonly layerName: string;
  readonly readings: readonly { readonly what: Chart['what']; readonly limits: { readonly unit: string } }[];
  readonly catalysed: boolean;
}

interface FrozenRow extends Pick<Chart, 'model' | 'part' | 'layer' | 'what'> {
  readonly at: Date;
}

/** What can be charted. It follows from the schedules: to count what was read would read all that there is. */
@Injectable()
export class ListCharts {
  constructor(private readonly db: DataSource) {}

  async run(): Promise<ChartList> {
    const layers = await this.db.query<LayerRow[]>(LAYERS);
    const frozen = await this.db.query<FrozenRow[]>(FROZEN);
    const at = new Map(frozen.map((row) => [keyOf(row), row.at.toISOString()]));
    return [...layers.flatMap(ofLayer), ...climateOf(layers)].map((chart) => ({
      ...chart,
      frozenAt: at.get(keyOf(chart)) ?? null,
    }));
  }
}

const keyOf = ({ what, model, part, layer }: Pick<Chart, 'what' | 'model' | 'part' | 'layer'>): string =>
  JSON.stringify([what, model, part, layer]);

const ofLayer = ({ readings, catalysed, ...layer }: LayerRow): Named[] => [
  ...readings.map(({ what, limits }) => ({ ...layer, what, unit: limits.unit })),
  ...(catalysed && !readings.some(({ what }) => what === 'catalyst')
    ? [{ ...layer, what: 'catalyst' as const, unit: '%' }]
    : []),
];

/** The climate of a part is that of all its layers. */
const climateOf = (layers: readonly LayerRow[]): Named[] => {
  const parts = new Map(layers.map(({ model, part }) => [`${model} ${part}`, { model, part }]));
  return [...parts.values()].flatMap((part) =>
    CLIMATE_KINDS.map((what) => ({ ...part, what, layer: null, layerName: null, unit: UNITS_AT_FIRST[what] ?? '1' })),
  );
};
