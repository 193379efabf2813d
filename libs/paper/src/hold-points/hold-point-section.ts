import { defectsTable, nonconformitiesTable } from '../defects-section.js';
import { facts, nothing } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { sectionHeading, subHeading } from '../papers/sections.js';
import { signField } from '../papers/sign-field.js';
import { para } from '../paragraph.js';
import { readingsTables } from '../readings-tables.js';
import { stamp, text } from '../text-blocks.js';
import { verdictsTable } from '../verdicts-table.js';
import type { HoldPointView } from './hold-points-view.js';

/** One hold point: what was made, what was read, what is open, and the signature or the field for it. */
export const holdPointSection = (fonts: Fonts, point: HoldPointView): readonly Block[] => [
  sectionHeading(fonts, `${point.name}, ${point.layer}`),
  ...madeBlocks(fonts, point),
  ...openBlocks(fonts, point),
  signature(fonts, point),
];

const madeBlocks = (fonts: Fonts, { made, readings, missing, verdicts }: HoldPointView): readonly Block[] =>
  made === null
    ? [nothing(fonts, 'The layer is to come: nothing is made or read yet.')]
    : [
        facts(
          fonts,
          [
            ['Made', made.when],
            ['Made by', made.doneBy.join(', '), 'code'],
            ['Entered by', made.enteredBy, 'code'],
            ['Climate', made.climate],
          ],
          0,
        ),
        ...readingsTables(fonts, readings),
        ...(readings.length === 0 ? [nothing(fonts, 'No readings are recorded for this layer.')] : []),
        ...(missing.length === 0
          ? []
          : [
              text(
                fonts,
                missing.map((sentence) => para(`Not complete. ${sentence}`, 'bold')),
              ),
            ]),
        ...verdictsTable(fonts, verdicts),
      ];

const openBlocks = (fonts: Fonts, { nonconformities, defects }: HoldPointView): readonly Block[] => [
  ...(nonconformities.length === 0
    ? [nothing(fonts, 'No nonconformity of this layer is open.')]
    : [subHeading(fonts, 'Open nonconformities of this layer'), nonconformitiesTable(fonts, nonconformities)]),
  ...(defects.length === 0
    ? [nothing(fonts, 'No defect of this layer is open.')]
    : [
        subHeading(fonts, 'Open defects of this layer'),
        defectsTable(fonts, defects),
        ...verdictsTable(
          fonts,
          defects.flatMap(({ verdicts }) => verdicts),
        ),
      ]),
];

const signature = (fonts: Fonts, { name, made, signature: signed }: HoldPointView): Block => {
  if (signed !== null) return stamp(fonts, [para(name, 'bold'), para(signed)], true);
  if (made === null) return stamp(fonts, [para(name, 'bold'), para('not signed: the layer is not made')], false);
  const makers = made.doneBy.join(', ');
  return signField(
    fonts,
    `${name}: not signed`,
    `To be signed by one who did not make the layer. It was made by ${makers}.`,
  );
};
