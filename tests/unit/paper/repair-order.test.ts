import { describe, expect, it } from '@jest/globals';
import { drawRepairOrder } from '@hull-record/paper';
import { CAUTIONS } from '@hull-record/trade';
import { aDefect } from '../../support/paper-views.js';
import { PART } from '../../support/papers/hold-points-view.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { AS_PRINTED, drawn, LONG_NAME, OTHER_SCRIPTS, outOfOrder, structureOf } from '../../support/papers/paper.js';
import { aRepairOrder } from '../../support/papers/repair-order-view.js';
import { solid } from '../../support/read-pdf.js';

const draw = (changes: Parameters<typeof aRepairOrder>[0] = {}) =>
  drawn((created) => drawRepairOrder(aRepairOrder(changes), created));

describe('a repair order', () => {
  it('reads from the part to the grid: defects, map, laminate, cautions, what is filled in', async () => {
    const { text } = await draw();
    const words = [
      ...[
        'Repair order',
        'H-0147',
        'TS86-147',
        'This paper plans no repair.',
        'authority having jurisdiction come first',
      ],
      ...[
        'Never mix catalyst and promoter directly.',
        'Defects',
        'D4',
        'air bubble (void)',
        'layer 4',
        'D5',
        'grade 6M',
      ],
      ...['repair: open it up', 'Hull map with these marks alone', '2 marks.', 'Laminate that a patch replaces'],
      ...[
        'Bulk laminate, outer',
        'to come',
        'Layer',
        'TS86-L/1',
        'SG-8907',
        'TG-2611-04 (81 %)',
        'Cautions',
        'Grinding',
      ],
      ...[
        'Work done, to be filled in by hand',
        'accepts has done none of the work',
        'Taper ratio',
        'Lots used',
        'D4',
        'D5',
      ],
      ...[
        'further',
        'Air and surface',
        'humidity',
        'Barcol',
        'Done by',
        'Accepted by another person',
        'D4',
        'D5',
        'further',
      ],
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
  });

  it('has every caution in full', async () => {
    const { text } = await draw();
    for (const caution of Object.values(CAUTIONS).flat()) expect(text).toContain(caution.replace(/\s/gu, ''));
  });

  it('names the marks it is about on the map, and no other', async () => {
    const { text } = await draw();
    expect(text).not.toMatch(/D[126](?!\d)/);
  });

  it('is tagged, each field of the grid with what goes into it, and the same for the same view', async () => {
    const { bytes } = await draw();
    const { bookmarks, roles } = await structureOf(bytes);
    expect(bookmarks).toEqual([
      ...['Defects', 'Hull map with these marks alone', 'Laminate that a patch replaces', 'Cautions'],
      'Work done, to be filled in by hand',
    ]);
    expect([...roles]).toEqual(expect.arrayContaining(['Figure', 'H2', 'H3', 'Table', 'TD']));
    expect((await draw()).bytes.equals(bytes)).toBe(true);
  });

  it('says on every page what it is not', async () => {
    for (const page of (await draw()).pages) expect(solid([page])).toContain('Notanapprovedrepairprocedure');
  });

  it('holds 60 defects, long names and any script, without text over text', async () => {
    const defects = Array.from({ length: 60 }, (_, i) => aDefect({ mark: `D${i + 1}`, note: OTHER_SCRIPTS }));
    const paper = await draw({ part: { ...PART, number: LONG_NAME, mold: OTHER_SCRIPTS }, defects });
    expect(pageFaults(paper)).toEqual([]);
    for (const words of AS_PRINTED) expect(paper.text).toContain(words);
    for (let i = 1; i <= 60; i += 1)
      expect(paper.text.match(new RegExp(`D${i}(?!\\d)`, 'g'))?.length).toBeGreaterThan(2);
  });

  it('says where nothing is open that there is nothing to repair, and has no grid', async () => {
    const paper = await draw({ defects: [], map: undefined, layers: [] });
    expect(paper.text).toContain('thereisnothingtorepair');
    expect(paper.text).toContain('Nolayersarescheduledforthispart.');
    expect(paper.text).not.toContain('filledinbyhandTaper');
    expect(pageFaults(paper)).toEqual([]);
  });
});
