import type { LotView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { empty, facts, heading, link, section, type Page } from '../platform/page.js';
import { region } from '../platform/region.js';
import type { Route } from '../platform/route.js';
import { lotReportPath, readLot } from '../platform/calls.js';
import { amountWords, calendarDay, kilograms, moment } from '../platform/words.js';
import { recomputingNote } from '../platform/recomputing-note.js';
import { verdictsOf } from '../hulls/verdicts.js';
import { lotState } from '../marks/mark.js';
import { hullsThatHold } from './hulls-that-hold.js';
import { ORIGIN_WORDS } from './lot-list.js';
import { certificate, composition, inputs, states } from './lot-tables.js';

/** One lot: what it is, what it is made of, and which hulls hold it. */
export const lotPage = (route: Route, code: string): Page => ({
  title: `Lot ${code}`,
  content: [
    heading(code, 'Lot'),
    region({
      what: `lot ${code}`,
      load: () => readLot(code),
      show: (lot) => show(lot, route),
      notThere: () =>
        empty(
          `There is no lot ${code}. Check it against the label, or look for part of it in the `,
          link('#/lots', 'list of lots'),
          '.',
        ),
    }),
  ],
});

const show = (lot: LotView, route: Route): Child => [
  h('p', { class: 'verdict' }, lotState(lot.state)),
  facts([
    ['Material', lot.materialName],
    ['Role', lot.role],
    ['Origin', ORIGIN_WORDS[lot.origin] ?? lot.origin],
    ['Tank', lot.tank],
    ['Supplier', lot.supplier],
    ["Supplier's lot", lot.supplierLot === null ? null : h('span', { class: 'n' }, lot.supplierLot)],
    ['Amount', `${amountWords(lot.amount)}, ${lot.amount.basis}`],
    ['Made', lot.madeOn === null ? null : calendarDay(lot.madeOn)],
    ['Last day of use', lot.expiresOn === null ? null : calendarDay(lot.expiresOn)],
    [lot.origin === 'received' ? 'Received' : 'Made here', moment(lot.happenedAt)],
    ['Used', kilograms(lot.usedKg)],
    ['Measured gain or loss', lot.adjustedKg === 0 ? null : kilograms(lot.adjustedKg)],
    ['Lost', lot.lostKg === 0 ? null : kilograms(lot.lostKg)],
    ['Left by the book', kilograms(lot.leftKg)],
  ]),
  h('p', {}, link(lotReportPath(lot.code), 'Lot report'), h('span', { class: 'soft' }, ' PDF, where it went')),
  recomputingNote(lot.recomputing),
  lot.verdicts.length === 0 ? null : section('Judged', verdictsOf(lot.verdicts)),
  section('Hulls that hold it', hullsThatHold(lot.code, route)),
  h('div', { class: 'pair' }, inputs(lot), composition(lot)),
  h('div', { class: 'pair' }, states(lot), certificate(lot)),
];
