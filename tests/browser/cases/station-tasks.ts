import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { axeFindings } from '../../support/web/axe.js';
import { Shop } from '../../support/shop.js';
import { Hands, openTablet } from '../tablets.js';
import { page, service, watched } from '../stage.js';

const made = async (hull: string) => {
  const shop = new Shop(service);
  const part = await shop.read<{ layers: { record: Record<string, unknown> | null }[] }>(`/api/parts/${hull}-H`);
  return part.layers[0]?.record;
};

describe('at the station, from an empty start', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.startHull('ST-1');
    await shop.startHull('ST-2');
  });
  afterEach(() => watched.close());

  it('a laminator enters a layer as scheduled on two hulls at once', async () => {
    const hands = new Hands(await openTablet('/station', 'TAB-A', 'LAM-1'));
    await hands.tap('link', /ST-1-H L1/);
    await hands.tap('button', 'ST-2-H');
    await hands.tap('button', /^1 h$/);
    await hands.tap('button', /As scheduled, 2 parts/);
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.getByText('All sent').waitFor();
    hands.atMost('layer as scheduled, two parts', 4, 0);
    expect(await made('ST-1')).toMatchObject({
      doneBy: ['LAM-1'],
      used: [{ amount: { quantity: expect.stringMatching(/^18/), basis: 'as scheduled' } }],
    });
    expect(await made('ST-2')).toMatchObject({ enteredBy: 'LAM-1', signature: null });
    expect(watched.complaints).toEqual([]);
  });

  it('an inspector reads the film at three spots, keeps one outside for quality, and signs', async () => {
    const hands = new Hands(await openTablet('/station', 'TAB-B', 'INS-1'));
    await hands.tap('link', /ST-1-H L1.*wet film/);
    await hands.tap('button', /^18 inside/);
    await page.getByRole('status').getByText('Inside').waitFor();
    await hands.tap('button', /^14 too thin/);
    await page.getByText('Too thin here').waitFor();
    await hands.tap('button', /Keep it, next spot/);
    await hands.tap('button', /^16 inside/);
    await hands.tap('link', 'Start');
    await hands.tap('link', /ST-1-H L1.*HP 1/);
    await hands.tap('button', 'Sign as INS-1');
    hands.atMost('three spots and a signature', 8, 0);
    await page.getByText('made, signed').waitFor();
    await page.getByText('All sent').waitFor();
    const record = await made('ST-1');
    expect(record).toMatchObject({ signature: { by: 'INS-1', identity: 'proved' } });
    expect((record?.['readings'] as { verdict: string }[]).map(({ verdict }) => verdict)).toEqual([
      'inside',
      'outside',
      'inside',
    ]);
  });

  it('whoever made a layer is asked to hand the tablet over', async () => {
    await openTablet('/station/sign?part=ST-2-H&layer=L1', 'TAB-A', 'LAM-1');
    await page.getByText('You made this layer: another person signs it.').waitFor();
    expect(await page.getByRole('button', { name: /^Sign as/ }).count()).toBe(0);
    await page.getByRole('link', { name: 'Hand over to who signs' }).waitFor();
  });

  it('is stopped before a lot on hold is used, and may still keep what happened', async () => {
    const shop = new Shop(service);
    await shop.startHull('ST-3');
    await shop.receive('G-HELD', 'GEL-W');
    await shop.act('/api/lots/G-HELD/holds', { kind: 'quality', reason: 'wrong shade' });
    const hands = new Hands(await openTablet('/station/layer?part=ST-3-H&layer=L1', 'TAB-A', 'LAM-1'));
    await hands.type('Scan or type a lot, tank or gun', '/l/lot/G-HELD');
    await page.getByRole('alert').getByText('Stop. Do not use.').waitFor();
    await page.getByRole('alert').getByText('wrong shade').first().waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await hands.tap('button', /It is done already/);
    await hands.tap('button', '30 min');
    await hands.tap('button', /Keep it, 1 part/);
    await page.getByText('Kept', { exact: true }).waitFor();
    await page.getByText('All sent').waitFor();
    hands.atMost('a held lot, kept as it happened', 3, 1);
    const part = await shop.read<{ nonconformities: { rule: string }[] }>('/api/parts/ST-3-H');
    expect(part.nonconformities.map(({ rule }) => rule)).toContain('lot-on-hold');
  });

  it.each([
    ['/station', 'To do'],
    ['/station/layer', 'Layer as made'],
    ['/station/layer?part=86-6-H&layer=L1', 'As scheduled, 1 part'],
    ['/station/readings', 'Readings'],
    ['/station/readings?part=ST-2-H&layer=L1&what=wet%20film', 'Spot 1 of 3'],
    ['/station/sign', 'Hold point'],
    ['/station/sign?part=ST-2-H&layer=L1', 'Made by LAM-1'],
    ['/station/confirm', 'Nothing waits for your word'],
  ])('%s is without a finding of the accessibility checker, and large enough for gloves', async (address, words) => {
    await openTablet(address, 'TAB-B', 'INS-1');
    await page.getByText(words).first().waitFor();
    await page.waitForLoadState('networkidle');
    expect(await axeFindings(page)).toEqual([]);
    const low = await page.evaluate<string[]>(
      `[...document.querySelectorAll('button, .station a, input, select')]
        .filter((each) => each.offsetParent !== null && each.offsetHeight < 48)
        .map((each) => each.outerHTML.slice(0, 80))`,
    );
    expect(low).toEqual([]);
  });
});
