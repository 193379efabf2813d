import type { PartView, RepairView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { table, type Column } from '../platform/table.js';
import { figure, moment } from '../platform/words.js';
import { mark, stamp } from '../marks/mark.js';
import { CAUTIONS } from '../trade.js';
import { readingsOf } from './readings.js';
import { verdictsOf } from './verdicts.js';
import { usedList } from './used.js';

/** The repairs of a part as they were done, each accepted by another person or still waiting for one. */
export const repairsOf = ({ repairs, number }: PartView): Child =>
  repairs.length === 0
    ? null
    : [h('h3', {}, 'Repairs'), table(`Repairs of ${number}, as done`, COLUMNS, repairs), cautions()];

const COLUMNS: readonly Column<RepairView>[] = [
  { head: 'Mark', cell: (repair) => repair.mark, names: true, class: 'n' },
  { head: 'Of', cell: ({ defects }) => defects.join(', '), class: 'n' },
  { head: 'What was done', cell: done },
  { head: 'Lots used', cell: ({ used }) => usedList(used) },
  { head: 'Readings', cell: ({ readings, verdicts }) => [readingsOf(readings), verdictsOf(verdicts)] },
  { head: 'Accepted', cell: acceptance },
];

function done({ procedure, taperRatio, grindOutMm, plies, doneBy, happenedAt }: RepairView): Child {
  const size =
    grindOutMm && [grindOutMm.lengthMm, grindOutMm.widthMm, grindOutMm.depthMm].map((side) => figure(side, 4));
  const details = [
    ...(taperRatio === null ? [] : [`taper ${taperRatio}:1`]),
    ...(size === null ? [] : [`ground out ${size.join(' × ')} mm`]),
    ...plies,
  ];
  return [
    h('p', {}, procedure),
    h('p', {}, details.join(', ')),
    h('p', { class: 'note soft' }, moment(happenedAt), `, by ${doneBy.join(', ')}`),
  ];
}

function acceptance({ acceptance: given }: RepairView): Child {
  if (given === null) return mark('near', 'waits for acceptance by another person');
  const who = [`${given.by} · `, moment(given.at)];
  const note = given.note === null ? null : h('p', { class: 'note' }, given.note);
  return given.accepted ? [stamp('accepted · ', who), note] : [mark('outside', 'refused · ', who), note];
}

const cautions = (): Child =>
  h(
    'details',
    { class: 'note' },
    h('summary', {}, 'This says what was done; it is no instruction. Cautions for repair work'),
    h(
      'ul',
      {},
      CAUTIONS.repair.map((caution) => h('li', {}, caution)),
    ),
  );
