import { encodeHin } from '@hull-record/trade';
import { DEALERS } from './dealers.js';
import type { DemoHull } from './parts.js';
import { LEAD, QUALITY, WARRANTY } from './people.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Manufacturer code of the demo; invented. */
const MIC = 'TRZ';

/** The last working day before the plant's summer break, a Friday; what was not done by then waits. */
export const BREAK_DAY = 54;

/** From demolding to the dealer, and on to the first purchaser, who may come while the plant rests. */
export const lifeOf = (hull: DemoHull): readonly Draft[] => {
  const { number, startDay, random } = hull;
  const released = startDay + 14 + random.whole(0, 2);
  const left = released + random.whole(1, 3);
  const at = { demolded: instant(startDay + 9, '07:00'), affixed: instant(startDay + 12, '09:30') };
  const arrived = left + 1;
  return [
    lifeFact(number, LEAD, at.demolded, { what: 'demolded' }),
    hin(hull, instant(startDay + 12, '09:00')),
    lifeFact(number, LEAD, at.affixed, { what: 'HIN affixed' }),
    release(number, instant(released, '13:20')),
    lifeFact(number, LEAD, instant(left, '11:00'), { what: 'left the place of manufacture' }),
    lifeFact(number, LEAD, instant(arrived, '14:00'), { what: 'at dealer', dealer: random.pick(DEALERS).code }),
    ...(arrived <= BREAK_DAY && hull.index % 7 > 2 ? [sold(hull, arrived)] : []),
  ];
};

/** The number, in the form of 33 CFR 181.25: invented code, serial, month and year, model year. */
export const hinOf = ({ serial }: DemoHull, assignedAt: string): string =>
  encodeHin({
    ...{ mic: MIC, serial, modelYear: 2027 },
    ...{ buildYear: Number(assignedAt.slice(0, 4)), buildMonth: Number(assignedAt.slice(5, 7)) },
  });

const hin = (hull: DemoHull, at: string): Draft =>
  draft('assignHin', { name: `hull ${hull.number} HIN`, at, by: QUALITY, of: hull.number }, { hin: hinOf(hull, at) });

const release = (number: string, at: string): Draft =>
  draft('releaseHull', { name: `hull ${number} released`, at, by: QUALITY, of: number }, {});

const sold = ({ number, random }: DemoHull, arrived: number): Draft =>
  lifeFact(number, WARRANTY, instant(arrived + random.whole(3, 12), '10:00'), { what: 'sold to first purchaser' });

type LifeFact = Parameters<typeof draft<'recordLifeFact'>>[2];

const lifeFact = (number: string, by: string, at: string, body: LifeFact): Draft =>
  draft('recordLifeFact', { name: `hull ${number} ${body.what}`, at, by, of: number }, body);
