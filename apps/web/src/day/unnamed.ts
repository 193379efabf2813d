import type { PostBody } from '../api/contract.js';

type Unidentified = NonNullable<NonNullable<PostBody<'/api/layers'>['used']>[number]['unidentified']>;

/** What is known of material that nobody can name. */
export interface Unnamed {
  /** What it was taken for. */
  readonly role: string;
  readonly looks: string;
  readonly foundAt: string;
  /** Codes of the lots that it may be of, as typed; none: any of its role. */
  readonly likely: string;
  readonly photos: readonly File[];
}

/** Nothing is known yet but what it was taken for. */
export const unnamedFor = (role: string): Unnamed => ({ role, looks: '', foundAt: '', likely: '', photos: [] });

/** The material as it is recorded; null while nobody said what it looked like. */
export const unidentifiedOf = ({ role, looks, foundAt, likely }: Unnamed): Unidentified | null => {
  if (looks.trim() === '') return null;
  const place = foundAt.trim() === '' ? {} : { foundAt: foundAt.trim() };
  const codes = [...new Set(likely.split(/[\s,;]+/).filter((code) => code !== ''))];
  return { role: role as Unidentified['role'], looks: looks.trim(), ...place, likely: codes };
};
