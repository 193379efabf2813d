import { setTimeout as wait } from 'node:timers/promises';
import type { LookView } from '@hull-record/contracts';
import type { Fields, Shop } from './shop.js';

/** Looks at a case and waits until the job has answered; throws when it fails. */
export const looked = async (
  shop: Shop,
  code: string,
  fields: Fields = {},
  read: (path: string) => Promise<LookView> = (path) => shop.read(path),
): Promise<LookView> => {
  const { result } = await shop.receipt(`/api/cases/${code}/looks`, fields);
  for (let tries = 0; tries < 600; tries += 1) {
    const view = await read(`/api/cases/${code}/looks/${String(result['look'])}`);
    if (view.answer) return view;
    if (view.progress.state === 'failed') throw new Error(String(view.progress.trouble));
    await wait(100);
  }
  throw new Error('The look was not answered within a minute.');
};
