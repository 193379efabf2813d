import type { WalkFacts } from './walk/index.js';

/** Facts written down briefly: sources as id -> role, inputs as "lot < kg input + kg input", uses as "part/place kg lot". */
export const given = (told: {
  sources: Record<string, string>;
  made?: string[];
  uses?: string[];
  hulls?: Record<string, string>;
}): WalkFacts => {
  const made = (told.made ?? []).map((line) => line.split(' < '));
  return {
    lots: [
      ...Object.entries(told.sources).map(([id, role]) => ({ id, role, received: true })),
      ...made.map(([id = '']) => ({ id, role: 'mixture', received: false })),
    ],
    inputs: made.flatMap(([lot = '', inputs = '']) =>
      inputs.split(' + ').map((each) => {
        const [quantity = '', input = ''] = each.split(' ');
        return { lot, input, quantity };
      }),
    ),
    uses: (told.uses ?? []).map((line) => {
      const [where = '', kg = '', lot = ''] = line.split(' ');
      const [part = '', place = ''] = where.split('/');
      return { part, place, lot, kg };
    }),
    joins: Object.entries(told.hulls ?? {}).map(([part, hull]) => ({ part, hull })),
  };
};
