import { describe, expect, it } from '@jest/globals';
import { IMAGE } from '../../support/page-story.js';
import { close, open, page, rowsOf, service, watched } from '../stage.js';

describe('what people typed', () => {
  it.each(['/hulls/86-1', '/lots/R-ODD', '/lots', `/search?for=${encodeURIComponent(IMAGE)}`])(
    'stays text at %s',
    async (address) => {
      await open(address);
      await page.getByText(IMAGE).first().waitFor();
      expect(await page.evaluate('window.ran')).toBeUndefined();
      expect(await page.locator('main script, main img').count()).toBe(0);
      await close();
    },
  );
});

describe('when the service fails', () => {
  it('says what was not read and reads it at the next try', async () => {
    await open('/');
    await page.route('**/api/hulls/86-1', (route) => route.fulfill({ status: 500, body: '{"detail":"inner words"}' }));
    await page.goto(`${service.url}/hulls/86-1`);
    const alert = page.getByRole('alert');
    await alert.waitFor();
    expect(await alert.innerText()).toMatch(
      /Not read: hull 86-1\.[^]*The service failed \(500\)\. Nothing was changed\./,
    );
    await page.unroute('**/api/hulls/86-1');
    await alert.getByRole('button', { name: 'Try again' }).click();
    await page.getByRole('heading', { name: 'Hull molding 86-1-H' }).waitFor();
    await watched.close();
  });

  it('says so when nothing answers', async () => {
    await open('/');
    await page.route('**/api/lots**', (route) => route.abort());
    await page.goto(`${service.url}/lots`);
    await page.getByRole('alert').filter({ hasText: 'Not read: lots.' }).getByText('does not answer').waitFor();
    await watched.close();
  });

  it('says that it loads until the answer is there', async () => {
    await open('/');
    let answer: () => void = () => undefined;
    const asked = new Promise<void>((resolve) => (answer = resolve));
    await page.route('**/api/lots/R-BAD', async (route) => asked.then(() => route.continue()));
    await page.goto(`${service.url}/lots/R-BAD`);
    await page.getByText('Loading lot R-BAD …').waitFor();
    answer();
    await rowsOf('Hulls and parts that hold lot R-BAD').first().waitFor();
    await close();
  });
});
