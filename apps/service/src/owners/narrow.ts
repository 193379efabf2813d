import type { OwnerDetail } from '@hull-record/contracts';

/** What is left of personal data, and the names of the fields that go. */
export interface Narrowed {
  readonly left: OwnerDetail;
  readonly erased: readonly string[];
}

/**
 * Narrows personal data to what a notice by mail needs: name and address (33 CFR 179.05, from memory: certified or
 * first-class mail to the first purchaser). Without an address, the way that is left stays.
 */
export const narrow = ({ name, address, email, phone }: OwnerDetail): Narrowed => {
  const left: OwnerDetail =
    address !== undefined
      ? { name, address }
      : { name, ...(email === undefined ? (phone === undefined ? {} : { phone }) : { email }) };
  const had = Object.entries({ address, email, phone }).filter(([, value]) => value !== undefined);
  return { left, erased: had.map(([field]) => field).filter((field) => !(field in left)) };
};
