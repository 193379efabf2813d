import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { PartView } from '@hull-record/contracts';
import { axeFindings } from '../../support/web/axe.js';
import { kg, Shop } from '../../support/shop.js';
import { Hands, openTablet, readyForNoNetwork, rowsWhere } from '../tablets.js';
import { page, service, watched } from '../stage.js';

const partOf = (hull: string): Promise<PartView> => new Shop(service).read(`/api/parts/${hull}-H`);
const layerOf = (hull: string, layer = 'L1') => `/station/layer?part=${hull}-H&layer=${layer}`;
const sent = async (): Promise<void> => {
  await page.getByText('Kept', { exact: true }).waitFor();
  await page.getByText('All sent').waitFor();
};
const unfold = (words: string) => page.locator('summary', { hasText: words }).tap();

describe('a layer at the station, with what there is to say of it', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.act('/api/people', { badge: 'LEAD-1', name: 'Person LEAD-1', roles: ['shift lead'] });
    for (const hull of ['MK-1', 'MK-2', 'MK-3', 'MK-4', 'MK-5']) await shop.startHull(hull);
    await shop.receive('G-NIGHT', 'GEL-W');
    await shop.act('/api/lots/G-NIGHT/holds', { kind: 'quality', reason: 'shade to be compared' });
    await shop.receive('G-UNSAFE', 'GEL-W');
    await shop.act('/api/lots/G-UNSAFE/holds', { kind: 'safety', reason: 'peroxide in the drum' });
    await shop.startHull('MK-6');
    await shop.layer('MK-6', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
    await shop.layer('MK-5', 'L1', [{ lot: 'G-1', amount: kg(18) }]);
  });
  afterEach(() => watched.close());

  it('its climate is judged at once, by its limits and by the dew point, and goes with it', async () => {
    const hands = new Hands(await openTablet(layerOf('MK-1'), 'TAB-M', 'LAM-1'));
    await unfold('Climate while it was made');
    await page.getByText('Air, °C').waitFor();
    const type = (label: string, text: string) => page.getByLabel(label).fill(text);
    await type('Air, °C', '25');
    await type('Relative humidity', '60');
    await type('Surface of the mold, °C', '18');
    await page.getByText('Surface only 1.3 °C above the dew point of 16.7 °C: 3 °C asked.').waitFor();
    await page.getByText('Air inside: ').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await type('Surface of the mold, °C', '22,5');
    await page.getByText('Surface 5.8 °C above the dew point of 16.7 °C: enough').waitFor();
    await hands.tap('button', '30 min');
    await hands.tap('button', /As scheduled, 1 part/);
    await sent();
    const { layers } = await partOf('MK-1');
    expect(layers[0]?.record?.climate).toMatchObject({ moldTemperature: { value: 22.5, unit: 'C' } });
    expect(layers[0]?.record?.verdicts.map(({ topic, verdict }) => [topic, verdict])).toContainEqual([
      'mold surface over dew point',
      'inside',
    ]);
  });

  it('one enters for a crew: who made it are all of them, who entered it is one', async () => {
    const hands = new Hands(await openTablet(layerOf('MK-2'), 'TAB-M', 'LAM-1'));
    await unfold('Made by LAM-1');
    await hands.tap('button', 'LAM-1');
    await page.getByText('say first').first().waitFor();
    await hands.tap('button', 'LAM-2');
    await hands.tap('button', 'LEAD-1');
    await hands.tap('button', '30 min');
    await hands.tap('button', /made by LAM-2, LEAD-1/);
    await sent();
    const { layers } = await partOf('MK-2');
    expect([layers[0]?.record?.doneBy, layers[0]?.record?.enteredBy]).toEqual([['LAM-2', 'LEAD-1'], 'LAM-1']);
  });

  it('stopped, a laminator hands over to a shift lead, who goes on with a reason; quality still decides', async () => {
    const hands = new Hands(await openTablet(layerOf('MK-3'), 'TAB-M', 'LAM-1'));
    await hands.type('Scan or type a lot, tank or gun', 'G-NIGHT');
    await page.getByRole('alert').getByText('Stop. Do not use.').waitFor();
    await unfold('Go on under nonconformance');
    await page.getByRole('link', { name: 'Hand over to a shift lead' }).waitFor();
    await watched.close();
    const lead = new Hands(await openTablet(layerOf('MK-3'), 'TAB-N', 'LEAD-1'));
    await lead.type('Scan or type a lot, tank or gun', 'G-NIGHT');
    await page.getByRole('alert').getByText('shade to be compared').first().waitFor();
    await unfold('Go on under nonconformance');
    expect(await axeFindings(page)).toEqual([]);
    await page.getByLabel('Why work goes on').fill('the mold is released, the boat is white anyway');
    await lead.tap('button', /Go on, LEAD-1/);
    await lead.tap('button', '30 min');
    await lead.tap('button', /Keep it, 1 part/);
    await sent();
    const { nonconformities } = await partOf('MK-3');
    expect(nonconformities).toMatchObject([
      {
        rule: 'lot-on-hold',
        disposition: null,
        goOn: { by: 'LEAD-1', reason: expect.stringContaining('white anyway') },
      },
    ]);
  });

  it('whoever made it has the tablet, and the signer gives badge and PIN on it: signed, and proved', async () => {
    const code = String((await new Shop(service).post('/api/people/INS-1/first-codes', {})).body['code']);
    const chosen = await fetch(`${service.url}/api/first-sign-in`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ badge: 'INS-1', code, secret: '730415' }),
    });
    expect(chosen.status).toBe(200);
    const hands = new Hands(await openTablet('/station/sign?part=MK-6-H&layer=L1', 'TAB-M', 'LAM-1'));
    await page.getByText('You made this layer').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    const give = async (badge: string): Promise<void> => {
      await page.getByLabel('Badge of who signs').fill(badge);
      await page.getByLabel('PIN').fill('730415');
      await hands.tap('button', /Sign the hold point/);
    };
    await give('lam-1');
    await page.getByText('lam-1 made this layer: another person signs it.').waitFor();
    await give('INS-1');
    await sent();
    // Whoever works on must not do so in the signer's name.
    await page.getByText("The tablet is INS-1's now.").waitFor();
    await page.getByRole('link', { name: 'Take it back' }).waitFor();
    const { layers } = await partOf('MK-6');
    expect(layers[0]?.record?.signature).toMatchObject({ by: 'INS-1', identity: 'proved' });
  });

  it('over a safety hold nobody goes on, not even a shift lead', async () => {
    const lead = new Hands(await openTablet(layerOf('MK-4'), 'TAB-N', 'LEAD-1'));
    await lead.type('Scan or type a lot, tank or gun', 'G-UNSAFE');
    await page.getByText('Nobody goes on over this at the station.').waitFor();
    expect(await page.getByText('Go on under nonconformance').count()).toBe(0);
  });

  it('with no network the lead goes on over an unsigned hold point, and word and layer are sent once', async () => {
    await openTablet('/station', 'TAB-N', 'LEAD-1');
    await page.getByText('MK-5-H').first().waitFor();
    await readyForNoNetwork(page);
    await page.getByText('MK-5-H').first().waitFor();
    const context = page.context();
    await context.setOffline(true);
    await page.goto(`${service.url}${layerOf('MK-5', 'L2')}`);
    await page.getByRole('alert').getByText('Stop. Do not use.').waitFor();
    await unfold('Go on under nonconformance');
    await page.getByLabel('Why work goes on').fill('night shift, no inspector until six');
    const hands = new Hands(page);
    await hands.tap('button', /Go on, LEAD-1/);
    await hands.tap('button', '30 min');
    await hands.tap('button', /1 part/);
    await page.getByText('2 wait to be sent.').waitFor();
    await context.setOffline(false);
    await page.getByText('All sent').waitFor({ timeout: 20_000 });
    expect(await rowsWhere('go_on', `t.reason = 'night shift, no inspector until six'`, [])).toBe(1);
    const { nonconformities } = await partOf('MK-5');
    expect(nonconformities.filter(({ rule }) => rule === 'hold-point-passed')).toMatchObject([
      { goOn: { by: 'LEAD-1' } },
    ]);
  });
});
