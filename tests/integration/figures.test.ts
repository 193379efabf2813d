import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { CureView, DoseView, HinReceipt, PatchPlanView } from '@hull-record/contracts';
import { startService, type RunningService } from '../support/service.js';
import { kg, Shop } from '../support/shop.js';

let service: RunningService;
let shop: Shop;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  await shop.act('/api/materials/RES-VE/data-sheets', {
    issue: 'Vinyl ester resin, issue 2 (invented)',
    makerData: {
      catalystWindow: { min: 1.2, max: 2.4, unit: '%' },
      dosing: [
        { temperature: { value: 59, unit: 'F' }, percentByMass: 2.2 },
        { temperature: { value: 25, unit: 'C' }, percentByMass: 1.2 },
      ],
    },
  });
});
afterAll(() => service.close());

describe('the dose of catalyst', () => {
  it('is 200 g, and 180 mL, of 10 kg at 2 % by mass, with its cautions', async () => {
    const dose = await shop.read<DoseView>('/api/materials/RES-VE/dose?resinKg=10&catalyst=MEKP&percentByMass=2');
    expect(dose).toMatchObject({ grams: 200, verdict: 'inside', stop: null });
    expect(dose.millilitres).toBeCloseTo(180.18, 2);
    // 0.18018 L in 9.0909 L: another number than 2 % by mass.
    expect(dose.percentByVolume).toBeCloseTo(1.982, 3);
    expect(dose.cautions[0]).toBe('Never mix catalyst and promoter directly.');
  });

  it('is read from the data sheet at a temperature, in a straight line between its rows', async () => {
    const dose = await shop.read<DoseView>('/api/materials/RES-VE/dose?resinKg=10&catalyst=MEKP&temperature=20');
    // Half-way between 15 C (59 F) and 25 C.
    expect(dose.percentByMass).toBeCloseTo(1.7, 9);
    expect(dose.source).toBe('Vinyl ester resin, issue 2 (invented)');
  });

  it('outside the window is stopped', async () => {
    const dose = await shop.read<DoseView>('/api/materials/RES-VE/dose?resinKg=10&catalyst=MEKP&percentByMass=3.1');
    expect(dose).toMatchObject({ verdict: 'too much', stop: expect.stringContaining('1.2 to 2.4 %') });
  });

  it.each([
    ['resinKg=10&catalyst=MEKP&temperature=40', 422, '/temperature'],
    ['resinKg=10&catalyst=MEKP', 400, '/percentByMass'],
    ['resinKg=-1&catalyst=MEKP&percentByMass=2', 400, '/resinKg'],
    ['resinKg=10&catalyst=RES-PE&percentByMass=2', 422, '/catalyst'],
    ['resinKg=NaN&catalyst=MEKP&percentByMass=2', 400, '/resinKg'],
  ])('asked with %s is refused with %i at %s', async (query, status, pointer) => {
    const answer = await shop.get(`/api/materials/RES-VE/dose?${query}`);
    expect(answer.status).toBe(status);
    expect(answer.body).toMatchObject({ errors: [{ pointer }] });
  });
});

describe('the plan of a patch', () => {
  const csm = { arealMass: { value: 450, unit: 'g/m2' }, fibreMassFraction: 0.3 };

  it('sizes each ply to its own top, and finds nothing wrong with 12:1 of the right thickness', async () => {
    const plan = { damage: { diameterMm: 100 }, originalMm: 6, damageDepthMm: 3.1523, plies: [csm, csm, csm] };
    const { status, body } = await shop.post('/api/patch-plans', plan);
    expect(status).toBe(200);
    expect(body).toMatchObject({ depth: 'partially-through', surfaceOnly: false, findings: [] });
    const view = body as unknown as PatchPlanView;
    expect(view.patchMm).toBeCloseTo(3.1523, 3);
    // 100 + 2 x 12 x 1.0508, and so on up.
    expect(view.plies.map(({ lengthMm }) => Math.round(lengthMm))).toEqual([125, 150, 176]);
    expect(view.cautions.join(' ')).toContain('qualified person decides');
  });

  it('through, from both sides, halves the taper; a patch too thin is said', async () => {
    const plan = { damage: { diameterMm: 100 }, originalMm: 6, damageDepthMm: 6, sides: 'both', plies: [csm] };
    const { body } = await shop.post('/api/patch-plans', plan);
    expect(body).toMatchObject({ depth: 'through-thickness', taperMm: 36, findings: [{ rule: 'thickness differs' }] });
  });

  it('of a taper under 12:1 is flagged', async () => {
    const plan = { damage: { diameterMm: 50 }, originalMm: 6, damageDepthMm: 1.05, taperRatio: 8, plies: [csm] };
    const { body } = await shop.post('/api/patch-plans', plan);
    expect(body).toMatchObject({ surfaceOnly: true, findings: [{ rule: 'taper too short' }] });
  });
});

describe('how warm a layer has lain', () => {
  it('is told by the log of its area: degree-hours, and whether 48 h at 18 C are full', async () => {
    await shop.startHull('K1');
    const at = '2026-01-10T00:00:00.000Z';
    await shop.layer('K1', 'L1', [], { startedAt: at, endedAt: at, area: 'BAY-2' });
    const points = Array.from({ length: 26 }, (_, i) => ({
      at: new Date(Date.parse(at) + i * 2 * 3_600_000).toISOString(),
      airTemperature: { value: 20, unit: 'C' },
      relativeHumidity: { value: 50, unit: '%' },
    }));
    await shop.act('/api/areas/BAY-2/climate', { points: points.slice(0, 24) });
    const before = await shop.read<CureView>('/api/parts/K1-H/cure');
    expect(before.layers).toMatchObject([
      { layer: 'L1', warmHours: 46, cured: false, degreeHours: expect.closeTo(92, 6) },
    ]);
    await shop.act('/api/areas/BAY-2/climate', { points: points.slice(24) });
    const after = await shop.read<CureView>('/api/parts/K1-H/cure?baseC=15');
    expect(after.layers).toMatchObject([{ warmHours: 50, cured: true, degreeHours: expect.closeTo(250, 6) }]);
  });

  it('is not known of a layer that was made in no area', async () => {
    await shop.startHull('K2');
    await shop.layer('K2', 'L1', []);
    const { layers } = await shop.read<CureView>('/api/parts/K2-H/cure');
    expect(layers).toMatchObject([{ area: null, points: 0, until: null, degreeHours: null, cured: false }]);
  });
});

describe('a HIN that is assigned', () => {
  it('comes with where its two numbers go, and who says so', async () => {
    await shop.startHull('P1');
    const { body } = await shop.post('/api/hulls/P1/hins', shop.envelope({ hin: 'TRZ00001A626' }));
    expect((body as unknown as HinReceipt).result.placement).toMatchObject({
      primary: expect.stringContaining('Starboard outboard side of the transom'),
      source: expect.stringContaining('33 CFR 181.29'),
    });
  });
});

describe('limits on the certificate of a lot', () => {
  it('stand above those of the data sheet', async () => {
    const certified = { catalystWindow: { min: 1, max: 1.5, unit: '%' } };
    await shop.receive('C-1', 'RES-VE', { certified });
    await shop.receive('C-2', 'MEKP');
    const inputs = [
      { lot: 'C-1', amount: kg(10) },
      { lot: 'C-2', amount: { quantity: '0.2', unit: 'kg', basis: 'weighed' } },
    ];
    await shop.act('/api/mixes', { code: 'CB-1', inputs });
    expect(await shop.read('/api/lots/CB-1')).toMatchObject({
      verdicts: [{ verdict: 'outside', source: expect.stringContaining('Certificate of lot C-1') }],
    });
    expect(await shop.read('/api/lots/C-1')).toMatchObject({ certified });
  });
});
