import type { DefectView, PartView } from '@hull-record/contracts';
import { h, s, type Child } from '../platform/dom.js';
import { defectRing } from '../marks/defect-mark.js';
import { defectKind } from '../defects/defect-words.js';
import {
  checkPlace,
  lineOnMap,
  placeOnMap,
  skinOutline,
  TRANSOM_GAP_MM,
  transomOutline,
  type GirthLine,
  type MapPoint,
  type Skin,
} from '../trade.js';

interface Frame {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Room left around the skin, mm. */
const MARGIN_MM = 250;

/**
 * The skin of a part unrolled flat, with its defects as numbered rings; a ring leads to its row in the list.
 *
 * The skin is drawn in millimetres and grows with the page; rings stand over it, so that they keep their size.
 */
export const hullMap = (part: PartView, skin: Skin, rowOf: (index: number) => HTMLElement | undefined): Child => {
  const frame = frameOf(skin);
  const board = h('div', { class: 'map' }, drawing(part, skin, frame));
  board.style.aspectRatio = `${frame.width} / ${frame.height}`;
  part.defects.forEach((defect, i) => {
    if (checkPlace(defect.place, skin).length === 0) board.append(spot(defect, frame, () => rowOf(i)));
  });
  return h(
    'figure',
    {},
    h('p', { class: 'note soft' }, 'port'),
    board,
    h('figcaption', { class: 'note soft' }, 'starboard. ', words(skin)),
  );
};

const words = ({ lengthMm, transom }: Skin): string =>
  `The skin unrolled, girth by station, seen from outside; bow to the right, ${lengthMm / 1000} m long and to scale in itself. ` +
  `Chine: thin line; waterline: long dashes${transom === undefined ? '' : '; the transom is folded back at the left'}.`;

const frameOf = (skin: Skin): Frame => {
  const half = Math.max(...skin.stations.map(({ edgeGirthMm }) => edgeGirthMm), skin.transom?.halfWidthMm ?? 0);
  const aft = skin.transom === undefined ? 0 : TRANSOM_GAP_MM + skin.transom.heightMm;
  const left = -aft - MARGIN_MM;
  return { left, top: -half - MARGIN_MM, width: skin.lengthMm + MARGIN_MM - left, height: 2 * (half + MARGIN_MM) };
};

/** Port is up: y of the map grows to port, y of the screen downwards. */
const line = (points: readonly MapPoint[], style: string, closed = false): SVGElement =>
  s('path', { class: style, d: `M${points.map(({ x, y }) => `${x} ${-y}`).join('L')}${closed ? 'Z' : ''}` });

const both = (skin: Skin, of: GirthLine, style: string): readonly SVGElement[] =>
  (['port', 'starboard'] as const)
    .map((side) => lineOnMap(skin, of, side))
    .filter((points) => points.length > 1)
    .map((points) => line(points, style));

const drawing = ({ number, defects }: PartView, skin: Skin, { left, top, width, height }: Frame): SVGElement => {
  const transom = transomOutline(skin);
  const label = `Hull map of ${number} with ${defects.length} defects: ${defects.map(({ mark, zone }) => `${mark}, ${zone}`).join('; ') || 'none'}.`;
  return s(
    'svg',
    { viewBox: `${left} ${top} ${width} ${height}`, role: 'img', 'aria-label': label },
    line(skinOutline(skin), 'skin', true),
    transom.length === 0 ? null : line(transom, 'skin', true),
    both(skin, 'chineGirthMm', 'chine'),
    both(skin, 'waterlineGirthMm', 'water'),
    line(
      [
        { x: 0, y: 0 },
        { x: skin.lengthMm, y: 0 },
      ],
      'keel',
    ),
  );
};

const spot = (
  defect: DefectView,
  { left, top, width, height }: Frame,
  row: () => HTMLElement | undefined,
): HTMLElement => {
  const { x, y } = placeOnMap(defect.place);
  const name = `${defect.mark}: ${defectKind(defect.kind)}, ${defect.state}`;
  const button = h(
    'button',
    { type: 'button', class: 'spot', 'aria-label': name, title: name },
    defectRing(defect.state),
    defect.mark,
  );
  button.style.left = `${(100 * (x - left)) / width}%`;
  button.style.top = `${(100 * (-y - top)) / height}%`;
  button.addEventListener('click', () => {
    const target = row();
    target?.setAttribute('tabindex', '-1');
    target?.focus();
  });
  return button;
};
