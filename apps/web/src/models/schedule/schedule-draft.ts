import type { ScheduleView } from '@hull-record/contracts';
import type { PostBody } from '../../api/contract.js';
import type { OfEnvelope } from '../../outbox/entry.js';
import { figureTyped, fractionTyped, typedFigure, typedPercent } from '../typed-figures.js';

export type ScheduleBody = Omit<PostBody<'/api/models/:model/schedules'>, keyof OfEnvelope>;
export type LayerBody = ScheduleBody['layers'][number];
type Layer = ScheduleView['layers'][number];
type Unit = LayerBody['readings'] extends readonly (infer R)[] | undefined
  ? R extends { limits: { unit: infer U } }
    ? U
    : never
  : never;

/** Limits as typed. */
export interface LimitsDraft {
  readonly min: string;
  readonly max: string;
  readonly unit: string;
}

/** A layer as it is entered: the shape of what is sent, each figure as typed, fractions as percentages. */
export interface LayerDraft {
  /** Stays the same when the layer is renamed or moved: what waits for it names this. */
  readonly key: string;
  readonly code: string;
  readonly name: string;
  /** Empty: the whole part. */
  readonly zone: string;
  /** A ply a line. */
  readonly plies: string;
  readonly areaM2: string;
  readonly lossAllowance: string;
  readonly laminate: {
    readonly plies: readonly {
      readonly arealMass: { readonly value: string; readonly unit: string };
      readonly fibreMassFraction: string;
    }[];
    readonly tolerance: string;
  };
  readonly materials: readonly {
    readonly material: string;
    readonly target: { readonly quantity: string; readonly unit: string };
  }[];
  readonly readings: readonly {
    readonly what: string;
    readonly spots: string;
    readonly limits: LimitsDraft;
    readonly where: string;
    readonly source: string;
  }[];
  readonly climate: { readonly airTemperature: LimitsDraft; readonly relativeHumidity: LimitsDraft };
  readonly layUpWindow: { readonly earliestMinutes: string; readonly latestMinutes: string };
  /** Keys of the layers that are made before. */
  readonly predecessors: readonly string[];
  readonly holdPoint: string;
}

/** A version of a schedule as it is entered. */
export interface ScheduleDraft {
  /** The version that it was begun from; 0: from nothing. */
  readonly basedOn: number;
  readonly process: string;
  readonly layers: readonly LayerDraft[];
}

export const BLANK_MATERIAL = { material: '', target: { quantity: '', unit: 'kg' } };
export const BLANK_READING = { what: '', spots: '', limits: { min: '', max: '', unit: '' }, where: '', source: '' };
export const BLANK_PLY = { arealMass: { value: '', unit: 'g/m2' }, fibreMassFraction: '' };

/** A layer of which nothing is said yet. */
export const blankLayer = (key: string): LayerDraft => ({
  ...{ key, code: '', name: '', zone: '', plies: '', areaM2: '', lossAllowance: '', holdPoint: '' },
  laminate: { plies: [], tolerance: '10' },
  materials: [BLANK_MATERIAL],
  readings: [],
  climate: { airTemperature: limitsDraft(undefined, 'C'), relativeHumidity: limitsDraft(undefined, '%') },
  layUpWindow: { earliestMinutes: '', latestMinutes: '' },
  predecessors: [],
});

const limitsDraft = (
  limits: { readonly min?: number | undefined; readonly max?: number | undefined; readonly unit: string } | undefined,
  unit: string,
): LimitsDraft => ({ min: typedFigure(limits?.min), max: typedFigure(limits?.max), unit: limits?.unit ?? unit });

/** The draft of the version that follows a published one; without one, of the first. */
export const draftOf = (before: ScheduleView | undefined): ScheduleDraft => {
  if (before === undefined) return { basedOn: 0, process: 'hand lay-up', layers: [blankLayer('new 1')] };
  const { version, process, layers } = before;
  return { basedOn: version, process, layers: layers.map(layerDraft) };
};

const layerDraft = (layer: Layer): LayerDraft => {
  const { code, name, zone, plies, laminate, materials, readings, climate, layUpWindow: window, predecessors } = layer;
  return {
    ...{ key: code, code, name, zone: zone === 'whole part' ? '' : zone, plies: plies.join('\n'), predecessors },
    ...{ areaM2: typedFigure(layer.areaM2), lossAllowance: typedPercent(layer.lossAllowance) },
    holdPoint: layer.holdPoint ?? '',
    laminate: {
      plies: (laminate?.plies ?? []).map(({ arealMass, fibreMassFraction }) => ({
        arealMass: { value: typedFigure(arealMass.value), unit: arealMass.unit },
        fibreMassFraction: typedPercent(fibreMassFraction),
      })),
      tolerance: typedPercent(laminate?.tolerance ?? 0.1),
    },
    materials: materials.map(({ material, target }) => ({
      material,
      target: { quantity: typedFigure(target?.quantity), unit: target?.unit ?? 'kg' },
    })),
    readings: readings.map(({ what, spots, limits, where = '', source = '' }) => ({
      ...{ what, spots: typedFigure(spots), limits: limitsDraft(limits, ''), where, source },
    })),
    climate: {
      airTemperature: limitsDraft(climate?.airTemperature, 'C'),
      relativeHumidity: limitsDraft(climate?.relativeHumidity, '%'),
    },
    layUpWindow: {
      earliestMinutes: typedFigure(window?.earliestMinutes),
      latestMinutes: typedFigure(window?.latestMinutes),
    },
  };
};

/** Layers that are shown: one without a code yet is called so. */
export const named = (layers: readonly LayerDraft[], unnamed: string): readonly LayerDraft[] =>
  layers.map((layer) => (layer.code.trim() === '' ? { ...layer, code: unnamed } : layer));

/** What is sent of a draft; `check-schedule` says first what of it is no figure. */
export const bodyOf = ({ process, layers }: ScheduleDraft, partKind: string, version: number): ScheduleBody => ({
  partKind: partKind as ScheduleBody['partKind'],
  version,
  process: process as 'hand lay-up',
  layers: layers.map((layer) => layerBody(layer, layers)),
});

const given = <K extends string>(name: K, typed: string): { readonly [N in K]?: string } =>
  (typed.trim() === '' ? {} : { [name]: typed.trim() }) as { [N in K]?: string };

const figure = <K extends string>(name: K, value: number | undefined): { readonly [N in K]?: number } =>
  (value === undefined ? {} : { [name]: value }) as { [N in K]?: number };

const limitsBody = ({ min, max, unit }: LimitsDraft) => ({
  ...figure('min', figureTyped(min)),
  ...figure('max', figureTyped(max)),
  unit: unit as Unit,
});

const isLimited = ({ min, max }: LimitsDraft): boolean => min.trim() !== '' || max.trim() !== '';

/** A layer as it is sent. */
export const layerBody = (layer: LayerDraft, all: readonly LayerDraft[]): LayerBody => {
  const { airTemperature: air, relativeHumidity: humidity } = layer.climate;
  const { earliestMinutes, latestMinutes } = layer.layUpWindow;
  const window = earliestMinutes.trim() !== '' || latestMinutes.trim() !== '';
  return {
    ...{ code: layer.code.trim(), name: layer.name.trim(), zone: layer.zone.trim() || 'whole part' },
    plies: layer.plies.split('\n').flatMap((ply) => (ply.trim() === '' ? [] : [ply.trim()])),
    ...figure('areaM2', figureTyped(layer.areaM2)),
    ...figure('lossAllowance', fractionTyped(layer.lossAllowance)),
    ...(layer.laminate.plies.length === 0 ? {} : { laminate: laminateBody(layer.laminate) }),
    materials: layer.materials.map(({ material, target }) => ({
      material,
      ...(target.quantity.trim() === ''
        ? {}
        : { target: { quantity: target.quantity.trim().replace(',', '.'), unit: target.unit as Unit } }),
    })),
    readings: layer.readings.map(({ what, spots, limits, where, source }) => ({
      ...{ what: what as 'wet film', spots: figureTyped(spots) ?? Number.NaN, limits: limitsBody(limits) },
      ...given('where', where),
      ...given('source', source),
    })),
    ...(isLimited(air) || isLimited(humidity)
      ? {
          climate: {
            ...(isLimited(air) ? { airTemperature: limitsBody(air) } : {}),
            ...(isLimited(humidity) ? { relativeHumidity: limitsBody(humidity) } : {}),
          },
        }
      : {}),
    ...(window
      ? {
          layUpWindow: {
            earliestMinutes: figureTyped(earliestMinutes) ?? 0,
            latestMinutes: figureTyped(latestMinutes) ?? Number.NaN,
          },
        }
      : {}),
    predecessors: layer.predecessors.flatMap((key) => all.find((other) => other.key === key)?.code.trim() ?? []),
    ...given('holdPoint', layer.holdPoint),
  };
};

const laminateBody = ({ plies, tolerance }: LayerDraft['laminate']) => ({
  plies: plies.map(({ arealMass, fibreMassFraction }) => ({
    arealMass: { value: figureTyped(arealMass.value) ?? Number.NaN, unit: arealMass.unit as 'g/m2' },
    fibreMassFraction: fractionTyped(fibreMassFraction) ?? Number.NaN,
  })),
  ...figure('tolerance', fractionTyped(tolerance)),
});
