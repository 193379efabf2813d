import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import type { TraceGraph } from '@hull-record/contracts';
import { randomGenealogy, type InventedGenealogy } from '../support/random-genealogy.js';
import { GenealogyRecorder, openForGenealogies } from '../support/record-genealogy.js';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';
import { readFacts, toNumber, walkHullsWith, walkLotsIn, type WalkFacts } from '../support/walk/index.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await openForGenealogies(shop);
}, 60_000);
afterAll(() => service.close());

const facts = (): Promise<WalkFacts> => readFacts((sql) => service.asOwner(sql));
const traceLot = (lot: string, query = ''): Promise<TraceGraph> => shop.read(`/api/lots/${lot}/trace${query}`);
const traceHull = (hull: string, query = ''): Promise<TraceGraph> => shop.read(`/api/hulls/${hull}/trace${query}`);
const byCode = (graph: TraceGraph) => new Map(graph.nodes.map((node) => [node.code, node]));
const into = (graph: TraceGraph, id: string | undefined): number =>
  graph.links.filter(({ to }) => to === id).reduce((sum, link) => sum + link.kg, 0);

/** Doubles and exact fractions agree to this, relative; and what is under the floor of 1e-9 is left out. */
const near = (found: number | null | undefined, exact: number, whole: number): void =>
  expect(Math.abs((found ?? 0) - exact)).toBeLessThanOrEqual(exact * 1e-9 + whole * 2e-9);

const compareForward = async (code: string, known: WalkFacts): Promise<void> => {
  const graph = await traceLot(code);
  const [itself] = graph.nodes;
  expect([graph.leftOut, itself?.code]).toEqual([null, code]);
  const walked = walkHullsWith(itself?.id ?? '', known, { floor: 0 });
  const found = new Map(graph.nodes.filter(({ kind }) => kind === 'hull').map((node) => [node.id, node]));
  for (const { hull, kg: exact } of walked) {
    near(found.get(hull)?.kg, toNumber(exact), 1_000);
    near(into(graph, hull), toNumber(exact), 1_000);
  }
  expect([...found.keys()].filter((id) => !walked.some(({ hull }) => hull === id))).toEqual([]);
};

const compareBackward = async (code: string, known: WalkFacts): Promise<void> => {
  const graph = await traceHull(code);
  const hull = graph.nodes.find(({ kind }) => kind === 'hull');
  const walked = walkLotsIn(hull?.id ?? '', known);
  const whole = hull?.kg ?? 0;
  near(into(graph, hull?.id), whole, whole);
  const found = new Map(graph.nodes.filter(({ kind }) => kind === 'lot').map((node) => [node.id, node.kg]));
  for (const lot of walked) near(found.get(lot.lot), toNumber(lot.kg), whole);
  expect([...found.keys()].filter((id) => !walked.some(({ lot }) => lot === id))).toEqual([]);
  // What comes into a made lot goes out of it whole: every kilogram of the picture ends in the hull.
  for (const { id, origin, kg: through } of graph.nodes)
    if (origin !== null && origin !== 'received') near(into(graph, id), through ?? 0, whole);
};

describe('the picture of a trace', () => {
  it('has on random genealogies the kilograms that a walk over the bare facts finds, forward and backward', async () => {
    const recordAndCompare = async (invented: InventedGenealogy): Promise<void> => {
      const recorder = new GenealogyRecorder(shop, invented);
      await recorder.record();
      const known = await facts();
      for (const { id } of invented.lots) await compareForward(recorder.code(id), known);
      for (const hull of new Set(invented.joins.map((join) => recorder.code(join.hull))))
        await compareBackward(hull, known);
    };
    await fc.assert(fc.asyncProperty(randomGenealogy(30), recordAndCompare), { numRuns: 6, endOnFailure: true });
  }, 240_000);

  it('shows a tank by its fills, with the heel between them, and hulls with what they are', async () => {
    await shop.receive('X-1', 'RES-VE', { supplierLot: 'SX-1' });
    await shop.receive('X-2', 'RES-VE');
    await shop.fill('XT-1', null, [{ lot: 'X-1', amount: kg(300) }]);
    await shop.startHull('X1');
    await shop.layer('X1', 'L2', [{ tank: 'T1', amount: kg(100) }]);
    await shop.fill('XT-2', kg(200), [{ lot: 'X-2', amount: kg(600) }]);
    await shop.startHull('X2');
    await shop.layer('X2', 'L2', [{ tank: 'T1', amount: kg(80) }]);
    await shop.startDeck('X3-D', { scheduleVersion: 1 });
    await shop.layer('X3', 'D1', [{ lot: 'X-1', amount: kg(5) }], { part: 'X3-D' });
    const graph = await traceLot('X-1');
    const nodes = byCode(graph);
    expect([...nodes].map(([code, node]) => [code, node.kind, node.origin, node.kg, node.share])).toEqual([
      ['X-1', 'lot', 'received', 1_000, 1],
      ['XT-1', 'lot', 'tank', 300, 1],
      ['XT-2', 'lot', 'tank', 200, 0.25],
      ['X1', 'hull', null, 100, 1],
      ['X2', 'hull', null, 20, 0.25],
      ['X3-D', 'part', null, 5, 1],
    ]);
    expect(nodes.get('X1')).toMatchObject({ basis: 'weighed', now: { what: 'part started' }, possibly: false });
    expect(nodes.get('X-1')).toMatchObject({
      supplier: 'Aldermoor Resins',
      supplierLot: 'SX-1',
      role: 'resin',
      state: 'released',
    });
    const code = new Map(graph.nodes.map((node) => [node.id, node.code]));
    expect(graph.links.map(({ from, to, kg: of }) => [code.get(from), code.get(to), of])).toEqual(
      expect.arrayContaining([
        ['X-1', 'XT-1', 300],
        ['XT-1', 'XT-2', 200],
        ['XT-1', 'X1', 100],
        ['XT-2', 'X2', 20],
        ['X-1', 'X3-D', 5],
      ]),
    );
    expect(graph.links).toHaveLength(5);
  });

  it('begins with several hulls, and says what they share by what stands before both', async () => {
    const graph = await traceHull('X1', '?also=X2');
    expect(graph.codes).toEqual(['X1', 'X2']);
    const nodes = byCode(graph);
    expect(nodes.get('X-1')).toMatchObject({ kg: 120, share: 1, basis: 'weighed' });
    expect(nodes.get('X-2')).toMatchObject({ kg: 60, share: 0.75 });
    expect(nodes.get('XT-1')).toMatchObject({ kg: 120, share: null });
  });

  it('is cut to the most kilograms, and says how many are left out', async () => {
    const graph = await traceLot('X-1', '?nodes=3');
    expect(graph.nodes.map(({ code }) => code)).toEqual(['X-1', 'XT-1', 'XT-2']);
    expect(graph.leftOut).toEqual({ lots: 0, hulls: 3 });
    expect(graph.links).toHaveLength(2);
  });

  it('of a made lot shows what it was made of, and where it went', async () => {
    const graph = await traceLot('XT-2');
    const codes = graph.nodes.map(({ code }) => code);
    // X-1 came by XT-1 alone: as many kilograms, and which of the two is first is decided by their ids.
    expect([codes.slice(0, 2), codes.slice(2, 4).sort(), codes.slice(4)]).toEqual([
      ['XT-2', 'X-2'],
      ['X-1', 'XT-1'],
      ['X2'],
    ]);
    expect(byCode(graph).get('X2')).toMatchObject({ kg: 80 });
  });

  it('names who possibly holds it', async () => {
    await shop.startHull('X4');
    await shop.layer('X4', 'L2', [
      { unidentified: { role: 'resin', looks: 'clear', foundAt: 'bay 2', likely: ['X-2'] }, amount: kg(7) },
    ]);
    const graph = await traceLot('X-2');
    expect(byCode(graph).get('X4')).toMatchObject({ kind: 'hull', possibly: true, kg: null });
    const back = await traceHull('X4');
    expect(back.nodes.find(({ origin }) => origin === 'unidentified')).toMatchObject({
      kg: 7,
      possiblyAnyOf: { lots: ['X-2'] },
    });
  });

  it.each([
    ['/api/lots/NONE/trace', 404],
    ['/api/hulls/NONE/trace', 404],
    ['/api/hulls/X1/trace?also=NONE', 400],
    ['/api/lots/X-1/trace?nodes=1', 400],
  ])('%s is refused with %d', async (path, status) => {
    expect((await shop.get(path)).status).toBe(status);
  });
});
