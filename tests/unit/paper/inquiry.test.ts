import { describe, expect, it } from '@jest/globals';
import { drawInquiry } from '@hull-record/paper';
import { aClass, aGroup, anInquiry, aRow, aTriangle } from '../../support/papers/inquiry-view.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { AS_PRINTED, drawn, LONG_NAME, OTHER_SCRIPTS, outOfOrder, structureOf } from '../../support/papers/paper.js';
import { readAlternatives } from '../../support/papers/read-images.js';
import { solid } from '../../support/read-pdf.js';

const draw = (changes: Parameters<typeof anInquiry>[0] = {}) =>
  drawn((created) => drawInquiry(anInquiry(changes), created));

describe('an inquiry report', () => {
  it('reads from the word and the triangle to how it is worked out again', async () => {
    const { text } = await draw();
    const words = [
      ...[
        'Tarrow Sound Boats',
        'Inquiry report',
        'C-1',
        'Blisters of the spring',
        'look 2 of 3',
        '2026-11-26T14:30:00Z',
      ],
      ...['Strong: claims are associated with VE-118.', '6 of 23 hulls at risk', 'Exploratory'],
      ...['Claims by build month', 'begun', 'months in service', '2026-01', 'left the place of manufacture'],
      ...['Hulls that are compared', 'How it is judged', 'Time origin', 'Lots compared', '9 classes were tested'],
      ...['VE-118', '6 of 7 hulls', '3.3', '1.2 to 7.2', 'p 0.00007', 'q 0.00042', 'strong', 'observed / expected'],
      ...['The raw table beside it', '6 / 1', '0 / 16', 'they agree', 'What each class is', 'AR-60622-1'],
      ...['Share, and how sure', '1 %: 6 of 8', '3 % to 100 %', 'z 1.9', '0.98 to 0.999', 'adjusted p 0.002'],
      ...['Lots that cannot be judged', 'MAT-A', 'Lots that together go with most claims', 'Runner-up', 'MAT-B'],
      ...['What else they have in common', 'No people', 'MO-1', 'does not stand out'],
      ...['Where on the hull', 'port', 'midship, inner half, port', 'Where nobody looked'],
      ...['how many more to expect', '1826 days', 'Hulls without a claim', '90 % interval', '2026-10', '0.20'],
      ...[
        'What the data cannot say',
        'What would settle it',
        'Methods and their sources',
        'Mantel 1966',
        'a'.repeat(64),
      ],
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
  });

  it('says on every page what it is, that it is associated with, and when counsel asked for it', async () => {
    const { pages } = await draw({ counsel: 'Prepared at the direction of counsel.' });
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      const text = solid([page]);
      expect(text).toContain('CaseC-1·Inquiryreport·stateasof26Nov202609:30UTC−5');
      expect(text).toContain('Preparedatthedirectionofcounsel.');
      expect(text).toContain('whatthey are associated with'.replaceAll(' ', ''));
    }
    expect((await draw()).text).not.toContain('counsel');
  });

  it('is tagged, with a bookmark for each section, and the triangle is the first picture', async () => {
    const { bytes } = await draw();
    const { bookmarks, roles } = await structureOf(bytes);
    expect(bookmarks).toEqual([
      ...['Claims by build month and months in service', 'Hulls that are compared', 'How it is judged'],
      ...['Lots compared', 'Lots that cannot be judged', 'Lots that together go with most claims'],
      ...['What else they have in common', 'Where on the hull', 'By age, and how many more to expect'],
      ...['What the data cannot say', 'What would settle it', 'Methods and their sources', 'To work it out again'],
    ]);
    expect([...roles]).toEqual(expect.arrayContaining(['Document', 'Sect', 'H2', 'Table', 'TH', 'TD', 'Figure', 'P']));
    const said = await readAlternatives(bytes);
    expect(said[0]).toBe(
      'Triangle of hulls begun from 2026-01 to 2026-03 by months in service: 9 claims, most of them, 3, of hulls begun in 2026-01.',
    );
    expect(said[1]).toBe('VE-118: observed over expected 3.3, 1.2 to 7.2; strong.');
    expect(said.filter((alt) => alt.trim() === '')).toEqual([]);
  });

  it('has the same bytes for the same view, and others for another', async () => {
    const [one, again, other] = [await draw(), await draw(), await draw({ look: 'look 3 of 3' })];
    expect(again.bytes.equals(one.bytes)).toBe(true);
    expect(other.bytes.equals(one.bytes)).toBe(false);
  });

  it('names inseparable lots as one class, and says where the raw table differs', async () => {
    const together = 'In exactly the same hulls: one suspect, and the data cannot say which.';
    const crude = { exposed: '6 / 1', others: '0 / 16', p: '0.2', differs: 'differs tenfold: age mixes in' };
    const { text } = await draw({
      classes: [aClass({ named: 'VE-118 and K-2', together, crude, nearly: 'Nearly the same hulls: MAT-A' })],
    });
    expect(
      outOfOrder(text, ['VE-118 and K-2', 'differs tenfold', 'VE-118 and K-2', together, 'Nearly']),
    ).toBeUndefined();
  });

  it('holds 100 classes, 600 months, long names and any script, without text over text', async () => {
    const ratio = { ratio: 1e9, lower: 0, upper: null };
    const months = Array.from({ length: 24 }, (_, i) => ({
      ...{ month: `M${i}`, expected: [i * 1e6, null, 0.1] },
      limits: [{ lower: i * 1e5, upper: i * 1e7 }, null, { lower: 0, upper: 3 }],
    }));
    const paper = await draw({
      title: `${LONG_NAME} ${OTHER_SCRIPTS}`,
      triangle: aTriangle(600, 300),
      classes: Array.from({ length: 100 }, (_, i) => aClass({ named: i === 7 ? LONG_NAME : `LOT-${i}-`, ratio })),
      apart: Array.from({ length: 60 }, (_, i) => aRow({ named: `OTHER-${i}`, family: LONG_NAME })),
      ahead: {
        ...{ says: [['Warranty', LONG_NAME]], months, cannotSay: OTHER_SCRIPTS.repeat(30) },
        groups: [aGroup(), aGroup({ group: LONG_NAME }), aGroup({ curve: [], mean: [], ages: [] })],
      },
      sentences: [LONG_NAME, OTHER_SCRIPTS.repeat(20)],
    });
    expect(pageFaults(paper)).toEqual([]);
    for (const words of AS_PRINTED) expect(paper.text).toContain(words);
    for (const i of [0, 50, 99]) expect(paper.text.match(new RegExp(`LOT-${i}-`, 'g'))).toHaveLength(4);
  });

  it('says of a case of which nothing is known that there is nothing', async () => {
    const paper = await draw({
      ...{ triangle: null, classes: [], apart: [], places: null, ahead: null, next: [], cannotSay: [], sentences: [] },
      untestable: { says: 'None.', rows: [] },
      cover: { steps: [], unexplained: 'No claim counts.' },
    });
    const words = ['No hull is at risk, so there is no triangle.', 'No class goes with', 'No claim counts.'];
    expect(outOfOrder(paper.text, [...words, 'Nothing else was compared.', 'No place of a claim'])).toBeUndefined();
    expect(pageFaults(paper)).toEqual([]);
  });

  it('is not drawn for a moment that is no date', () => {
    expect(() => drawInquiry(anInquiry(), new Date('yesterday'))).toThrow(TypeError);
  });
});
