import type { ScheduleView } from '@hull-record/contracts';

type Layer = ScheduleView['layers'][number];

/** What of a layer may differ between versions, in the order in which it is told. */
export const LAYER_FIELDS = [
  ...['name', 'zone', 'plies', 'laminate', 'areaM2', 'materials', 'lossAllowance', 'readings', 'climate'],
  ...['layUpWindow', 'predecessors', 'holdPoint'],
] as const satisfies readonly (keyof Layer)[];
export type LayerField = (typeof LAYER_FIELDS)[number];

/** What differs between a layer and the one of the same code in the version before. */
export type LayerChange =
  | { readonly kind: 'added' | 'removed'; readonly layer: Layer }
  | { readonly kind: 'changed'; readonly layer: Layer; readonly before: Layer; readonly fields: readonly LayerField[] };

/** What differs between a version of a schedule and the version before. */
export interface ScheduleChanges {
  readonly process: readonly [before: string, now: string] | null;
  readonly layers: readonly LayerChange[];
  /** The codes that both have, in either order, where the order differs. */
  readonly order: readonly [before: readonly string[], now: readonly string[]] | null;
}

/** Compares two versions, layer by layer; layers are the same that have the same code. */
export const changesBetween = (before: ScheduleView, now: ScheduleView): ScheduleChanges => {
  const was = new Map(before.layers.map((layer) => [layer.code, layer]));
  const is = new Map(now.layers.map((layer) => [layer.code, layer]));
  const both = (layers: readonly Layer[]): readonly string[] =>
    layers.map(({ code }) => code).filter((code) => was.has(code) && is.has(code));
  const order = [both(before.layers), both(now.layers)] as const;
  return {
    process: before.process === now.process ? null : [before.process, now.process],
    layers: [
      ...now.layers.flatMap((layer) => changeOf(was.get(layer.code), layer)),
      ...before.layers.flatMap((layer): LayerChange[] => (is.has(layer.code) ? [] : [{ kind: 'removed', layer }])),
    ],
    order: String(order[0]) === String(order[1]) ? null : order,
  };
};

const changeOf = (before: Layer | undefined, layer: Layer): LayerChange[] => {
  if (before === undefined) return [{ kind: 'added', layer }];
  const fields = LAYER_FIELDS.filter((field) => canonical(before[field]) !== canonical(layer[field]));
  return fields.length === 0 ? [] : [{ kind: 'changed', layer, before, fields }];
};

/** The same for values that say the same: keys in order, nothing for what is left out. */
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_, each: unknown) =>
    typeof each === 'object' && each !== null && !Array.isArray(each)
      ? Object.fromEntries(
          Object.entries(each)
            .filter(([, inside]) => inside !== undefined && inside !== null)
            .sort(([a], [b]) => (a < b ? -1 : 1)),
        )
      : each,
  ) ?? '';
