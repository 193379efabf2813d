import type { HullView, PartView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { link, section } from '../platform/page.js';
import { recomputingNote } from '../platform/recomputing-note.js';
import { region } from '../platform/region.js';
import { table } from '../platform/table.js';
import { moment } from '../platform/words.js';
import { holdPointsPath, readPart, repairOrderPath } from '../platform/calls.js';
import { mark } from '../marks/mark.js';
import { defectsOf } from './defects.js';
import { laminateSection } from './laminate-section.js';
import type { Reference } from './reference.js';
import { repairsOf } from './repairs.js';

type PartOfHull = HullView['parts'][number];

/** One part of a hull: its laminate section, its defects on the hull map, its repairs. */
export const partSection = (part: PartOfHull, reference: Reference): HTMLElement =>
  section(
    `${part.kind.slice(0, 1).toUpperCase()}${part.kind.slice(1)} ${part.number}`,
    h(
      'p',
      { class: 'soft' },
      `Mold ${part.mold}, schedule version ${part.scheduleVersion}, ${part.layersMade} of ${part.layersScheduled} layers made; `,
      part.kind === 'hull molding' ? 'begun ' : 'joined ',
      moment(part.joinedAt),
    ),
    region({
      what: `part ${part.number}`,
      load: () => readPart(part.number),
      show: (view) => [
        recomputingNote(view.recomputing),
        papersOf(view),
        laminateSection(view, reference.materials),
        defectsOf(view, reference.model),
        repairsOf(view),
        nonconformitiesOf(view),
      ],
    }),
  );

/** Papers for the bay; an order to repair where a defect is open. */
const papersOf = ({ number, defects }: PartView): Child =>
  h(
    'p',
    {},
    link(holdPointsPath(number), 'Hold-point sheet'),
    ...(defects.some(({ state }) => state === 'open') ? [', ', link(repairOrderPath(number), 'Repair order')] : []),
    h('span', { class: 'soft' }, ' PDF'),
  );

const nonconformitiesOf = ({ nonconformities, number }: PartView): Child =>
  nonconformities.length === 0
    ? null
    : [
        h('h3', {}, 'Nonconformities'),
        table(
          `Where the making of ${number} broke a rule`,
          [
            { head: 'What', cell: ({ detail }) => detail, names: true },
            { head: 'When', cell: ({ happenedAt }) => moment(happenedAt) },
            {
              head: 'Decision',
              cell: ({ disposition }) => (disposition === null ? mark('outside', 'open') : mark('made', disposition)),
            },
          ],
          nonconformities,
        ),
      ];
