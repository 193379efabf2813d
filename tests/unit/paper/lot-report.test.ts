import { describe, expect, it } from '@jest/globals';
import { drawLotReport } from '@hull-record/paper';
import { someReadings } from '../../support/paper-layers.js';
import { aHoldingHull, aLotReport } from '../../support/papers/lot-report-view.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { AS_PRINTED, drawn, LONG_NAME, OTHER_SCRIPTS, outOfOrder, structureOf } from '../../support/papers/paper.js';
import { solid } from '../../support/read-pdf.js';

const draw = (changes: Parameters<typeof aLotReport>[0] = {}) =>
  drawn((created) => drawLotReport(aLotReport(changes), created));

describe('a lot report', () => {
  it('reads from what the lot is to what is left of it', async () => {
    const { text } = await draw();
    const words = [
      ...['Tarrow Sound Boats', 'Lot report', 'AR-60622', 'Vinyl ester resin (RES-VE)', 'TG-2611-04', '2027-02-01'],
      ...['2026-11-26T14:30:00Z', 'Released: it may be used', 'viscosity', '420 mPa s', '1 to 2 %', 'Held', 'QUA-1'],
      ...['AR-60622/1', 'drum', 'is made of no other lot', 'Gel time', 'Expired lot', 'open, no disposition'],
      ...['Hulls that hold it', 'TRZ86147K627', '48.2 kg', '31.4 %', 'in no hull', 'trace, under 1e-9'],
      ...['Assumes well-mixed tanks', 'By part and place', 'layer TS86-L/2', '20.1 kg', 'repair R1'],
      ...['Hulls that possibly hold it', 'nobody could name', 'TS86-150', 'mix 1124-02', 'bucket', 'Balance', '−12.5'],
      'Overdrawn: count it.',
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
  });

  it('says on every page what it is, as of when, and what it is not', async () => {
    const { pages } = await draw();
    for (const page of pages) {
      const text = solid([page]);
      expect(text).toContain('LotAR-60622·Lotreport·stateasof26Nov202609:30UTC−5');
      expect(text).toContain('Notacertificateofthematerialorofcompliance,asurvey,awarrantyoratitledocument.');
    }
  });

  it('is tagged, with a bookmark for each section', async () => {
    const { bookmarks, roles } = await structureOf((await draw()).bytes);
    expect(bookmarks).toEqual([
      ...['History', 'Containers', 'What it is made of', 'Readings and verdicts of the lot'],
      ...[
        'Nonconformities of the lot',
        'Hulls that hold it',
        'Hulls that possibly hold it',
        'Lots made of it',
        'Balance',
      ],
    ]);
    expect([...roles]).toEqual(
      expect.arrayContaining(['Document', 'Sect', 'H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'P']),
    );
  });

  it('has the same bytes for the same view, and others for another', async () => {
    const [one, again, other] = [await draw(), await draw(), await draw({ lot: 'AR-60623' })];
    expect(again.bytes.equals(one.bytes)).toBe(true);
    expect(other.bytes.equals(one.bytes)).toBe(false);
  });

  it('says of what is made what its shares rest on, and of what is recomputed that it is', async () => {
    const madeOf = [{ lot: 'R-1', supplierLot: 'S-1', material: 'Resin', role: 'resin', share: '80 %' }];
    const { text } = await draw({ madeOf, assumes: 'Assumes a well-mixed tank.', recomputing: 'Figures may change.' });
    expect(
      outOfOrder(text, ['Figures may change.', 'R-1', 'S-1', '80 %', 'Assumes a well-mixed tank.']),
    ).toBeUndefined();
  });

  it('holds 400 readings, 300 hulls, long names and any script, without text over text', async () => {
    const paper = await draw({
      lot: LONG_NAME,
      identity: [['Supplier', `${LONG_NAME} ${OTHER_SCRIPTS}`]],
      readings: [someReadings(400)],
      hulls: Array.from({ length: 300 }, (_, i) => aHoldingHull({ hull: i === 7 ? LONG_NAME : `H${i}-` })),
      history: [{ when: 'then', what: LONG_NAME, why: OTHER_SCRIPTS.repeat(40), by: LONG_NAME }],
    });
    expect(pageFaults(paper)).toEqual([]);
    for (const words of AS_PRINTED) expect(paper.text).toContain(words);
    for (const i of [0, 150, 299]) expect(paper.text.match(new RegExp(`H${i}-`, 'g'))).toHaveLength(3);
  });

  it('says of a lot of which nothing is known that there is nothing', async () => {
    const nothing = { certificate: [], certified: [], history: [], containers: [], readings: [], nonconformities: [] };
    const paper = await draw({ ...nothing, hulls: [], possibly: null, lotsMade: [] });
    const words = [
      ...['Nobody has said anything', 'No containers', 'made of no other lot', 'No readings of the lot itself'],
      ...['No nonconformities', 'No hull and no part is known to hold any of it.', 'No bucket, kit or tank fill'],
    ];
    expect(outOfOrder(paper.text, words)).toBeUndefined();
    expect(paper.text).not.toContain('possibly');
    expect(pageFaults(paper)).toEqual([]);
  });

  it('is not drawn for a moment that is no date', () => {
    expect(() => drawLotReport(aLotReport(), new Date('yesterday'))).toThrow(TypeError);
  });
});
