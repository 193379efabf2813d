import { describe, expect, it } from '@jest/globals';
import { PublishSchedule, type ScheduleView } from '@hull-record/contracts';
import * as fc from 'fast-check';
import { changesBetween } from '../../../apps/web/src/models/changes.js';
import { checkSchedule } from '../../../apps/web/src/models/schedule/check-schedule.js';
import { added, dropped, moved } from '../../../apps/web/src/models/schedule/rearrange.js';
import { bodyOf, draftOf, type LayerDraft } from '../../../apps/web/src/models/schedule/schedule-draft.js';
import { SCHEDULES } from '../../support/shop-stock.js';
import { fractionTyped, typedPercent } from '../../../apps/web/src/models/typed-figures.js';

const ENVELOPE = { id: '018f0000-0000-7000-8000-000000000001', enteredBy: 'QUA-1', device: 'DESK' };
const view = (layers: readonly object[], version = 1): ScheduleView => {
  const happenedAt = '2026-01-05T07:00:00Z';
  const parsed = PublishSchedule.parse({ ...ENVELOPE, happenedAt, partKind: 'deck', version, layers });
  return {
    ...{ id: ENVELOPE.id, model: 'TS86', partKind: 'deck', version, process: parsed.process },
    layers: parsed.layers.map((layer) => ({ ...layer, demand: null })),
  };
};

const FULL = {
  ...{ code: 'L2', name: 'Bulk', zone: 'bottom', plies: ['mat 450', 'biax 600'], areaM2: 12.5, lossAllowance: 0.07 },
  materials: [{ material: 'RES', target: { quantity: '20.50', unit: 'kg' } }, { material: 'MAT' }],
  laminate: { plies: [{ arealMass: { value: 1.5, unit: 'oz/ft2' }, fibreMassFraction: 0.33 }], tolerance: 0.15 },
  readings: [
    { what: 'thickness', spots: 4, limits: { min: 3, unit: 'mm' }, where: 'keel', source: 'drawing 7' },
    { what: 'wet film', spots: 3, limits: { min: 16, max: 20, unit: 'mil' } },
  ],
  climate: { airTemperature: { min: -2.5, max: 28, unit: 'F' } },
  layUpWindow: { earliestMinutes: 45, latestMinutes: 1440 },
  ...{ predecessors: ['L1'], holdPoint: 'HP 1' },
};
const L1 = { code: 'L1', name: 'Skin', materials: [{ material: 'RES' }] };
const L3 = { code: 'L3', name: 'Last', materials: [{ material: 'RES' }], predecessors: ['L2'] };

describe('the draft of a schedule', () => {
  it('begins as the version before, and sends the same layers when nothing was changed', () => {
    const before = view([L1, FULL, L3]);
    const sent = bodyOf(draftOf(before), 'deck', 2);
    expect(changesBetween(before, view(sent.layers as object[], 2))).toEqual({
      process: null,
      layers: [],
      order: null,
    });
    expect(sent.layers[1]).toMatchObject({ ...FULL, laminate: FULL.laminate });
  });

  it('does so for every schedule of the shop', () => {
    for (const { layers } of SCHEDULES) {
      const before = view(layers as object[]);
      expect(view(bodyOf(draftOf(before), 'deck', 1).layers as object[])).toEqual(before);
    }
  });

  it('keeps any fraction of a thousandth through its percentage', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), (n) => {
        expect(fractionTyped(typedPercent(n / 100_000))).toBe(n / 100_000);
      }),
    );
  });

  it('names each field that is empty or no figure, and nothing else', () => {
    const draft = draftOf(view([L1, FULL]));
    expect(checkSchedule(draft, String)).toEqual([]);
    const [first, second] = draft.layers as [LayerDraft, LayerDraft];
    const wrong = [
      { ...first, code: ' ', materials: [{ material: '', target: { quantity: '2o', unit: 'kg' } }] },
      { ...second, lossAllowance: '100', areaM2: 'x', layUpWindow: { earliestMinutes: '5', latestMinutes: '' } },
    ];
    expect(checkSchedule({ ...draft, layers: wrong }, String)).toEqual([
      { pointer: '/layers/0/code', detail: 'empty' },
      { pointer: '/layers/0/materials/0/material', detail: 'empty' },
      { pointer: '/layers/0/materials/0/target/quantity', detail: 'noFigure' },
      { pointer: '/layers/1/areaM2', detail: 'noFigure' },
      { pointer: '/layers/1/lossAllowance', detail: 'noPercent' },
      { pointer: '/layers/1/layUpWindow/latestMinutes', detail: 'empty' },
    ]);
    expect(checkSchedule(draftOf(undefined), String).map(({ pointer }) => pointer)).toEqual([
      '/layers/0/code',
      '/layers/0/name',
      '/layers/0/materials/0/material',
    ]);
  });
});

describe('layers that are rearranged', () => {
  const { layers } = draftOf(view([L1, FULL, L3]));
  const waits = (of: readonly LayerDraft[]) =>
    bodyOf({ basedOn: 1, process: '', layers: of }, 'deck', 2).layers.map(({ code, predecessors = [] }) => [
      code,
      ...predecessors,
    ]);

  it('stay in their chain when one is put in or taken out', () => {
    const more = added(layers, 0).map((layer) => (layer.code === '' ? { ...layer, code: 'NEW' } : layer));
    expect(waits(more)).toEqual([['L1'], ['NEW', 'L1'], ['L2', 'NEW'], ['L3', 'L2']]);
    expect(waits(dropped(more, 1))).toEqual(waits(layers));
    expect(waits(dropped(layers, 1))).toEqual([['L1'], ['L3', 'L1']]);
  });

  it('are followed when they are renamed, and go back where they came from', () => {
    const renamed = layers.map((layer) => (layer.code === 'L2' ? { ...layer, code: 'B' } : layer));
    expect(waits(renamed)).toEqual([['L1'], ['B', 'L1'], ['L3', 'B']]);
    expect(moved(moved(layers, 0, 1), 1, -1)).toEqual(layers);
    expect(moved(layers, 0, -1)).toEqual(layers);
    expect(moved(layers, 2, 1)).toEqual(layers);
  });
});

describe('what differs between two versions', () => {
  const before = view([L1, FULL, L3]);

  it('is told layer by layer: what came, what went, which fields', () => {
    const now = view([L1, { ...FULL, lossAllowance: 0.1, plies: ['mat 450'] }, { ...L1, code: 'L4' }], 2);
    const { layers, order } = changesBetween(before, now);
    expect(layers.map((each) => [each.kind, each.layer.code, each.kind === 'changed' ? each.fields : []])).toEqual([
      ['changed', 'L2', ['plies', 'lossAllowance']],
      ['added', 'L4', []],
      ['removed', 'L3', []],
    ]);
    expect(order).toBeNull();
  });

  it('is the order too, where no layer changed', () => {
    expect(changesBetween(before, view([FULL, L1, L3]))).toEqual({
      process: null,
      layers: [],
      order: [
        ['L1', 'L2', 'L3'],
        ['L2', 'L1', 'L3'],
      ],
    });
  });
});
