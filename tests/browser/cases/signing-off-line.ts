import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { HullView, PartView } from '@hull-record/contracts';
import { kg, Shop } from '../../support/shop.js';
import { page, service, watched } from '../stage.js';
import { Hands, openTablet, readyForNoNetwork } from '../tablets.js';

const HULL = 'SG-1';
const SIGN = `/station/sign?part=${HULL}-H&layer=L1`;

const signatureOf = async (): Promise<unknown> => {
  const { layers } = await new Shop(service).read<PartView>(`/api/parts/${HULL}-H`);
  return layers[0]?.record?.signature ?? null;
};
const signatures = async (): Promise<number> => {
  const [row] = await service.asOwner<{ n: number }>(
    `select count(*)::int as n from fact.signature s join fact.layer_record r on r.root = s.layer_record_id
     join fact.part p on p.id = r.part_id where p.number = $1`,
    [`${HULL}-H`],
  );
  return row?.n ?? 0;
};
const standsInTheWay = async (): Promise<string> =>
  JSON.stringify((await new Shop(service).read<HullView>(`/api/hulls/${HULL}`)).release);

describe('a hold point that is signed with no network', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.startHull(HULL);
    await shop.layer(HULL, 'L1', [{ lot: 'G-1', amount: kg(18) }]);
  });
  afterEach(() => watched.close());

  it('is provisional and outlives a reload and a closed page; it is recorded once, and does not count for release', async () => {
    await openTablet(SIGN, 'TAB-S', 'LAM-1');
    await readyForNoNetwork(page);
    await page.getByText('You made this layer').waitFor();
    const context = page.context();
    await context.setOffline(true);
    await page.reload();
    await page.getByText('No network since').waitFor();
    // The maker is not asked for a signature by another way either: the tablet is handed over, by the badge alone.
    expect(await page.getByRole('button', { name: /^Sign/ }).count()).toBe(0);
    const hands = new Hands(page);
    await hands.tap('link', 'Hand over to who signs');
    await hands.type('Badge', 'ins-1');
    await page.getByRole('link', { name: 'INS-1 not proved' }).waitFor();
    await page.getByText('Without a PIN the signature is provisional').waitFor();
    await hands.tap('button', 'Sign as INS-1');
    hands.atMost('a signature with no network', 2, 1);
    await page.getByText('1 waits to be sent.').waitFor();
    await page.reload();
    await page.getByText(/waits to be sent$/).waitFor();
    await page.close();
    const later = await context.newPage();
    await later.goto(`${service.url}/station`);
    await later.getByText('1 waits to be sent.').waitFor();
    expect(await signatures()).toBe(0);
    await context.setOffline(false);
    await later.getByText('All sent').waitFor({ timeout: 20_000 });
    await later.goto(`${service.url}${SIGN}`);
    await later.getByText('provisional: its signer has to confirm it').waitFor();
    expect(await signatures()).toBe(1);
    expect(await signatureOf()).toMatchObject({ by: 'INS-1', identity: 'provisional' });
    expect(await standsInTheWay()).toContain('INS-1 has to confirm it');
  });

  it('asks nobody else for a word, and its signer for the PIN first', async () => {
    await openTablet('/station/confirm', 'TAB-S', 'LAM-1');
    await readyForNoNetwork(page);
    await page.getByText('Nothing waits for your word.').waitFor();
    await page.getByRole('link', { name: 'LAM-1', exact: true }).tap();
    await page.getByLabel('PIN').waitFor();
    // What was asked while there was a network is answered by then, so that no answer says that there still is one.
    await page.waitForLoadState('networkidle');
    await page.context().setOffline(true);
    await page.getByText('No network since').waitFor();
    await page.getByText('No network: the badge alone will do.').waitFor();
    const hands = new Hands(page);
    await hands.type('Badge', 'INS-1');
    await page.getByRole('link', { name: 'INS-1 not proved' }).waitFor();
    await page.context().setOffline(false);
    await page.goto(`${service.url}/station/confirm`);
    await page.getByText('Take the tablet over with your PIN first').waitFor();
  });

  it('counts once its signer, known by a PIN, confirms it at the station', async () => {
    await openTablet('/station/confirm', 'TAB-S', 'INS-1');
    await page.getByText(`${HULL}-H`).waitFor();
    const hands = new Hands(page);
    await hands.tap('button', 'It is mine');
    await page.getByText('Nothing waits for your word.').waitFor();
    await page.getByText('All sent').waitFor();
    hands.atMost('a confirmation', 1, 0);
    expect(await signatureOf()).toMatchObject({ by: 'INS-1', identity: 'proved' });
    expect(await standsInTheWay()).not.toContain('has to confirm it');
    await page.reload();
    await page.getByText('Nothing waits for your word.').waitFor();
    expect(await signatures()).toBe(1);
    expect(watched.complaints).toEqual([]);
  });
});
