import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import type { PartView } from '@hull-record/contracts';
import { kg, Shop } from '../../support/shop.js';
import type { Watched } from '../../support/browser.js';
import { service, watched } from '../stage.js';
import { openTablet, readyForNoNetwork, rowsWhere } from '../tablets.js';

const HULL = 'TW-1';
const READ = `/station/readings?part=${HULL}-H&layer=L1&what=wet%20film`;
const OF_LAYER = `t.of_id in (select r.root from fact.layer_record r
  where r.part_id = (select p.id from fact.part p where p.number = $1))`;

/** What was opened, so that both tablets end with the test. */
const opened: Watched[] = [];
const tablet = async (path: string, code: string, badge: string): Promise<Page> => {
  const on = await openTablet(path, code, badge);
  opened.push(watched);
  return on;
};
const readings = (): Promise<number> => rowsWhere('reading', OF_LAYER, [`${HULL}-H`]);

/** Touches a tooth of the gauge so often; each spot is an entry of its own. */
const read = async (on: Page, tooth: RegExp, times: number): Promise<void> => {
  for (let spot = 1; spot <= times; spot += 1) {
    await on.getByRole('button', { name: tooth }).tap();
    await on.getByText(`${spot} ${spot === 1 ? 'waits' : 'wait'} to be sent.`).waitFor();
  }
};

describe('two tablets on one hull', () => {
  beforeAll(async () => {
    const shop = new Shop(service);
    await shop.startHull(HULL);
    await shop.layer(HULL, 'L1', [{ lot: 'G-1', amount: kg(18) }]);
  });
  afterEach(async () => {
    await Promise.all(opened.splice(0).map((each) => each.close()));
  });

  it('that write at once, each after a time with no network, write each entry once, and see those of the other', async () => {
    const first = await tablet(READ, 'TAB-T', 'INS-1');
    await readyForNoNetwork(first);
    await first.getByText('Spot 1 of 3:').waitFor();
    const second = await tablet(READ, 'TAB-U', 'LAM-2');
    await readyForNoNetwork(second);
    await second.getByText('Spot 1 of 3:').waitFor();
    await Promise.all([first.context().setOffline(true), second.context().setOffline(true)]);
    await Promise.all([read(first, /^18 inside/, 3), read(second, /^16 inside/, 3)]);
    expect(await readings()).toBe(0);
    await Promise.all([first.context().setOffline(false), second.context().setOffline(false)]);
    await Promise.all([first, second].map((on) => on.getByText('All sent').waitFor({ timeout: 20_000 })));

    expect(await readings()).toBe(6);
    const { layers } = await new Shop(service).read<PartView>(`/api/parts/${HULL}-H`);
    const taken = layers[0]?.record?.readings ?? [];
    expect(taken.map(({ spot }) => spot).sort()).toEqual([1, 2, 3, 4, 5, 6]);
    const journaled = await service.asOwner<{ code: string; n: number }>(
      `select d.code, count(*)::int as n from fact.journal j join fact.device d on d.root = j.device_id
       where j.kind = 'readings of layer' and d.code in ('TAB-T', 'TAB-U') group by d.code order by d.code`,
    );
    expect(journaled).toEqual([
      { code: 'TAB-T', n: 3 },
      { code: 'TAB-U', n: 3 },
    ]);

    // Each has all six, of which the sheet asks three: nothing is left to be read.
    for (const on of [first, second]) {
      await on.goto(`${service.url}/station/sign?part=${HULL}-H&layer=L1`);
      await on.getByText('6 of 3 spots read, 0 outside').waitFor();
    }
  });

  it('the second shows what the first entered without being touched, and does not ask for it again', async () => {
    const second = await tablet(`/station/sign?part=${HULL}-H&layer=L1`, 'TAB-U', 'LAM-2');
    // Its own clock goes on by half a minute at a word: so often it asks for the day by itself.
    await second.clock.install();
    await second.reload();
    await second.getByText('6 of 3 spots read').waitFor();
    const first = await tablet(`/station/sign?part=${HULL}-H&layer=L1`, 'TAB-T', 'INS-1');
    await first.getByRole('button', { name: 'Sign as INS-1' }).tap();
    await first.getByText('made, signed').waitFor();
    await first.getByText('All sent').waitFor();
    expect(await second.getByText('· INS-1').count()).toBe(0);
    await second.clock.runFor(31_000);
    await second.getByText('· INS-1').waitFor();
    expect(await second.getByRole('button', { name: /^Sign/ }).count()).toBe(0);
    expect(opened.flatMap(({ complaints }) => complaints)).toEqual([]);
  });
});
