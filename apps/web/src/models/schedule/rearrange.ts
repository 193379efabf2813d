import { blankLayer, type LayerDraft } from './schedule-draft.js';

type Layers = readonly LayerDraft[];

/** A layer goes one place out or in. */
export const moved = (layers: Layers, from: number, by: 1 | -1): Layers => {
  const [layer, other] = [layers[from], layers[from + by]];
  if (layer === undefined || other === undefined) return layers;
  return layers.with(from, other).with(from + by, layer);
};

/** A new layer after another: it waits for that one, and what waited for that one alone waits for it. */
export const added = (layers: Layers, after: number): Layers => {
  const before = layers[after];
  const key = freshKey(layers);
  const layer = { ...blankLayer(key), predecessors: before === undefined ? [] : [before.key] };
  const rest = layers
    .slice(after + 1)
    .map((each) =>
      each.predecessors.length === 1 && each.predecessors[0] === before?.key ? { ...each, predecessors: [key] } : each,
    );
  return [...layers.slice(0, after + 1), layer, ...rest];
};

/** A layer is taken out: what waited for it waits for what it waited for. */
export const dropped = (layers: Layers, at: number): Layers => {
  const gone = layers[at];
  if (gone === undefined) return layers;
  return layers.toSpliced(at, 1).map((each) =>
    each.predecessors.includes(gone.key)
      ? {
          ...each,
          predecessors: [
            ...new Set(each.predecessors.flatMap((key) => (key === gone.key ? gone.predecessors : [key]))),
          ],
        }
      : each,
  );
};

const freshKey = (layers: Layers): string => {
  for (let n = layers.length; ; n += 1) {
    const key = `new ${n}`;
    if (!layers.some((layer) => layer.key === key)) return key;
  }
};
