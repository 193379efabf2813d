import { describe, expect, it } from '@jest/globals';
import { drawHoldPoints } from '@hull-record/paper';
import { someReadings } from '../../support/paper-layers.js';
import { aDefect } from '../../support/paper-views.js';
import { aHoldPoint, aHoldPointSheet, PART } from '../../support/papers/hold-points-view.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { AS_PRINTED, drawn, LONG_NAME, OTHER_SCRIPTS, outOfOrder, structureOf } from '../../support/papers/paper.js';
import { solid } from '../../support/read-pdf.js';

const draw = (changes: Parameters<typeof aHoldPointSheet>[0] = {}) =>
  drawn((created) => drawHoldPoints(aHoldPointSheet(changes), created));

describe('a hold-point sheet', () => {
  it('reads hold point by hold point, outside in', async () => {
    const { text } = await draw();
    const words = [
      ...['Hold-point sheet', 'H-0147', 'TS86-147', 'TRZ86147K627', '1 of 3 signed', 'not one who made the layer'],
      ...['known as stated', 'Hold point 1, layer 1, Gel coat (L1)', '23 Nov 2026 07:10', 'L-07, L-11', 'L-02'],
      ...['Limits:', 'Spot', '1', 'Not complete. Wet film: 3 of 6 spots read.', 'Layer 2 began 26 h after layer 1.'],
      ...[
        'No dew point was recorded.',
        'open, no disposition',
        'Open defects of this layer',
        'D4',
        'air bubble (void)',
      ],
      ...['Hold point 1: not signed', 'It was made by L-07, L-11.', 'Name and badge', 'Day and time', 'Signature'],
      ...['Hold point 2', 'signed by Q-03, 24 Nov 2026 14:20', 'identity stated, not proved'],
      ...[
        'Hold point 3',
        'The layer is to come',
        'not signed: the layer is not made',
        'about no layer',
        'None is open.',
      ],
      ...['whose layer is not known', 'D9'],
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
  });

  it('has a field to sign in for each layer that is made and not signed, and for no other', async () => {
    const { text } = await draw();
    expect(text.match(/Nameandbadge/g)).toHaveLength(1);
  });

  it('says on every page of which part it is, and what it is not', async () => {
    for (const page of (await draw()).pages) {
      expect(solid([page])).toContain('PartH-0147·Hold-pointsheet');
      expect(solid([page])).toContain('Notacertificateofcompliance,asurvey,awarranty');
    }
  });

  it('is tagged, with a bookmark for each hold point, and the same for the same view', async () => {
    const { bytes } = await draw();
    const { bookmarks, roles } = await structureOf(bytes);
    expect(bookmarks.slice(0, 3)).toEqual([
      'Hold point 1, layer 1, Gel coat (L1)',
      'Hold point 2, layer 4, Bulk laminate (L4)',
      'Hold point 3, layer 8, Inner coat (L8)',
    ]);
    expect([...roles]).toEqual(expect.arrayContaining(['H1', 'H2', 'H3', 'H4', 'Table', 'TR', 'P']));
    expect((await draw()).bytes.equals(bytes)).toBe(true);
  });

  it('holds 400 readings, 60 defects, long names and any script, without text over text', async () => {
    const paper = await draw({
      part: { ...PART, number: LONG_NAME, model: OTHER_SCRIPTS },
      holdPoints: [
        aHoldPoint({
          ...{ name: LONG_NAME, readings: [someReadings(400)] },
          defects: Array.from({ length: 60 }, (_, i) => aDefect({ mark: `D${i + 1}`, note: OTHER_SCRIPTS })),
        }),
      ],
    });
    expect(pageFaults(paper)).toEqual([]);
    for (const words of AS_PRINTED) expect(paper.text).toContain(words);
    expect(paper.text.match(/L-07,Tue24Nov202608:10/g)).toHaveLength(400);
    for (let i = 1; i <= 60; i += 1) expect(paper.text).toContain(`D${i}air`);
  });

  it('says of a part without hold points that it has none', async () => {
    const paper = await draw({
      part: { ...PART, hull: null, hin: null, scrapped: 'It fell.' },
      holdPoints: [],
      defects: [],
    });
    expect(paper.text).toContain('setsnoholdpoints');
    expect(paper.text).toContain('joinedtonohullyet');
    expect(paper.text).toContain('SCRAPPEDItfell.');
    expect(pageFaults(paper)).toEqual([]);
  });
});
