import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { open, openIn, page, rowsOf, service, watched } from '../stage.js';

const HULL = '/hulls/86-1';
const LOT = '/lots/R-BAD';
const DEFECT = '/defects/00000000-0000-4000-8000-000000000000';
const SEARCH = '/search?for=86&hulls=86-1,86-2';

/** Each kind of request: the page that makes it, the path that fails, and what the page says was not read. */
const REQUESTS = [
  ['/', '**/api/hulls?limit=5', 'hulls'],
  ['/hulls', '**/api/hulls?limit=50', 'hulls'],
  [HULL, '**/api/hulls/86-1', 'hull 86-1'],
  [HULL, '**/api/models', 'hull 86-1'],
  [HULL, '**/api/materials', 'hull 86-1'],
  [HULL, '**/api/parts/86-1-H', 'part 86-1-H'],
  [HULL, '**/api/hulls/86-1/lots', 'the lots in hull 86-1'],
  ['/lots', '**/api/lots?**', 'lots'],
  ['/lots', '**/api/materials', 'the materials to choose from'],
  [LOT, '**/api/lots/R-BAD', 'lot R-BAD'],
  [LOT, '**/api/lots/R-BAD/hulls?**', 'hulls and parts'],
  [DEFECT, '**/api/defects/*', 'the defect and the lots at its place'],
  [DEFECT, '**/api/defects/*/lots', 'the defect and the lots at its place'],
  ['/store', '**/api/tanks', 'the tanks'],
  ['/store', '**/api/materials', 'the materials'],
  ['/store', '**/api/lots?state=**', 'lots in quarantine'],
  ['/store', '**/api/lots?origin=**', 'unidentified lots'],
  ['/store', '**/api/balances?**', 'lots that do not balance'],
  ['/store?material=RES-VE', '**/api/materials/RES-VE/stock', 'the stock'],
  ['/store/lots/R-BAD', '**/api/lots/R-BAD/store', 'what the store knows of lot R-BAD'],
  ['/store/lots/R-BAD', '**/api/lots/R-BAD/balance', 'the balance'],
  ['/store/receive', '**/api/materials', 'the materials'],
  ['/store/mix', '**/api/materials', 'the materials'],
  ['/tanks/T1', '**/api/tanks', 'tank T1'],
  ['/tanks/T1', '**/api/lots/T1-2', 'What is in it now'],
  ['/labels?of=lot&codes=R-BAD', '**/api/label-stock', 'the label stock'],
  ['/quality', '**/api/waiting?**', 'things that wait'],
  ['/quality', '**/api/nonconformities?**', 'open nonconformities'],
  ['/quality', '**/api/unproved-entries', 'the unproved entries'],
  ['/quality', '**/api/kept-entries', 'the kept entries'],
  ['/quality/release', '**/api/hulls?**', 'hulls'],
  ['/quality/counts', '**/api/defect-counts?**', 'the counts'],
  ['/quality/counts', '**/api/hull-counts', 'the hulls by where they are'],
  ['/quality/concessions', '**/api/concessions?**', 'concessions'],
  ['/charts', '**/api/charts', 'charts'],
  ['/charts/wet%20film?model=TS86&layer=L1', '**/api/charts/wet%20film?**', 'the chart'],
  ['/people', '**/api/people', 'the people'],
  ['/people/INS-1', '**/api/people/INS-1/open-id-links', 'the accounts of the office'],
  ['/devices', '**/api/devices', 'the devices'],
  ['/tokens', '**/api/tokens', 'the tokens'],
  ['/equipment', '**/api/equipment', 'the equipment'],
  ['/equipment/MG-1', '**/api/equipment/MG-1/checks', 'the checks'],
  ['/molds', '**/api/models', 'the models'],
  ['/equipment/MG-1', '**/api/equipment/MG-1/suspects?**', 'suspect readings and uses'],
  ['/molds', '**/api/molds', 'the molds'],
  ['/molds/M-86-1', '**/api/molds/M-86-1', 'mold M-86-1'],
  ['/models', '**/api/models', 'the models'],
  ['/models/TS86', '**/api/models', 'model TS86'],
  ['/models/TS86/schedule?part=deck', '**/api/materials', 'the model and the materials'],
  ['/claims', '**/api/claims?**', 'claims'],
  ['/claims/new?hull=86-1', '**/api/dealers', 'hull 86-1'],
  ['/warranty', '**/api/models', 'the models to choose from'],
  ['/warranty', '**/api/models/*/warranty-terms', 'the warranty terms'],
  ['/cases', '**/api/cases?**', 'cases'],
  ['/cases/NONE', '**/api/cases/NONE', 'case NONE'],
  ['/owners', '**/api/owners?**', 'owners'],
  ['/owners/hulls/86-1', '**/api/hulls/86-1/redactable', 'Texts and photos that may show somebody'],
  [SEARCH, '**/api/hulls?**', 'hulls'],
  [SEARCH, '**/api/lots?**', 'lots'],
  [SEARCH, '**/api/shared-lots', 'shared lots'],
  ['/l/lot/R-BAD', '**/api/label-target?**', 'Label'],
] as const;

/** Requests of a page that do not fail, but are not there in the story either. */
const FOUND = [[DEFECT, '**/api/defects/**']] as const;

describe('a request that fails', () => {
  // One page for all: its browser has the files of the app after the first, and reads what it shows anew for each.
  let stands: Page;
  beforeAll(async () => {
    await openIn('failing', '/settings');
    stands = page;
  });

  it.each(REQUESTS)('of %s, %s, is said to be: %s', async (address, path, what) => {
    for (const [from, others] of FOUND)
      if (from === address) await stands.route(others, (route) => route.fulfill({ json: {} }));
    await stands.route(path, (route) => route.fulfill({ status: 503, body: 'no' }));
    await stands.goto(`${service.url}${address}`);
    const alert = stands.getByRole('alert').filter({ hasText: `Not read: ${what}.` });
    await alert.getByText('The service failed (503).').waitFor();
    expect(await alert.getByRole('button', { name: 'Try again' }).count()).toBe(1);
    await stands.unrouteAll();
  });

  it('of what the service knows of the demo is said too', async () => {
    await open('/settings');
    await page.route('**/health/ready', (route) => route.abort());
    await page.goto(new URL('/', page.url()).href);
    await page.getByRole('status').getByText('does not say whether it is ready').waitFor();
    await watched.close();
  });

  it('of the next page of a list leaves the list, and is tried again', async () => {
    await open('/');
    const rows = rowsOf('The hulls begun last');
    await rows.first().waitFor();
    await page.route('**/api/hulls?**cursor=**', (route) => route.abort());
    await page.getByRole('button', { name: 'Show more hulls' }).click();
    const alert = page.getByRole('alert').filter({ hasText: 'Not read: more hulls.' });
    await alert.getByText('does not answer').waitFor();
    expect(await rows.count()).toBe(5);
    await page.unroute('**/api/hulls?**cursor=**');
    await alert.getByRole('button', { name: 'Try again' }).click();
    await page.getByText(/^All hulls: \d+\.$/).waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    await watched.close();
  });

  it('of a page itself is said, in its place', async () => {
    await open('/hulls');
    await rowsOf('Hulls, the newest first').first().waitFor();
    await page.route('**/assets/settings-page-*.js', (route) => route.abort());
    await page.getByRole('link', { name: 'Settings' }).click();
    await page.getByRole('alert').filter({ hasText: 'Not read: the page.' }).getByText('does not answer').waitFor();
    await watched.close();
  });
});

describe('what was read and cannot be read anew', () => {
  it('stays, and says when it was read', async () => {
    await open('/hulls/86-1');
    await rowsOf('Received lots, by role').first().waitFor();
    await page.clock.install();
    await page.route('**/api/**', (route) => route.abort());
    await page.clock.fastForward(60_000);
    await page.evaluate("dispatchEvent(new Event('visibilitychange'))");
    const stale = page.getByRole('status').filter({ hasText: /As read at \d+ \w+ \d{4}, \d\d:\d\d\./ });
    await stale.first().waitFor();
    expect(await rowsOf('Received lots, by role').count()).toBeGreaterThan(0);
    await page.unroute('**/api/**');
    await stale.first().getByRole('button', { name: 'Try again' }).click();
    await watched.close();
  });
});

describe('a field that the service finds wrong', () => {
  it('is named where it stands', async () => {
    await open('/search?hulls=86-1,nowhere');
    const field = page.getByLabel('Hull numbers or HINs');
    await page.getByRole('alert').getByText('There is no hull nowhere.').waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    const ids = (await field.getAttribute('aria-describedby'))?.split(' ') ?? [];
    const told = await Promise.all(ids.map((id) => page.locator(`[id="${id}"]`).innerText()));
    expect(told.join(' ')).toContain('There is no hull nowhere.');
    await watched.close();
  });
});

describe('a service that asks who one is', () => {
  it('is answered by the page of signing in, with the way back', async () => {
    await open('/settings');
    await page.route('**/api/lots?**', (route) => route.fulfill({ status: 401, json: { detail: 'Sign in.' } }));
    await page.getByRole('link', { name: 'Lots' }).click();
    await page.getByRole('heading', { name: 'Sign in' }).waitFor();
    expect(new URL(page.url()).searchParams.get('from')).toBe('/lots');
    await watched.close();
  });
});
