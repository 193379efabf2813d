import fc from 'fast-check';
import { kilograms, late, named, nth, pick, source, sourceOf, tellDraw, time, type Act } from './act.js';

const input = fc.record({ of: source, amount: kilograms, n: nth });

/** A bucket mixed, or a kit cut, of one to three things. */
export const make = fc
  .record({ late, cut: fc.boolean(), inputs: fc.array(input, { minLength: 1, maxLength: 3 }) })
  .map((how): Act => ({
    name: 'make',
    run: async (plant, model) => {
      const at = plant.at(how.late);
      const draws = how.inputs.flatMap(({ of, n, amount }, i) => {
        const from = sourceOf(model, { of, n, at });
        // Times three and a rest, so that no two amounts are the same.
        return from === undefined ? [] : [{ from, kg: amount * 3 + i }];
      });
      if (draws.length === 0) return;
      const code = plant.code(how.cut ? 'K' : 'B');
      const inputs = draws.map((draw) => plant.taken(draw.from, draw.kg));
      const id = await plant.record(how.cut ? '/api/kits' : '/api/mixes', at, { code, inputs });
      model.lots.push({ code, kind: how.cut ? 'kit' : 'bucket', at });
      for (const draw of draws) await tellDraw(plant, model, id, { table: 'lot_input', at, into: code, ...draw });
      const what = draws.map((draw) => `${draw.kg} kg of ${named(draw.from)}`).join(', ');
      model.story.push(`At ${time(at)} ${code} was made of ${what}.`);
    },
  }));

/** Something did not go into a lot; the last that did cannot be taken away. */
export const withdrawInput = nth.map((n): Act => ({
  name: 'withdraw an input',
  run: async (plant, model) => {
    const found = pick(
      model.draws.filter(({ table }) => table === 'lot_input'),
      n,
    );
    if (!found) return;
    const others = model.draws.some((draw) => draw !== found && draw.into === found.into);
    const rests = !others && (model.lot(found.into)?.heelKg ?? null) === null;
    const { refused } = await plant.correct('lot_input', found.root);
    if (rests !== (refused === 'lot-is-made-of-this'))
      throw new Error(`The ${rests ? 'last' : 'first of some'} input of ${found.into} withdrawn: ${refused ?? 'yes'}.`);
    if (rests) return;
    model.draws = model.draws.filter((draw) => draw !== found);
    model.story.push(`The ${found.kg} kg of ${named(found.from)} did not go into ${found.into}.`);
  },
}));
