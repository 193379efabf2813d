import type { DefectView } from '../build-record-view.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { form } from '../papers/form.js';
import { sectionHeading, subHeading } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { text } from '../text-blocks.js';

const SAYS =
  'Taper ratio: length of the taper / depth ground out. The one who accepts has done none of the work. What is written ' +
  'here is no record yet: enter it, with the marks of the defects.';

const WORK = [
  { title: 'Defect', share: 0.1 },
  { title: 'Ground out, length × width, mm', share: 0.18 },
  { title: 'Depth, mm', share: 0.1 },
  { title: 'Taper ratio', share: 0.1 },
  { title: 'Plies laid, outside in', share: 0.26 },
  { title: 'Lots used, with amounts', share: 0.26 },
] as const;

const CHECKS = [
  { title: 'Defect', share: 0.1 },
  { title: 'Air and surface °C, humidity %', share: 0.2 },
  { title: 'Barcol readings, spot by spot', share: 0.26 },
  { title: 'Done by, day and time', share: 0.22 },
  { title: 'Accepted by another person, day and time', share: 0.22 },
] as const;

/** What is filled in by hand: a row for each defect, and one for what is found on the way. */
export const workForm = (fonts: Fonts, defects: readonly DefectView[]): readonly Block[] => {
  const names = [...defects.map(({ mark }) => mark), 'further'];
  return [
    sectionHeading(fonts, 'Work done, to be filled in by hand'),
    text(fonts, [para(SAYS, 'note')], 0, true),
    form(fonts, WORK, names),
    subHeading(fonts, 'Conditions, hardness and people'),
    form(fonts, CHECKS, names),
  ];
};
