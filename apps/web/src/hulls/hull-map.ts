import type { DefectView, PartView } from '@hull-record/contracts';
import { h, s, type Child } from '../platform/dom.js';
import { defectRing } from '../marks/defect-mark.js';
import { defectKind } from '../defects/defect-words.js';
import {
  checkPlace,
  lineOnMap,
  placeOnMap,
  skinOutline,
  transomOutline,
  type GirthLine,
  type MapPoint,
  type Skin,
} from '../trade.js';
import { frameOf, type Frame } from './map-frame.js';

/**
 * The skin of a part unrolled flat, with its defects as numbered rings; a ring leads to its row in the list.
 *
 * The skin is drawn in millimetres and grows with the page; rings stand over it, so that they keep their size.
 */
export const hullMap = (part: PartView, skin: Skin, rowOf: (index: number) => HTMLElement | undefined): Child => {
  const frame = frameOf(part.kind, skin);
  const board = h('div', { class: 'map' }, drawing(part, skin, frame));
  board.style.aspectRatio = `${frame.width} / ${frame.height}`;
  part.defects.forEach((defect, i) => {
    if (checkPlace(defect.place, skin).length === 0) board.append(spot(defect, frame, () => rowOf(i)));
  });
  return h(
    'figure',
    {},
    h('p', { class: 'side note soft' }, 'port'),
    board,
    h('p', { class: 'side note soft' }, 'starboard'),
    h('figcaption', { class: 'note soft' }, words(skin, frame)),
  );
};

const words = ({ lengthMm, transom }: Skin, { seenFrom, bowLeft }: Frame): string =>
  `The skin unrolled, girth by station, seen from ${seenFrom}: bow to the ${bowLeft ? 'left' : 'right'}, ` +
  `${lengthMm / 1000} m long, to scale in itself. Chine: thin line; waterline: long dashes` +
  `${transom === undefined ? '' : '; the transom is folded back at the stern'}.`;

const line = (points: readonly MapPoint[], { at }: Frame, style: string, closed = false): SVGElement => {
  const corners = points.map(at).map(({ x, y }) => `${x} ${y}`);
  return s('path', { class: style, d: `M${corners.join('L')}${closed ? 'Z' : ''}` });
};

const both = (skin: Skin, of: GirthLine, frame: Frame, style: string): readonly SVGElement[] =>
  (['port', 'starboard'] as const)
    .map((side) => lineOnMap(skin, of, side))
    .filter((points) => points.length > 1)
    .map((points) => line(points, frame, style));

const drawing = ({ number, defects }: PartView, skin: Skin, frame: Frame): SVGElement => {
  const transom = transomOutline(skin);
  const label = `Hull map of ${number} with ${defects.length} defects: ${defects.map(({ mark, zone }) => `${mark}, ${zone}`).join('; ') || 'none'}.`;
  return s(
    'svg',
    { viewBox: `0 0 ${frame.width} ${frame.height}`, role: 'img', 'aria-label': label },
    line(skinOutline(skin), frame, 'skin', true),
    transom.length === 0 ? null : line(transom, frame, 'skin', true),
    both(skin, 'chineGirthMm', frame, 'chine'),
    both(skin, 'waterlineGirthMm', frame, 'water'),
    line(
      [
        { x: 0, y: 0 },
        { x: skin.lengthMm, y: 0 },
      ],
      frame,
      'keel',
    ),
  );
};

const spot = (defect: DefectView, { at, width, height }: Frame, row: () => HTMLElement | undefined): HTMLElement => {
  const { x, y } = at(placeOnMap(defect.place));
  const name = `${defect.mark}: ${defectKind(defect.kind)}, ${defect.state}`;
  const button = h(
    'button',
    { type: 'button', class: 'spot', 'aria-label': name, title: name },
    defectRing(defect.state),
    h('span', {}, defect.mark),
  );
  button.style.left = `${(100 * x) / width}%`;
  button.style.top = `${(100 * y) / height}%`;
  button.addEventListener('click', () => {
    const target = row();
    target?.setAttribute('tabindex', '-1');
    target?.focus();
  });
  return button;
};
