import { describe, expect, it } from '@jest/globals';
import { drawEquipmentRecall } from '@hull-record/paper';
import { aRecall, aRecalled } from '../../support/papers/equipment-recall-view.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { AS_PRINTED, drawn, LONG_NAME, OTHER_SCRIPTS, outOfOrder, structureOf } from '../../support/papers/paper.js';
import { solid } from '../../support/read-pdf.js';

const draw = (changes: Parameters<typeof aRecall>[0] = {}) =>
  drawn((created) => drawEquipmentRecall(aRecall(changes), created));

describe('an equipment recall list', () => {
  it('reads from the equipment over its checks to each window', async () => {
    const { text } = await draw();
    const words = [
      ...['Equipment recall list', 'MG-1', 'gauge', 'Notch gauge of steel', 'ISO 9001:2015 7.1.5.2'],
      ...['1 window in which it may have been unfit; 2 entries to be looked at again.', 'Values stay as they were'],
      ...['Checks', '20 mil; limits 19 to 21 mil', 'good', 'worn notch', '23 mil', 'BAD', 'open, no disposition'],
      ...['Window of reference film', 'after the last good check, 20 Nov', '24 Nov 2026 07:00', 'not yet'],
      ...['Readings', 'TS86-147', 'H-0147', 'layer L1, spot 2', '18 mil (457 µm)', 'L-07', 'suspect, not decided'],
      ...['spot 3', 'use as is under concession C-9', 'Nothing was sprayed or dispensed'],
    ];
    expect(outOfOrder(text, words)).toBeUndefined();
  });

  it('says on every page what it is not', async () => {
    for (const page of (await draw()).pages) expect(solid([page])).toContain('Notacalibrationcertificate');
  });

  it('is tagged, with a bookmark for each window, and the same for the same view', async () => {
    const { bytes } = await draw();
    const { bookmarks, roles } = await structureOf(bytes);
    expect(bookmarks).toEqual(['Checks', 'Window of reference film']);
    expect([...roles]).toEqual(expect.arrayContaining(['H1', 'H2', 'H3', 'Table', 'TH', 'TD']));
    expect((await draw()).bytes.equals(bytes)).toBe(true);
  });

  it('holds 400 readings, long names and any script, without text over text', async () => {
    const [window] = aRecall().windows;
    const readings = Array.from({ length: 400 }, (_, i) => aRecalled({ value: `v${i}.` }));
    const paper = await draw({
      ...{ equipment: LONG_NAME, description: OTHER_SCRIPTS },
      windows: window ? [{ ...window, readings, drawn: [aRecalled({ part: LONG_NAME, what: LONG_NAME })] }] : [],
    });
    expect(pageFaults(paper)).toEqual([]);
    for (const words of AS_PRINTED) expect(paper.text).toContain(words);
    for (let i = 0; i < 400; i += 1) expect(paper.text).toContain(`v${i}.`);
  });

  it('says of equipment that was never checked that there is nothing', async () => {
    const paper = await draw({ checks: [], windows: [] });
    const words = ['No check was bad', 'No checks of this equipment are recorded.'];
    expect(outOfOrder(paper.text, words)).toBeUndefined();
    expect(pageFaults(paper)).toEqual([]);
  });
});
