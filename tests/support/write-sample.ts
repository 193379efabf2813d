import { type Fields, type Shop } from './shop.js';

/** A request that will be recorded, made for one route, and a change that makes another request of it. */
export interface Sample {
  readonly path: string;
  readonly fields: Fields;
  readonly other: Fields;
  readonly photo?: Uint8Array;
}

/** Makes a sample with all that it needs; `n` is new at each call, for codes. */
export type MakeSample = (shop: Shop, n: string) => Promise<Sample>;

export const plain =
  (path: string, fields: (n: string) => Fields, other: Fields): MakeSample =>
  async (_shop, n) => ({ path, fields: fields(n), other });

export const NOTE = { note: 'another note' };
export const STATION = { station: 'another station' };

export const received = async (shop: Shop, n: string): Promise<string> => {
  await shop.receive(`${n}-lot`, 'RES-VE');
  return `${n}-lot`;
};

/** One lot used, in pounds and with a trailing zero, as people type. */
export const used = async (shop: Shop, n: string): Promise<Fields> => ({
  used: [{ lot: await received(shop, n), amount: { quantity: '18.50', unit: 'lb', basis: 'metered' } }],
});
