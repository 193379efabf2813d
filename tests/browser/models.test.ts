import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { ModelView, PartView } from '@hull-record/contracts';
import { Hand } from '../support/web/hand.js';
import { MATERIALS, PEOPLE } from '../support/shop-stock.js';
import type { Shop } from '../support/shop.js';
import { clearStage, open, page, service, setStageOf, watched } from './stage.js';

let plant: Shop;

/** A plant with people and materials, and no model yet. */
beforeAll(
  () =>
    setStageOf(async (shop) => {
      plant = shop;
      for (const [badge, ...roles] of PEOPLE) await shop.act('/api/people', { badge, name: `Person ${badge}`, roles });
      for (const material of MATERIALS) await shop.act('/api/materials', material);
    }),
  120_000,
);
afterAll(clearStage);

const button = (name: string) => page.getByRole('button', { name, exact: true });
const row = (name: string) => page.getByRole('group', { name, exact: true });
const field = (label: string) => page.getByLabel(label, { exact: true });
const leave = async (): Promise<void> => {
  await watched.close();
  expect(watched.complaints.filter((each) => !/status of 4\d\d/.test(each))).toEqual([]);
};
const read = async <T>(path: string): Promise<T> =>
  (await (await fetch(`${service.url}${path}`, { headers: await service.signedIn() })).json()) as T;
const SCHEDULE = '/models/TS70/schedule?part=hull%20molding';

const station = async (hand: Hand, number: number, x: string, edge: string): Promise<void> => {
  const of = row(`Stations of the hull molding, ${number}`);
  await hand.type(of.getByLabel('From the transom, mm'), x);
  await hand.type(of.getByLabel('To the edge, mm'), edge);
};

describe('a model', () => {
  it('is registered by quality in two taps and seven fields, drawn as it is typed; the draft survives a reload', async () => {
    const hand = new Hand();
    await open('/models', {}, 'QUA-1');
    await page.getByText('No model is registered.').waitFor();
    await hand.tap(page.getByRole('link', { name: 'Register a model' }));
    await hand.type(field('Code of the model'), 'TS70');
    await hand.type(field('Name'), 'TS 70, cabin, 7 m');
    await hand.type(field('Length, mm'), '7000');
    await station(hand, 1, '0', '1800');
    await station(hand, 2, '6000', '700');
    await page.reload();
    await page.getByText('You began this before').waitFor();
    expect(await field('Length, mm').inputValue()).toBe('7000');
    await hand.tap(button('Register a model'));
    await page.getByRole('alert').getByText('The last station stands at the length, 7000 mm.').waitFor();
    expect(await page.evaluate('document.activeElement.name')).toBe('/skins/hull molding/stations/1/xMm');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('7000');
    await page.getByRole('img', { name: /Skin of the hull molding, 7 m long/ }).waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('No schedule is published for a part of this model').waitFor();
    expect([hand.taps, hand.fields]).toEqual([2, 7]);
    await leave();
    expect(await read<ModelView[]>('/api/models')).toMatchObject([
      { code: 'TS70', requiredParts: ['hull molding'], skins: { 'hull molding': { lengthMm: 7_000 } } },
    ]);
  });

  it('of a code that is taken is refused at the code', async () => {
    await open('/models/new', {}, 'QUA-1');
    await field('Code of the model').fill('TS70');
    await field('Name').fill('Twice');
    await field('Length, mm').fill('7000');
    const hand = new Hand();
    await station(hand, 1, '0', '1800');
    await station(hand, 2, '7000', '700');
    await button('Register a model').click();
    await page
      .getByRole('alert')
      .getByText(/^Code of the model:/)
      .waitFor();
    expect(await field('Code of the model').getAttribute('aria-invalid')).toBe('true');
    await leave();
  });
});

describe('a laminate schedule', () => {
  it('is entered layer by layer in six taps and seven fields; what is empty is named, and what is refused stands at its field', async () => {
    const hand = new Hand();
    await open('/models/TS70', {}, 'QUA-1');
    await hand.tap(page.getByRole('row', { name: /hull molding/ }).getByRole('link', { name: 'Enter version 1' }));
    await hand.type(field('Code'), 'L1');
    await hand.type(field('Name'), 'Gel coat');
    await hand.choose(field('Material'), 'GEL-W');
    await hand.type(field('Target amount'), '14,5');
    await hand.tap(button('Add a layer after L1'));
    await hand.type(field('Code'), 'L1');
    await hand.type(field('Name'), 'Skin coat');
    await hand.tap(button('Publish version 1'));
    await page.getByRole('alert').getByText('L1 · Material: Fill this in.').waitFor();
    await hand.choose(field('Material'), 'RES-VE');
    await hand.tap(button('Publish version 1'));
    await hand.tap(button('Yes, record it'));
    await page
      .getByRole('alert')
      .getByText(/^L1 · Code: Two layers have the same code/)
      .waitFor();
    expect(await page.evaluate('document.activeElement.name')).toBe('/layers/1/code');
    await page.keyboard.press('Control+a');
    await page.keyboard.type('L2');
    await page.reload();
    await page.getByText('You began this before').waitFor();
    await button('Publish version 1').click();
    await page.getByText('and never changes').waitFor();
    await hand.tap(button('Yes, record it'));
    await page.getByRole('table', { name: 'Laminate of the hull molding, version 1, outside first' }).waitFor();
    expect([hand.taps, hand.fields]).toEqual([6, 7]);
    await leave();
  });

  it('has a next version that begins with the one before: a layer is put in, another moved, and what differs is told', async () => {
    await plant.act('/api/molds', { code: 'M-70', model: 'TS70', partKind: 'hull molding' });
    await plant.act('/api/hulls', { number: '70-1', model: 'TS70', mold: 'M-70' });
    const hand = new Hand();
    await open(SCHEDULE, {}, 'QUA-1');
    await page.getByText('Parts already begun keep the version').waitFor();
    await hand.tap(button('Add a layer after L1'));
    await hand.type(field('Code'), 'L1B');
    await hand.type(field('Name'), 'Barrier coat');
    await hand.choose(field('Material'), 'RES-VE');
    await hand.tap(button('Another reading'));
    await hand.choose(field('What'), 'wet film');
    await hand.type(field('Spots at least'), '5');
    await hand.type(field('At most'), '20');
    await hand.type(field('At least'), '24');
    await hand.tap(button('Publish version 2'));
    await hand.tap(button('Yes, record it'));
    await page.getByRole('alert').getByText('L1B · At most: must not be less than min').waitFor();
    await page.keyboard.press('Control+a');
    await page.keyboard.type('28');
    await button('Publish version 2').click();
    await hand.tap(button('Yes, record it'));
    // The form shows the same table: it is over when the page of the model is there.
    await page.waitForURL(({ pathname }) => pathname === '/models/TS70');
    const differs = page.getByRole('table', { name: 'Layers that differ from version 1' });
    await differs.getByText('L1B is new').waitFor();
    await differs.getByText('after L1B').waitFor();
    expect([hand.taps, hand.fields]).toEqual([5, 7]);
    await leave();
    const newest = (await read<ModelView[]>('/api/models'))[0]?.schedules.find(({ version }) => version === 2);
    expect(newest?.layers).toMatchObject([
      { code: 'L1', materials: [{ target: { quantity: '14.5', unit: 'kg' } }] },
      { code: 'L1B', predecessors: ['L1'], readings: [{ limits: { min: 24, max: 28, unit: 'mil' } }] },
      { code: 'L2', predecessors: ['L1B'] },
    ]);
  });

  it('is what a new part is laid up by, and the part that was begun before keeps its own', async () => {
    await plant.act('/api/hulls', { number: '70-2', model: 'TS70', mold: 'M-70' });
    await open('/station/layer?part=70-2-H', {}, 'LAM-1');
    await page.getByRole('list', { name: /^Laminate of/ }).waitFor();
    const bands = await page.getByRole('list', { name: /^Laminate of/ }).innerText();
    expect(['L1', 'L1B', 'L2'].map((code) => bands.includes(code))).toEqual([true, true, true]);
    await leave();
    const codes = async (part: string) =>
      (await read<PartView>(`/api/parts/${part}`)).layers.map(({ scheduled }) => scheduled.code);
    expect(await codes('70-1-H')).toEqual(['L1', 'L2']);
    expect(await codes('70-2-H')).toEqual(['L1', 'L1B', 'L2']);
  });

  it('that another published meanwhile is said to be, and the draft stays', async () => {
    await open(SCHEDULE, {}, 'QUA-1');
    await field('Name').fill('Gel coat, white');
    const layers = [{ code: 'L1', name: 'Other', materials: [{ material: 'GEL-W' }] }];
    await plant.act('/api/models/TS70/schedules', { partKind: 'hull molding', version: 3, layers });
    await button('Publish version 3').click();
    await button('Yes, record it').click();
    await page.getByRole('alert').getByText('This version is published and never changes').waitFor();
    await page.getByText('Version 3 was published meanwhile').waitFor();
    expect(await field('Name').inputValue()).toBe('Gel coat, white');
    await button('Publish version 4').waitFor();
    await button('Start again').click();
    await page.getByText('Begun from version 3.').waitFor();
    await leave();
  });

  it('is only told of to who does not publish any', async () => {
    await open('/models/TS70', {}, 'REC-1');
    await page.getByText('Enter: for the roles quality.').waitFor();
    expect(await page.getByRole('link', { name: /^Enter version/ }).count()).toBe(0);
    await leave();
  });
});
