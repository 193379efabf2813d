import type { BuildRecordView } from './build-record-view.js';
import { facts, nothing } from './facts.js';
import type { Block } from './flow.js';
import type { Fonts } from './fonts.js';
import { para } from './paragraph.js';
import { cell, table } from './table.js';
import { heading, stamp } from './text-blocks.js';
import { titleBlock } from './title-block.js';

/** What the paper is, of which hull, as of when, how complete, and the facts of the hull's life. */
export const titleSection = (fonts: Fonts, view: BuildRecordView): readonly Block[] => [
  titleBlock(fonts, {
    ...{ plantName: view.plantName, name: 'Build record', of: 'hull number', code: view.hullNumber, toldBelow: true },
  }),
  facts(
    fonts,
    [
      ['Hull number', view.hullNumber, 'code-bold'],
      ['HIN', view.hin?.text ?? 'none assigned yet', view.hin === null ? 'body' : 'code-bold'],
      ['The HIN says', view.hin?.decoded.join('\n') ?? null],
      ['It goes', view.hin?.placement ?? null],
      ['Model', view.model],
      ['State as of', view.stateAsOf.text],
      ['Cut', view.cut],
      ['As an instant', view.stateAsOf.instant, 'code'],
    ],
    8,
  ),
  stamp(fonts, [para(view.completeness, 'bold')], view.complete),
  heading(fonts, 'Life of the hull', { level: 1, style: 'section', before: 14 }),
  view.lifeFacts.length === 0
    ? nothing(fonts, 'No facts of the hull’s life are recorded yet.')
    : table(
        fonts,
        [
          { title: 'When', share: 0.27 },
          { title: 'What', share: 0.35 },
          { title: 'Where, by', share: 0.38 },
        ],
        view.lifeFacts.map(({ when, what, whereBy }) => [cell(when), cell(what, 'bold'), cell(whereBy)]),
      ),
];
