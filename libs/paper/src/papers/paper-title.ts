import type { Block } from '../flow.js';
import type { Fonts } from '../fonts.js';
import { para } from '../paragraph.js';
import { text } from '../text-blocks.js';
import { titleBlock } from '../title-block.js';
import type { PaperSubject, PaperView } from './paper-view.js';

/** Plant, title and code of a paper; then whether figures may change. */
export const paperTitle = (fonts: Fonts, view: PaperView, { name, of, code }: PaperSubject): readonly Block[] => [
  titleBlock(fonts, { plantName: view.plantName, name, of, code }),
  ...(view.recomputing === null ? [] : [text(fonts, [para(view.recomputing, 'bold')], 6)]),
];
