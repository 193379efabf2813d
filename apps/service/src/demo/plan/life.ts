import { encodeHin } from '@hull-record/trade';
import { DEALERS } from './dealers.js';
import { behind, type DemoHull } from './parts.js';
import { LEAD, QUALITY, WARRANTY } from './people.js';
import { draft, type Draft } from './step.js';
import { instant } from './working-days.js';

/** Manufacturer code of the demo; invented. */
const MIC = 'TRZ';

/** The last working day before the plant's summer break, a Friday; what was not done by then waits. */
export const BREAK_DAY = 374;

/** From demolding to the dealer, and on to the first purchaser, who may come while the plant rests. */
export const lifeOf = (hull: DemoHull): readonly Draft[] => {
  const { number, random } = hull;
  const startDay = hull.startDay + behind(hull);
  const released = startDay + 14 + random.whole(0, 2);
  const left = released + random.whole(1, 3);
  const at = { demolded: instant(startDay + 9, '07:00'), affixed: instant(startDay + 12, '09:30') };
  const arrived = left + 1;
  const europe = hull.index % 10 === 8;
  const market = europe ? ('EU' as const) : ('US' as const);
  return [
    lifeFact(number, LEAD, at.demolded, { what: 'demolded' }),
    hin(hull, instant(startDay + 12, '09:00')),
    lifeFact(number, LEAD, at.affixed, { what: 'HIN affixed' }),
    release(number, instant(released, '13:20')),
    lifeFact(number, LEAD, instant(left, '11:00'), { what: 'left the place of manufacture', market }),
    lifeFact(number, LEAD, instant(arrived, '14:00'), { what: 'at dealer', dealer: random.pick(DEALERS).code }),
    ...(arrived <= BREAK_DAY && hull.index % 7 > 1 ? sold(hull, arrived) : []),
  ];
};

/** The number, in the form of 33 CFR 181.25: invented code, serial, month and year; the model year begins in August. */
export const hinOf = ({ serial }: DemoHull, assignedAt: string): string => {
  const [buildYear, buildMonth] = [Number(assignedAt.slice(0, 4)), Number(assignedAt.slice(5, 7))];
  return encodeHin({
    ...{ mic: MIC, serial, modelYear: buildMonth < 8 ? buildYear : buildYear + 1, buildYear, buildMonth },
  });
};

const hin = (hull: DemoHull, at: string): Draft =>
  draft('assignHin', { name: `hull ${hull.number} HIN`, at, by: QUALITY, of: hull.number }, { hin: hinOf(hull, at) });

const release = (number: string, at: string): Draft =>
  draft('releaseHull', { name: `hull ${number} released`, at, by: QUALITY, of: number }, {});

/** Sold, and its first purchaser put on the list that a notice needs; names and addresses are invented. */
const sold = ({ number, index, random }: DemoHull, arrived: number): readonly Draft[] => {
  const at = instant(arrived + random.whole(3, 12), '10:00');
  return [
    lifeFact(number, WARRANTY, at, { what: 'sold to first purchaser' }),
    draft(
      'registerOwner',
      { name: `hull ${number} sold to its owner`, at, by: WARRANTY, of: number },
      {
        what: 'first purchaser',
        owner: {
          name: `Demo owner ${index + 1}`,
          address: `${index + 1} Demo Quay`,
          email: `owner-${index + 1}@example.org`,
        },
      },
    ),
  ];
};

type LifeFact = Parameters<typeof draft<'recordLifeFact'>>[2];

const lifeFact = (number: string, by: string, at: string, body: LifeFact): Draft =>
  draft('recordLifeFact', { name: `hull ${number} ${body.what}`, at, by, of: number }, body);
