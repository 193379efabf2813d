import { afterEach, beforeAll, describe, expect, it } from '@jest/globals';
import { axeFindings } from '../../support/web/axe.js';
import { open, page, service, watched } from '../stage.js';
import { atTablet, begin, defectsOf, takeOn, TABLET } from './at-bay.js';

const PART = '86-6-H';

describe('a defect from finding to acceptance, each by a tablet that nobody had', () => {
  beforeAll(async () => {
    await takeOn('INS-7', 'inspector');
    await takeOn('PAT-7', 'patcher');
    await takeOn('QUA-7', 'quality');
  });
  afterEach(() => watched.close());

  it('is logged by an inspector with a photo, in 10 taps and 5 fields', async () => {
    const inspector = atTablet();
    await open('/station', TABLET, null);
    await begin(inspector, 'INS-7', PART);
    await inspector.tap('link', 'Log a defect');
    await inspector.touchHull(0.5, 0.35);
    await inspector.tap('radio', 'Air bubble (void)');
    await inspector.tap('radio', /^L2/);
    await inspector.type('Long, mm', '22');
    await inspector.type('Wide, mm', '14');
    await inspector.photograph();
    await page.getByRole('img', { name: /^Photo 1, \d+ kB$/ }).waitFor();
    await page.getByText('The plant judges flaws by no table').waitFor();
    await page.getByText(/^Hull 86-6 is not released while it is open/).waitFor();
    await inspector.tap('button', 'Save the defect');
    await page.getByText('Recorded as D1.').waitFor();
    await page.getByText('All sent').waitFor();
    expect(await defectsOf(PART)).toMatchObject([{ kind: 'air-bubble', photos: 1 }]);
    expect(inspector.effort.taps).toBeLessThanOrEqual(10);
    expect(inspector.effort.fields).toBeLessThanOrEqual(5);
  });

  it('is repaired by a patcher from the order to handing back, in 7 taps and 7 fields', async () => {
    const patcher = atTablet();
    await open('/station', TABLET, null);
    await begin(patcher, 'PAT-7', PART);
    await patcher.tap('link', 'Repair 1 open defect');
    await page.getByText('Never mix catalyst and promoter directly.').first().waitFor();
    await patcher.type('Ground deep, mm', '3');
    await patcher.type('Laminate thick, mm', '6');
    const drawing = page.getByRole('img', { name: /^Grind-out to scale/ });
    // 22 × 14 mm, 3 mm deep, 12:1: a taper of 36 mm all round.
    expect(await drawing.getAttribute('aria-label')).toMatch(/94 by 86 mm in all[^]*taper 12:1, 36 mm on each side/);
    await patcher.tap('button', 'Add material');
    await patcher.type('Lot or container: scan, or type', `${service.url}/l/lot/R-GOOD`);
    await patcher.type('How much', '0,4');
    await patcher.tap('button', 'Hand back for acceptance');
    await page.getByText('Recorded as R1.').waitFor();
    expect(patcher.effort.taps).toBeLessThanOrEqual(7);
    expect(patcher.effort.fields).toBeLessThanOrEqual(7);
    await patcher.tap('link', `Back to ${PART}`);
    await patcher.tap('link', 'Judge R1: it waits for acceptance');
    await page.getByText('You did R1: somebody who did not do it accepts it.').waitFor();
  });

  it('is accepted by another person, in 6 taps and 3 fields', async () => {
    const quality = atTablet();
    await open('/station', TABLET, null);
    await begin(quality, 'QUA-7', PART);
    await quality.tap('link', 'Judge R1: it waits for acceptance');
    await page.getByText('R-GOOD').waitFor();
    await page.getByText(/0[.]4 kg.*weighed/).waitFor();
    await quality.tap('button', 'Accept R1');
    await page.getByText('Recorded for R1.').waitFor();
    expect(quality.effort.taps).toBeLessThanOrEqual(6);
    expect(quality.effort.fields).toBeLessThanOrEqual(3);
    const [repair] = await service.asOwner<{ accepted: boolean; kg: number }>(
      `select a.accepted, u.kg::float8 as kg from fact.acceptance a join fact.repair r on r.id = a.repair_id
       join fact.used u on u.into_id = r.root join fact.part t on t.id = r.part_id where t.number = '${PART}'`,
    );
    expect(repair).toEqual({ accepted: true, kg: 0.4 });
  });
});

describe('the photo of a defect', () => {
  afterEach(() => watched.close());

  it('is seen at the desk, on the page of the defect, which leads to the station', async () => {
    const [defect] = await defectsOf(PART);
    await open(`/defects/${defect?.id}`);
    const photo = page.getByRole('img', { name: 'Photo 1' });
    await photo.waitFor();
    await photo.evaluate('(shown) => shown.decode()');
    await page.getByRole('link', { name: 'at the station' }).click();
    await page.getByRole('heading', { name: new RegExp(PART), level: 1 }).waitFor();
    expect(new URL(page.url()).pathname).toBe(`/station/bay/${PART}`);
  });
});

describe('touch-ups', () => {
  afterEach(() => watched.close());

  it('of several spots go in one entry, and are accepted as one', async () => {
    const patcher = atTablet();
    await open('/station/bay/86-5-H/touch-up', TABLET, 'PAT-1');
    await page.getByRole('combobox', { name: 'Kind' }).selectOption({ label: 'Pit (pinhole)' });
    for (const _ of [1, 2, 3]) await patcher.tap('button', 'One more');
    await patcher.type('Largest, mm', '2');
    expect(await axeFindings(page)).toEqual([]);
    await patcher.tap('button', 'Save the touch-ups');
    await page.getByText('Recorded as T1.').waitFor();
    const rows = await service.asOwner<{ spots: unknown }>(
      "select t.spots from fact.touch_up t join fact.part p on p.id = t.part_id where p.number = '86-5-H'",
    );
    expect(rows).toEqual([{ spots: [{ zone: 'port topside', kind: 'pit', count: 4, largestMm: 2 }] }]);
  });

  it('may take from a tank, and what nobody can name: a trace then says that it is possibly any of the likely lots', async () => {
    const patcher = atTablet();
    await open('/station/bay/86-4-H/touch-up', TABLET, 'PAT-1');
    await page.getByRole('combobox', { name: 'Kind' }).selectOption({ label: 'Pit (pinhole)' });
    await patcher.type('Largest, mm', '2');
    const materials = ['Material 1', 'Material 2'].map((name) => page.getByRole('group', { name }));
    for (const material of materials) {
      await patcher.tap('button', 'Add material');
      await material.getByLabel('How much').fill('0.1');
    }
    const [tank, unnamed] = materials;
    await tank?.getByLabel('Taken from').selectOption({ label: 'tank' });
    await tank?.getByLabel('Code of the tank').fill('T1');
    await unnamed?.getByLabel('Taken from').selectOption({ label: 'nobody can name it' });
    await unnamed?.getByLabel('What it looked like').fill('amber, in a pail without a label');
    await unnamed?.getByLabel('Lots it may be of').fill('R-GOOD R-BAD');
    expect(await axeFindings(page)).toEqual([]);
    await patcher.tap('button', 'Save the touch-ups');
    await page.getByText('Recorded as T1.').waitFor();
    const lots = await service.asOwner<{ origin: string }>(
      `select l.origin from fact.touch_up t join fact.part p on p.id = t.part_id join fact.used u on u.into_id = t.root
       join fact.lot l on l.root = u.lot_id where p.number = '86-4-H' order by 1`,
    );
    expect(lots.map(({ origin }) => origin)).toEqual(['tank', 'unidentified']);
  });
});
