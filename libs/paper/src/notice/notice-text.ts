import { facts } from '../facts.js';
import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { subHeading } from '../papers/sections.js';
import { para } from '../paragraph.js';
import { text } from '../text-blocks.js';
import type { NoticeText } from './notice-view.js';

/** What a notice says, part by part in the order of the law. */
export const noticeText = (fonts: Fonts, notice: NoticeText): readonly Block[] => [
  ...part(fonts, 'The defect', notice.defect),
  ...part(fonts, 'The hazard', notice.hazard),
  ...part(fonts, 'What is done to correct it', notice.measures),
  ...part(fonts, "At the manufacturer's cost", notice.undertaking),
  subHeading(fonts, 'What it is about'),
  facts(fonts, [
    ['Manufacturer', `${notice.manufacturer}, ${notice.address}`],
    ['Make', notice.make],
    ['Models', notice.models.join('; ')],
    ['Ask', notice.contact],
  ]),
];

const part = (fonts: Fonts, title: string, words: string): readonly Block[] => [
  subHeading(fonts, title),
  text(
    fonts,
    words.split('\n').map((line) => para(line)),
  ),
];
