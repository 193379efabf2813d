import type { EntityManager } from 'typeorm';
import type { Climate, Limits, RecordLayer } from '@hull-record/contracts';
import { judgeSpot } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import type { BrokenRule } from '../platform/lots/break-of-lot-rules.js';
import { foreignMaterials } from '../platform/layers/foreign-materials.js';
import { layersOf } from '../platform/layers/layers-of-part.sql.js';
import { wasRefused, wasUnproved } from '../platform/facts/unproved.js';
import type { FoundLayer } from '../platform/layers/find-schedule-layer.js';

interface Made {
  readonly partId: string;
  readonly layer: FoundLayer;
  readonly request: Pick<RecordLayer, 'startedAt' | 'climate'>;
  /** Lots that were used in it. */
  readonly lots: readonly string[];
}

/** What the making of a layer broke: order, an unsigned hold point before it, climate limits, materials. */
export const brokenLayerRules = async (tx: EntityManager, made: Made): Promise<readonly BrokenRule[]> => [
  ...(await brokenOrder(tx, { ...made, startedAt: made.request.startedAt })),
  ...brokenClimate(made),
  ...(await foreignMaterials(tx, made.layer, made.lots)),
];

type Begun = Pick<Made, 'partId' | 'layer'> & { readonly startedAt: string };

interface Before {
  readonly code: string;
  readonly predecessors: string[];
  readonly hold_point: string | null;
  readonly made: boolean;
  readonly signed: 'yes' | 'provisionally' | 'no';
}

const BEFORE = `
  select y.code, y.predecessors, y.hold_point, r.id is not null as made, coalesce((
    select case when ${wasUnproved('s.entry_id', '$3')} then 'provisionally' else 'yes' end
    from fact.signature s where s.layer_record_id = r.id and s.happened_at <= $3 and ${standing('s')}
      and not ${wasRefused('s.entry_id', '$3')}
    order by ${wasUnproved('s.entry_id', '$3')} limit 1), 'no') as signed
  from fact.part p cross join lateral ${layersOf('p')} y
  left join fact.layer_record r on r.part_id = $1 and r.schedule_layer_id = y.id and r.started_at <= $3 and ${standing('r')}
  where p.id = $1 and y.code <> $2
  order by y.position`;

/**
 * What a layer begun at a time broke of the order: a layer before it not made by then, or its hold point not signed.
 *
 * A provisional signature lets the next layer begin, and none after that one.
 */
export const brokenOrder = async (
  tx: EntityManager,
  { partId, layer, startedAt }: Begun,
): Promise<readonly BrokenRule[]> => {
  const layers = await tx.query<Before[]>(BEFORE, [partId, layer.code, startedAt]);
  const direct = layers.filter(({ code }) => layer.predecessors.includes(code));
  return [
    ...direct.flatMap((before) => brokenBefore(layer, before)),
    ...behind(layers, direct).flatMap((before) => brokenFurtherBack(layer, before)),
  ];
};

const brokenBefore = (layer: FoundLayer, { code, hold_point, made, signed }: Before): BrokenRule[] => {
  if (!made) return [{ rule: 'layer-out-of-order', detail: `${layer.name} was begun before layer ${code} was made.` }];
  if (hold_point === null || signed !== 'no') return [];
  return [
    {
      rule: 'hold-point-passed',
      detail: `${layer.name} was begun before hold point ${hold_point} of layer ${code} was signed.`,
    },
  ];
};

/** The layers behind some, as their predecessors name them, each once. */
const behind = (layers: readonly Before[], some: readonly Before[]): readonly Before[] => {
  const found = new Set<Before>();
  const look = (codes: readonly string[]): void => {
    for (const before of layers.filter(({ code }) => codes.includes(code))) {
      if (found.has(before)) continue;
      found.add(before);
      look(before.predecessors);
    }
  };
  for (const { predecessors } of some) look(predecessors);
  return [...found].filter((before) => !some.includes(before));
};

/** What lies further back was judged when the layer on it was begun; a provisional signature carries no further. */
const brokenFurtherBack = (layer: FoundLayer, { code, hold_point, signed }: Before): BrokenRule[] =>
  hold_point === null || signed !== 'provisionally'
    ? []
    : [
        {
          rule: 'hold-point-passed',
          detail: `${layer.name} was begun while hold point ${hold_point} of layer ${code} was signed provisionally only, by somebody who had not confirmed it.`,
        },
      ];

const brokenClimate = ({ layer, request }: Made): readonly BrokenRule[] => {
  const entered: Climate = request.climate ?? {};
  const check = (
    name: string,
    value: Climate['airTemperature'] | Climate['relativeHumidity'],
    limits: Limits | undefined,
  ): BrokenRule[] => {
    if (!value || !limits) return [];
    if (judgeSpot({ low: value.value, unit: value.unit }, limits).verdict === 'inside') return [];
    return [
      {
        rule: 'climate-outside',
        detail: `${name} was ${value.value} ${value.unit} while ${layer.name} was made; limits ${limits.min ?? '–'} to ${limits.max ?? '–'} ${limits.unit}.`,
      },
    ];
  };
  return [
    ...check('Air temperature', entered.airTemperature, layer.climate?.airTemperature),
    ...check('Relative humidity', entered.relativeHumidity, layer.climate?.relativeHumidity),
  ];
};
