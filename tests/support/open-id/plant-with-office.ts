import { AccessSettings } from '../../../apps/service/src/platform/access/settings.js';
import { startService, type RunningService, type ToStart } from '../service.js';
import { Shop } from '../shop.js';
import { startProvider, type RunningProvider } from './start-provider.js';
import type { Visitor } from './visitor.js';

/** A service with the sign-in of an office, the office's provider, and people in the shop. */
export interface PlantWithOffice {
  readonly service: RunningService;
  readonly provider: RunningProvider;
  readonly shop: Shop;
  close(): Promise<void>;
}

/** Opens it with QUA-01 of quality, whose account is `ada`, and LAM-01, who has none. */
export const openPlantWithOffice = async (
  ofProvider: Readonly<Record<string, string>> = {},
  more: Pick<ToStart, 'webDir'> = {},
): Promise<PlantWithOffice> => {
  const provider = await startProvider(ofProvider);
  const service = await startService({ access: new AccessSettings({ openId: provider.set }), ...more });
  const shop = new Shop(service);
  await shop.act('/api/people', { badge: 'QUA-01', name: 'Invented one', roles: ['quality'] });
  await shop.act('/api/people', { badge: 'LAM-01', name: 'Invented two', roles: ['laminator'] });
  await shop.post('/api/people/QUA-01/open-id-links', { subject: 'ada' });
  const close = async (): Promise<void> => {
    await service.close();
    await provider.stop();
  };
  return { service, provider, shop, close };
};

/** Badge and device of who is signed in at a visitor's browser, as a page of the service is told. */
export const whoIsAt = async (
  visitor: Visitor,
  url: string,
): Promise<{ badge: string | null; device: string | null }> => {
  const answer = await fetch(`${url}/api/session`, { headers: { cookie: visitor.header(url) } });
  const { person, device } = (await answer.json()) as { person: { badge: string } | null; device: string | null };
  return { badge: person?.badge ?? null, device };
};
