import type { LayerDemand, ScheduleView } from '@hull-record/contracts';
import { stackOf, toSi } from '@hull-record/trade';
import { bodyOf, layerBody, type LayerDraft, type ScheduleDraft } from './schedule-draft.js';

type Layer = ScheduleView['layers'][number];

/** A draft as the service would give it once it is published; figures that are none yet are NaN. */
export const viewOf = (draft: ScheduleDraft, before: ScheduleView, version: number): ScheduleView => ({
  ...before,
  version,
  process: draft.process,
  // What is sent has every part that the service would put in.
  layers: bodyOf(draft, before.partKind, version).layers.map((layer) => ({ ...layer, demand: null }) as Layer),
});

/** What a layer that is being entered is to become and to take; null while its plies are not whole. */
export const demandOfDraft = (layer: LayerDraft): LayerDemand | null => {
  const { laminate, areaM2 } = layerBody(layer, []);
  const plies = (laminate?.plies ?? []).map(({ arealMass: { value, unit }, fibreMassFraction }) => ({
    arealMassKgPerM2: toSi(value, unit),
    fibreMassFraction,
  }));
  const isWhole = plies.every(
    ({ arealMassKgPerM2: mass, fibreMassFraction: part }) => mass > 0 && part > 0 && part < 1,
  );
  if (plies.length === 0 || !isWhole) return null;
  const stack = stackOf(plies);
  const over = (kgPerM2: number): number | null => (areaM2 !== undefined && areaM2 > 0 ? areaM2 * kgPerM2 : null);
  return {
    ...{ thicknessMm: stack.thicknessMm, massKgPerM2: stack.massKgPerM2, fibreMassFraction: stack.fibreMassFraction },
    ...{ glassKg: over(stack.glassKgPerM2), resinKg: over(stack.resinKgPerM2), source: '' },
  };
};
