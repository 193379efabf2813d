import { expect } from '@jest/globals';
import type { HullLots, HullView, LotView, ReachedHull } from '@hull-record/contracts';
import { compareSearch, searchHulls } from '../compare-search.js';
import { toNumber, walkComposition, walkHullsWith, walkLotsIn, type WalkFacts } from '../walk/index.js';
import { genealogyOf, isUnknown } from './genealogy-of-model.js';
import type { PlantModel } from './plant-model.js';
import type { Plant } from './plant.js';

/** Everything the model knows is asked of the service: of which lot each draw is, what is left, found and in the way. */
export const compare = async (plant: Plant, model: PlantModel): Promise<void> => {
  const facts = genealogyOf(model);
  await compareDraws(plant, model);
  await compareLots(plant, model, facts);
  await compareSearches(plant, model, facts);
  await compareHulls(plant, model, facts);
};

const compareDraws = async (plant: Plant, model: PlantModel): Promise<void> => {
  const rows = await plant.service.asOwner<{ root: string; lot: string; origin: string; kg: number }>(
    `select d.root, l.code as lot, l.origin, d.kg
     from (select id, root, lot_id, kg from fact.used union all select id, root, input_id, kg from fact.lot_input) d
     join fact.lot l on l.root = d.lot_id and not exists (select from fact.correction c where c.corrects = l.id)
     where d.root = any($1) and not exists (select from fact.correction c where c.corrects = d.id)`,
    [model.draws.map(({ root }) => root)],
  );
  const drawn = new Map(rows.map((row) => [row.root, row]));
  const told = model.draws.map(({ root, at }) => {
    const found = drawn.get(root);
    return [at, found?.origin === 'unidentified' ? 'nobody can say' : found?.lot, found?.kg];
  });
  expect(told).toEqual(model.draws.map((draw) => [draw.at, model.times.lotOf(draw) ?? 'nobody can say', draw.kg]));
};

const compareLots = async (plant: Plant, model: PlantModel, facts: WalkFacts): Promise<void> => {
  for (const lot of model.lots) {
    const told = await plant.shop.read<LotView>(`/api/lots/${lot.code}`);
    const state = model.times.stateOf(lot.code);
    expect([lot.code, told.amount.kg, told.leftKg, told.state]).toEqual([
      ...[lot.code, model.times.weight(lot), model.times.left(lot), state],
    ]);
    const known = merged([...walkComposition(lot.code, facts)].map(([source, part]) => [source, toNumber(part)]));
    expectClose(merged(told.composition.map(({ source, fraction }) => [String(source), fraction])), known, 2e-9);
  }
};

/** What nobody can name is one sum: the service and the model call it differently. */
const merged = (amounts: readonly (readonly [string, number])[]): ReadonlyMap<string, number> => {
  const sums = new Map<string, number>();
  for (const [lot, amount] of amounts) {
    const name = isUnknown(lot) || lot.startsWith('U-') || lot === 'null' ? 'nobody can say' : lot;
    sums.set(name, (sums.get(name) ?? 0) + amount);
  }
  return sums;
};

/** Equal but for what is cut at the floor; a name that only one of them has must be next to nothing. */
const expectClose = (told: ReadonlyMap<string, number>, known: ReadonlyMap<string, number>, cut: number): void => {
  for (const name of new Set([...told.keys(), ...known.keys()])) {
    const [is, exact] = [told.get(name) ?? 0, known.get(name) ?? 0];
    if (Math.abs(is - exact) > exact * 1e-9 + cut) expect([name, is]).toEqual([name, exact]);
  }
};

/** Every search is closed: what a walk finds it finds, in hulls and in parts of none, and what may be there too. */
const compareSearches = async (plant: Plant, model: PlantModel, facts: WalkFacts): Promise<void> => {
  const numbers = new Map(plant.hulls.map((hull) => [hull, hull]));
  const loose = {
    ...facts,
    joins: plant.decks.filter((deck) => !model.hullOf.has(deck)).map((part) => ({ part, hull: part })),
  };
  const maybe = new Set(
    facts.lots
      .filter(({ id }) => isUnknown(id))
      .flatMap(({ id }) => walkHullsWith(id, facts, { floor: 0 }).map(({ hull }) => hull)),
  );
  for (const { code, role } of model.lots) {
    await compareSearch(plant.shop, code, facts, numbers, 200);
    const found = await searchHulls(plant.shop, code, '', 200);
    const parts = found.filter(({ hull, possibly }) => hull === null && !possibly).flatMap(partsOf);
    const known = walkHullsWith(code, loose, { floor: 0 }).filter(({ placeShare }) => toNumber(placeShare) > 1e-8);
    expect([code, parts.sort()]).toEqual([code, known.map(({ hull }) => hull).sort()]);
    const hulls = new Set(found.map(({ hull }) => hull));
    if (role === 'resin') expect([code, [...maybe].filter((hull) => !hulls.has(hull))]).toEqual([code, []]);
  }
};

const partsOf = ({ parts }: ReachedHull): string[] => parts.map(({ part }) => part);

/** Backward: which lots are in a hull, how much of each, and which of them stand in the way of its release. */
const compareHulls = async (plant: Plant, model: PlantModel, facts: WalkFacts): Promise<void> => {
  for (const hull of plant.hulls) {
    const walked = walkLotsIn(hull, facts);
    const sources = walked.filter(({ lot, received }) => received || isUnknown(lot));
    const known = merged(sources.map(({ lot, kg }) => [lot, toNumber(kg)]));
    const told = await plant.shop.read<HullLots>(`/api/hulls/${hull}/lots`);
    const total = [...known.values()].reduce((sum, kg) => sum + kg, 0);
    expectClose(merged(told.lots.map(({ lot, kg }) => [lot, kg])), known, total * 2e-9);
    const { release, parts } = await plant.shop.read<HullView>(`/api/hulls/${hull}`);
    const held = release.inTheWay.filter(({ rule }) => ['lot-held', 'lot-rejected'].includes(rule));
    const inTheWay = held.map(({ rule, detail }) => `${rule} ${/^Lot (\S+)/.exec(detail)?.[1] ?? ''}`);
    const states = walked.map(({ lot }) => [lot, model.times.stateOf(lot)]).filter(([, state]) => state !== 'released');
    expect([hull, inTheWay.sort()]).toEqual([hull, states.map(([lot, state]) => `lot-${state} ${lot}`).sort()]);
    const joined = [...model.hullOf].filter(([, into]) => into === hull).map(([part]) => part);
    expect(parts.map(({ number }) => number).sort()).toEqual(joined.sort());
  }
};
