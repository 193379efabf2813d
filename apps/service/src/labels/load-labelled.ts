import type { EntityManager } from 'typeorm';
import { LABELLED, type AskLabels, type Labelled } from '@hull-record/contracts';
import { findHulls } from '../platform/lookups/find-hull.js';
import { LABELLED_ROWS, type LabelledRow } from './labelled.sql.js';

/** What was asked for, with what is recorded of it; undefined where nothing is. */
export type Loaded = readonly (LabelledRow | undefined)[];

/** Loads what labels print, in the order asked, with a statement for each kind of thing. */
export const loadLabelled = async (tx: EntityManager, labels: AskLabels['labels']): Promise<Loaded> => {
  const found: (LabelledRow | undefined)[] = labels.map(() => undefined);
  for (const of of LABELLED) {
    const places = labels.flatMap((label, place) => (label.of === of ? [place] : []));
    if (places.length === 0) continue;
    const codes = places.map((place) => labels[place]?.code ?? '');
    for (const row of await load(tx, of, codes)) {
      const place = places[row.place - 1] ?? -1;
      found[place] ??= row;
    }
  }
  return found;
};

const load = async (tx: EntityManager, of: Labelled, codes: readonly string[]): Promise<readonly LabelledRow[]> => {
  if (of !== 'hull') return tx.query<LabelledRow[]>(LABELLED_ROWS[of], [codes]);
  const hulls = await findHulls(tx, codes);
  return tx.query<LabelledRow[]>(LABELLED_ROWS.hull, [codes.map((code) => hulls.get(code) ?? '')]);
};
