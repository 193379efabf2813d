import type { Answer, Fields, Shop } from './shop.js';

/** The cookie of an enrolled browser. */
export interface EnrolledBrowser {
  readonly cookie: string;
}
export type Sent = Answer;

/** Registers a device and enrols a browser as it, as an administrator and a tablet do. */
export const device = async (shop: Shop, code: string): Promise<EnrolledBrowser> => {
  await shop.act('/api/devices', { code, description: `Tablet ${code}`, ratedForClassifiedArea: false });
  return enrol(shop, code);
};

/** Enrols a browser as a registered device. */
export const enrol = async (shop: Shop, code: string): Promise<EnrolledBrowser> => {
  const { status, body } = await shop.post(`/api/devices/${code}/enrolment-codes`, {});
  if (status !== 200) throw new Error(`${status} ${JSON.stringify(body)}`);
  const answer = await fetch(`${shop.url}/api/enrolments`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ code: body['code'] }),
  });
  if (answer.status !== 200) throw new Error(`${answer.status} ${await answer.text()}`);
  return { cookie: (answer.headers.get('set-cookie') ?? '').split(';')[0] as string };
};

/** Sends what waited on a device, under the credential of the device. */
export const sendUnder = async (
  shop: Shop,
  { cookie }: EnrolledBrowser,
  path: string,
  fields: Fields,
): Promise<Sent> => {
  const answer = await fetch(`${shop.url}${path}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie, 'x-hull-record-queued': '1' },
    body: JSON.stringify(shop.envelope(fields)),
  });
  return { status: answer.status, body: (await answer.json()) as Answer['body'] };
};
