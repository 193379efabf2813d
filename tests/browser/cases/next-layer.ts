import { describe, expect, it } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { close, open, rowsOf, service } from '../stage.js';

const ago = (minutes: number): string => new Date(Date.now() - minutes * 60_000).toISOString();

describe('the time for the next layer', () => {
  it.each([
    ['NX-1', 10, /Next layer: wait (19|20) min\.[^]*Window of the laminate schedule\./],
    ['NX-2', 50, /Next layer: 1 h (9|10) min left\./],
    ['NX-3', 200, /the window has passed\. It is a secondary bond: prepare the surface/],
  ] as const)('is counted down on the layer that waits for it: %s, ended %i min ago', async (hull, minutes, words) => {
    const shop = new Shop(service);
    const window = { earliestMinutes: 30, latestMinutes: 120 };
    const layers = [
      { code: 'A', name: 'Skin', materials: [{ material: 'RES-VE' }], layUpWindow: window },
      { code: 'B', name: 'Bulk', materials: [{ material: 'RES-VE' }], predecessors: ['A'] },
    ];
    const version = 20 + Number(hull.slice(-1));
    await shop.act('/api/models/TS86/schedules', { partKind: 'hull molding', version, layers });
    await shop.startHull(hull);
    const [startedAt, endedAt] = [ago(minutes + 5), ago(minutes)];
    await shop.layer(hull, 'A', [], { startedAt, endedAt, happenedAt: endedAt });
    await open(`/hulls/${hull}`);
    const drawn = rowsOf(`Laminate of ${hull}-H, outside first`);
    await drawn.first().waitFor();
    expect(await drawn.nth(0).innerText()).toMatch(words);
    expect(await drawn.nth(1).innerText()).not.toContain('Next layer');
    await close();
  });
});
