import type { WalkFacts } from '../walk/index.js';
import type { PlantModel } from './plant-model.js';
import type { ModelDraw } from './model-facts.js';

/** The one name the model has for material that nobody can name: each draw of it is a lot of its own. */
export const nobodyKnows = (what: string): string => `nobody knows: ${what}`;

export const isUnknown = (lot: string): boolean => lot.startsWith('nobody knows: ');

/**
 * The genealogy that follows from what the model knows, for the exact walk. Its lots, parts and hulls are named by their
 * codes; nothing of it was read from the service.
 */
export const genealogyOf = (model: PlantModel): WalkFacts => {
  const lotOf = (draw: ModelDraw): string => model.times.lotOf(draw) ?? nobodyKnows(draw.root);
  const made = new Set(model.lots.filter(({ kind }) => kind !== 'received').map(({ code }) => code));
  const partOf = new Map(model.places.map(({ id, part }) => [id, part]));
  const heels = model.fills.flatMap((fill) => {
    if (fill.heelKg === null || fill.heelKg === undefined) return [];
    const input = model.times.fillBefore(fill)?.code ?? nobodyKnows(`the heel in ${fill.code}`);
    return [{ lot: fill.code, input, quantity: String(fill.heelKg) }];
  });
  const inputs = model.draws
    .filter(({ into }) => made.has(into))
    .map((draw) => ({ lot: draw.into, input: lotOf(draw), quantity: String(draw.kg) }));
  const uses = model.draws
    .filter(({ into }) => partOf.has(into))
    .map((draw) => ({ place: draw.into, part: partOf.get(draw.into) ?? '', lot: lotOf(draw), kg: String(draw.kg) }));
  const unknown = new Set([...heels, ...inputs].map(({ input }) => input).concat(uses.map(({ lot }) => lot)));
  return {
    lots: [
      ...model.lots.map(({ code, role, kind }) => ({ id: code, role: role ?? '', received: kind === 'received' })),
      // What nobody can name was drawn from the tank or the resin feed of the gun.
      ...[...unknown].filter(isUnknown).map((id) => ({ id, role: 'resin', received: false })),
    ],
    inputs: [...heels, ...inputs],
    uses,
    joins: [...model.hullOf].map(([part, hull]) => ({ part, hull })),
  };
};
