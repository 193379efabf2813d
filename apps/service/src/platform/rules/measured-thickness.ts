import type { EntityManager } from 'typeorm';
import type { Laminate } from '@hull-record/contracts';
import { fibreFractionOf, judgeThickness, stackOf, TradeError } from '@hull-record/trade';
import { FIRST_PRINCIPLES, pliesOf } from '../layers/demand.js';
import type { Found } from '../verdicts/keep-verdict.js';
import type { LayerMade } from './layer-made.js';
import { newestReadings } from './readings-of-layer.js';

export const THICKNESS = 'laminate thickness';

interface Under {
  readonly code: string;
  readonly zone: string;
  readonly predecessors: readonly string[];
  readonly laminate: Laminate | null;
}

const LAYERS = `
  select y.code, y.zone, y.predecessors, y.laminate from fact.schedule_layer y where y.schedule_id = $1 order by y.position`;

/**
 * The thickness read on a layer against that of its plies and of all plies it stands on in its zone, gel coat not
 * included; with the fibre fraction that the measured thickness gives back.
 */
export const judgeMeasured = async (tx: EntityManager, layer: string, made: LayerMade): Promise<Found | undefined> => {
  const points = (await newestReadings(tx, layer, 'thickness')).map((metres) => metres * 1e3);
  if (made.laminate === null || points.length === 0) return undefined;
  const layers = await tx.query<Under[]>(LAYERS, [made.schedule_id]);
  const stack = stackOf(
    standingOn(made, layers).flatMap(({ laminate }) => (laminate === null ? [] : pliesOf(laminate))),
  );
  const { tolerance } = made.laminate;
  const judged = judgeThickness(points, stack.thicknessMm, tolerance);
  const measuredFraction = fractionOf(stack.glassKgPerM2, judged.meanMm);
  const found = {
    topic: THICKNESS,
    figures: {
      expectedMm: stack.thicknessMm,
      meanMm: judged.meanMm,
      points: points.length,
      thinPoints: judged.thinPoints.length,
      scheduledFibreMassFraction: stack.fibreMassFraction,
      measuredFibreMassFraction: measuredFraction,
    },
    rule: `Each point at least, and the mean at most, ${(tolerance * 100).toFixed(0)} % from the thickness of the plies in this zone up to this layer; at least 10 points (LR Rules for Materials, July 2022, Ch 14 Sec 5, 5.5.2).`,
    source: `Schedule ${made.schedule}, layer ${made.name}. ${FIRST_PRINCIPLES}`,
  };
  const warned = judged.warnings.map((warning) => ` ${warning}`).join('');
  if (judged.meanMm === null) return { ...found, verdict: 'cannot be judged', detail: 'No point is a thickness.' };
  const fibre = measuredFraction === null ? '' : ` Fibre fraction by the mean ${measuredFraction.toFixed(2)}.`;
  const thin = judged.thinPoints.length === 0 ? '' : ` ${judged.thinPoints.length} thin.`;
  const detail = `${judged.meanMm.toFixed(2)} mm over ${points.length} points, expected ${stack.thicknessMm.toFixed(2)} mm.${thin}${fibre}${warned}`;
  return judged.verdict === 'inside'
    ? { ...found, verdict: 'inside', detail }
    : { ...found, verdict: 'outside', detail, breaks: 'thickness-outside' };
};

/** A layer and those it stands on, as far as they lie in its zone or over the whole part. */
const standingOn = (made: LayerMade, layers: readonly Under[]): readonly Under[] => {
  const found = new Set([made.code]);
  for (const layer of [...layers].reverse())
    if (found.has(layer.code)) for (const before of layer.predecessors) found.add(before);
  const { zone } = made;
  return layers.filter((layer) => found.has(layer.code) && [zone, 'whole part'].includes(layer.zone));
};

/** Null when the laminate is thinner than its glass alone. */
const fractionOf = (glassKgPerM2: number, meanMm: number | null): number | null => {
  try {
    return meanMm === null ? null : fibreFractionOf(glassKgPerM2, meanMm);
  } catch (error) {
    if (error instanceof TradeError) return null;
    throw error;
  }
};
