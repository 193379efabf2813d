import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { openPaper } from '../support/read-pdf.js';
import { printed, readRecord, type PrintedRecord } from '../support/read-record.js';
import { startService, type RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';
import { recordWhole, type WholeRecord } from '../support/whole-record.js';

let service: RunningService;
let shop: Shop;
let whole: WholeRecord;
let record: PrintedRecord;
beforeAll(async () => {
  service = await startService();
  shop = await new Shop(service).open();
  whole = await recordWhole(shop);
  record = await readRecord(service, whole.hull);
}, 60_000);
afterAll(() => service.close());

describe('The build record of a hull', () => {
  it('is answered as a PDF with a file name of its own', () => {
    expect(record.headers.get('content-type')).toBe('application/pdf');
    expect(record.headers.get('content-disposition')).toBe('inline; filename="build-record-86-1.pdf"');
    expect(record.bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  it.each([
    ['what its HIN says', 'TRZ00861A626 The HIN says manufacturer code TRZ, serial 00861'],
    ['the month in its HIN', 'certified or manufactured in January 2026 model year 2026'],
    ['what is missing', 'Not complete: 1 defect is open, 2 nonconformities are open and the hull is not released.'],
    ['when a HIN was assigned, on the clock of the plant', 'UTC−5 HIN TRZ00861A626 assigned ADMIN'],
    ['the climate beside its limits', 'air 21.4 °C, relative humidity 58 %; limits of the schedule: air 18 to 28 °C'],
    ['a note', 'Note Second pass after 20 minutes.'],
    ['limits in both units', 'Limits: 16 to 20 mil (406 to 508 µm). Rule: Schedule TS86 version 1, layer Gel coat.'],
    ['the gauge', 'Equipment: MG-1'],
    ['a film as an interval, with its verdict', '16 to under 18 mil (406 to under 457 µm) not recorded inside'],
    ['that a gauge could not tell', 'inside the gauge interval reaches across a limit'],
    ['a reading outside, and its concession', 'outside use as is under concession C-7: for a test (ADMIN, 5 Jan 2026'],
    ['who signed, and how far that is known', 'HP 1 signed by INS-1, 5 Jan 2026 02:35 UTC−5; identity proved'],
    ['a crew', 'Done by LAM-1, LAM-2 Entered by ADMIN'],
    ['two suppliers’ lots behind a tank', 'T1-2 in tank T1 S-R-2 (80 %) S-R-1 (20 %) Vinyl ester resin'],
    ['an amount in the unit it was entered in, with the weakest basis', '44.1 lb (20.003 kg) metered corrected'],
    ['what a corrected amount was', 'was amount 20 kg, metered; now amount 44.1 lb (20.003 kg), weighed (QUA-1'],
    [
      'a void where it is',
      'D1 Air bubble (void) 22 × 14 mm, 2 mm deep port, 3.42 m from the transom, 0.95 m along the skin',
    ],
    ['a place in the words of surveys', '40 % of the length; midship, bottom, below the waterline layer 2, Skin coat'],
    ['a blister with its grade', 'D2 Blister, grade 6M'],
    ['how a void was put right', 'repaired repair R1'],
    ['a repair', 'Geometry taper 12:1, ground out 48 × 40 mm, 2 mm deep Plies 3 x mat 300 Done by PAT-1'],
    [
      'a bucket by its suppliers’ lots',
      'B-1 Vinyl ester resin, S-R-2 (78.4 %) Vinyl ester resin, S-R-1 (19.6 %) MEKP catalyst, S-C-1 (2 %) mix of Vinyl ester resin + MEKP catalyst',
    ],
    ['the weakest basis on the path', '240 g (0.24 kg) as scheduled'],
    ['another person’s acceptance', 'Acceptance accepted by INS-1'],
    ['a joint with its paste', 'Parts 86-1-D to hull 86-1'],
    ['what a joint took', 'P-1 S-P-1 (100 %) Bonding paste 1 pc (12 kg) as scheduled'],
    ['a nonconformity of the hull', 'Expired lot Lot B-1 expired on 2026-01-02 and was used on 2026-01-05.'],
    ['a nonconformity of a lot upstream', 'Expired lot Lot C-1 expired on 2026-01-02 and was used on 2026-01-05.'],
    [
      'a correction',
      'QUA-1 Lot T1-2 used in Skin coat of 86-1-H amount 20 kg, metered amount 44.1 lb (20.003 kg), weighed',
    ],
    ['the reason of a correction', 'The scale counts pounds.'],
    ['the rule for HINs', 'HIN: 33 CFR 181'],
    ['where words for defects come from', 'ASTM D2563 (withdrawn 2024; vocabulary only)'],
    ['where blister grades come from', 'ASTM D714'],
    ['what is assumed of tanks', 'Assumes well-mixed tanks.'],
    ['a caution for laminating', 'Styrene vapor is harmful and flammable'],
    ['a caution for grinding', 'Laminate and gel coat dust irritates skin, eyes and lungs'],
    ['a caution for repair', 'A repair to structure is a secondary bond'],
  ])('prints %s', (_, words) => {
    expect(record.text).toContain(printed(words));
  });

  it('keeps readings by the mean out: each of four spots has its own verdict', () => {
    expect(record.text.split(printed('not recorded inside'))).toHaveLength(4);
    expect(record.text.split(printed('not recorded outside'))).toHaveLength(2);
  });

  it('prints every caution once, and that the data sheet comes first at the end', () => {
    const deferral = printed('local codes and the authority having jurisdiction come first');
    expect(record.text.split(deferral)).toHaveLength(2);
    expect(record.text.indexOf(deferral)).toBeGreaterThan(record.text.indexOf(printed('secondary bond: its taper')));
  });

  it('says when its state is of, the moment of the newest fact, and nothing of the hour it was drawn', async () => {
    expect(record.text).toContain(printed(`As an instant ${whole.corrected}`));
    const paper = await openPaper(record.bytes);
    const { info } = (await paper.getMetadata()) as unknown as { info: { CreationDate: string; ModDate: string } };
    const digits = whole.corrected.replace(/\D/g, '').slice(0, 14);
    expect([info.CreationDate, info.ModDate]).toEqual([`D:${digits}Z`, `D:${digits}Z`]);
    await paper.loadingTask.destroy();
  });

  it('prints the number a person knows, and no id of a row', () => {
    expect(record.text).not.toMatch(/[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}/);
  });

  it('is found by the HIN, the same to the last byte', async () => {
    expect((await readRecord(service, 'TRZ00861A626')).bytes.equals(record.bytes)).toBe(true);
  });

  it('of a hull whose number no file may have gets a name that one may', async () => {
    await shop.startHull('Ü "7/3"', { partNumber: 'P-7' });
    const { headers, text } = await readRecord(service, 'Ü "7/3"');
    expect(headers.get('content-disposition')).toBe('inline; filename="build-record-_7_3_.pdf"');
    expect(text).toContain('Ü"7/3"');
  });
});

describe('The build record of a hull with nothing but its start', () => {
  it('says so in sentences', async () => {
    await shop.startHull('86-2');
    const { text } = await readRecord(service, '86-2');
    for (const words of [
      'HIN none assigned yet',
      'Not complete: 3 layers are to be made and the hull is not released.',
      'part started 86-2-H; ADMIN',
      'No layer of this part has been made yet.',
      'No defects are recorded for this part.',
      'No repairs are recorded for this part.',
      'No nonconformities are recorded for this part.',
      'No parts have been joined to this hull yet.',
      'No facts of this hull have been corrected.',
    ]) {
      expect(text).toContain(printed(words));
    }
    expect(text).not.toContain(printed('Laminate and gel coat dust'));
    expect(text).not.toContain('ASTM');
  });
});
