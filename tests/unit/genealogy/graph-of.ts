import type { LotGraph } from '@hull-record/genealogy';

interface Told {
  readonly lots: readonly { readonly id: string; readonly role: string }[];
  readonly inputs: readonly { readonly lot: string; readonly input: string; readonly quantity: string }[];
}

/** The graph that the library walks, of facts with decimal masses. */
export const graphOf = ({ lots, inputs }: Told): LotGraph => {
  const nodes = new Map(lots.map(({ id, role }) => [id, { id, role, inputs: [] as { lot: string; kg: number }[] }]));
  for (const { lot, input, quantity } of inputs) nodes.get(lot)?.inputs.push({ lot: input, kg: Number(quantity) });
  return nodes;
};

/** A graph told briefly: received lots by role, made lots as "lot < kg input + kg input". */
export const graph = (sources: Record<string, string>, ...made: string[]): LotGraph => {
  const lines = made.map((line) => line.split(' < '));
  return graphOf({
    lots: [
      ...Object.entries(sources).map(([id, role]) => ({ id, role })),
      ...lines.map(([id = '']) => ({ id, role: 'mixture' })),
    ],
    inputs: lines.flatMap(([lot = '', inputs = '']) =>
      inputs.split(' + ').map((each) => {
        const [quantity = '', input = ''] = each.split(' ');
        return { lot, input, quantity };
      }),
    ),
  });
};

/** The recorded inputs of a graph. */
export const inputsOf = (lots: LotGraph) =>
  [...lots.values()].flatMap(({ id, inputs }) => inputs.map(({ lot, kg }) => ({ lot: id, input: lot, kg })));
