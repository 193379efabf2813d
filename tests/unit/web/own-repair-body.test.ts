import { describe, expect, it } from '@jest/globals';
import type { Place } from '@hull-record/trade';
import { repairOf, tickOf } from '../../../apps/web/src/own-hulls/repair-body.js';

const PLACE: Place = { surface: 'shell', side: 'port', fromTransomMm: 3_700, girthMm: 925 };
const OPEN = ['1', '2'].map((id) => ({
  ...{ id, mark: `D${id}`, part: 'H', kind: 'gouge', place: PLACE, zone: 'bottom', state: 'open' as const },
}));
const TYPED = { procedure: 'Ground out.', at: 'Yard', toldBy: 'sheet 1', doneOn: '2026-01-04' };
const bodyOf = (typed: Readonly<Record<string, string>>, place?: Place) =>
  repairOf((name) => ({ ...TYPED, ...typed })[name as 'at'] ?? '', 'H', OPEN, place);

describe('an outside repair as it is typed', () => {
  it('is sent with what is ticked, and without what was left out', () => {
    expect(bodyOf({ [tickOf('2')]: 'yes' })).toEqual({
      ...{ part: 'H', defects: ['2'], spots: [], procedure: 'Ground out.', plies: [] },
      outside: { at: 'Yard', toldBy: 'sheet 1', doneOn: '2026-01-04' },
    });
  });

  it.each([
    ['a spot with its kind and place', { spotKind: 'gouge' }, PLACE, { spots: [{ kind: 'gouge', place: PLACE }] }],
    [
      'a kind without a place, for the service to ask for it',
      { spotKind: 'gouge' },
      undefined,
      { spots: [{ kind: 'gouge' }] },
    ],
    ['a place without a kind, for the service to ask for it', {}, PLACE, { spots: [{ kind: '', place: PLACE }] }],
    ['plies line by line', { plies: ' mat 450 \n\nmat 300' }, undefined, { plies: ['mat 450', 'mat 300'] }],
    ['a decimal comma', { taperRatio: '12,5' }, undefined, { taperRatio: 12.5 }],
    ['some of what goes together', { depthMm: '3' }, undefined, { grindOutMm: { depthMm: 3 } }],
    ['what is no number', { patchMm: 'thin' }, undefined, { geometry: { patchMm: Number.NaN } }],
    [
      'words that may be left out',
      { note: ' n ', material: 'm' },
      undefined,
      { note: 'n', outside: { material: 'm' } },
    ],
  ] as const)('sends %s', (_what, typed, place, sent) => {
    expect(bodyOf(typed, place)).toMatchObject(sent);
  });
});
