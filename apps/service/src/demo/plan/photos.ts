import type { Seen } from '../drawings/invented-photo.js';
import { draft, type Draft, type Seeded } from './step.js';
import { later } from './working-days.js';

/** Defects of which somebody takes photos, by the name of their report: what is to be seen, and how many. */
const PHOTOGRAPHED: Readonly<Record<string, { readonly seen: Seen; readonly count: number }>> = {
  'TS86-118-H defect 1': { seen: 'voids', count: 1 },
  'hull TS86-118 blistered': { seen: 'blisters', count: 3 },
  'hull TS62-103 blistered': { seen: 'blisters', count: 2 },
};

/** Adds the photos that whoever reports a defect takes of it, a minute apart; the defect of a claim is its second row. */
export const withPhotos = (demo: Seeded, drafts: readonly Draft[]): readonly Draft[] =>
  drafts.flatMap((each) => {
    const { count } = (['reportDefect', 'fileClaim'].includes(each.act) && PHOTOGRAPHED[each.name]) || { count: 0 };
    const photos = Array.from({ length: count }, (_, i) =>
      draft(
        'addPhoto',
        {
          name: `${each.name} photo ${i + 1}`,
          at: later(each.at, i + 1),
          by: each.by,
          of: demo.id(each.name, each.act === 'fileClaim' ? 1 : 0),
        },
        {},
      ),
    );
    return [each, ...photos];
  });

/** What is to be seen on a photo, by the name of its step. */
export const seenOn = (name: string): Seen => PHOTOGRAPHED[name.replace(/ photo \d+$/, '')]?.seen ?? 'voids';
