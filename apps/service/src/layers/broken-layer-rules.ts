import type { EntityManager } from 'typeorm';
import type { Climate, Limits, RecordLayer } from '@hull-record/contracts';
import { judgeSpot } from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import type { BrokenRule } from '../platform/lots/break-of-lot-rules.js';
import { foreignMaterials } from '../platform/layers/foreign-materials.js';
import { layersOf } from '../platform/layers/layers-of-part.sql.js';
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
  readonly hold_point: string | null;
  readonly made: boolean;
  readonly signed: boolean;
}

const BEFORE = `
  select y.code, y.hold_point, r.id is not null as made,
    exists (select from fact.signature s where s.layer_record_id = r.id and s.happened_at <= $4 and ${standing('s')}) as signed
  from fact.part p cross join lateral ${layersOf('p')} y
  left join fact.layer_record r on r.part_id = $1 and r.schedule_layer_id = y.id and r.started_at <= $4 and ${standing('r')}
  where p.id = $1 and y.code = any($2) and y.code <> $3
  order by y.position`;

/** What a layer begun at a time broke of the order: a layer before it not made by then, or its hold point not signed. */
export const brokenOrder = async (
  tx: EntityManager,
  { partId, layer, startedAt }: Begun,
): Promise<readonly BrokenRule[]> => {
  const before = await tx.query<Before[]>(BEFORE, [partId, layer.predecessors, layer.code, startedAt]);
  return before.flatMap(({ code, hold_point, made, signed }) => {
    if (!made)
      return [{ rule: 'layer-out-of-order', detail: `${layer.name} was begun before layer ${code} was made.` }];
    if (hold_point === null || signed) return [];
    return [
      {
        rule: 'hold-point-passed',
        detail: `${layer.name} was begun before hold point ${hold_point} of layer ${code} was signed.`,
      },
    ];
  });
};

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
