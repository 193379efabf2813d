import { expect } from '@jest/globals';
import { Shop } from '../../support/shop.js';
import { taken } from '../../support/photos.js';
import { page, service } from '../stage.js';

const PIN = '271905';

export const TABLET = { viewport: { width: 800, height: 1280 }, hasTouch: true };

/** What a person did at the screen: what was touched, and what was typed into. */
export interface Effort {
  taps: number;
  fields: number;
}

/** A person at the tablet, whose taps and fields are counted. */
export const atTablet = (effort: Effort = { taps: 0, fields: 0 }) => ({
  effort,
  tap: async (role: 'button' | 'link' | 'radio' | 'checkbox', name: string | RegExp): Promise<void> => {
    effort.taps += 1;
    const control = page.getByRole(role, { name }).first();
    // A choice is drawn as a key; its input lies in it unseen.
    if (role === 'radio' || role === 'checkbox') await page.locator('label').filter({ has: control }).first().click();
    else await control.click();
  },
  type: async (label: string | RegExp, text: string): Promise<void> => {
    effort.fields += 1;
    await page.getByLabel(label).first().fill(text);
  },
  /** Touches the whole hull map, at fractions of its width and height. */
  touchHull: async (x: number, y: number): Promise<void> => {
    effort.taps += 1;
    const map = page.locator('.touch-map .map');
    const box = (await map.boundingBox())!;
    await map.click({ position: { x: box.width * x, y: box.height * y } });
  },
  /** The camera gives a photo. */
  photograph: async (width = 1_200, height = 900): Promise<void> => {
    effort.taps += 1;
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'shot.jpg', mimeType: 'image/jpeg', buffer: await taken(width, height) });
  },
});

export type Person = ReturnType<typeof atTablet>;

/** Takes somebody on, with a PIN chosen by a one-time code. Who was signed in before would be signed out by it. */
export const takeOn = async (badge: string, role: string): Promise<void> => {
  const shop = new Shop(service);
  await shop.act('/api/people', { badge, name: `Person ${badge}`, roles: [role] });
  const { body } = await shop.post(`/api/people/${badge}/first-codes`, {});
  const answer = await fetch(`${service.url}/api/first-sign-in`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: service.url },
    body: JSON.stringify({ badge, code: body['code'], secret: PIN }),
  });
  expect([badge, answer.status]).toEqual([badge, 200]);
};

/** From a tablet that nobody has to the page of a part. */
export const begin = async (person: Person, badge: string, part: string): Promise<void> => {
  await person.tap('link', /Take over|nobody/i);
  await person.type('Badge', badge);
  await person.type('PIN', PIN);
  await person.tap('button', 'Take it over');
  await person.tap('link', /^Defects and repairs/);
  await person.type('Hull or part', part);
  await person.tap('button', 'Open');
  await page.getByRole('link', { name: 'Log a defect' }).waitFor();
};

export interface DefectRow {
  readonly id: string;
  readonly kind: string;
  readonly photos: number;
}

/** The defects of a part as the database has them, with how many photos each has. */
export const defectsOf = (part: string): Promise<readonly DefectRow[]> =>
  service.asOwner<DefectRow>(
    `select d.root as id, d.kind, (select count(*)::int from fact.photo p where p.defect_id = d.root) as photos
     from fact.defect d join fact.part t on t.id = d.part_id where t.number = '${part}' order by d.number`,
  );
