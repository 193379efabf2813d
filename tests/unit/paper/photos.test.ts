import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from '@jest/globals';
import { drawBuildRecord, drawRepairOrder, type PhotoView, type PictureView } from '@hull-record/paper';
import { aDefect, aHullPart, aView } from '../../support/paper-views.js';
import { pageFaults } from '../../support/papers/page-faults.js';
import { drawn, outOfOrder, structureOf, type Drawn } from '../../support/papers/paper.js';
import { readAlternatives, readImages, type PrintedImage } from '../../support/papers/read-images.js';
import { aRepairOrder } from '../../support/papers/repair-order-view.js';
import { noisy } from '../../support/photos.js';

const MARGIN = (15 * 72) / 25.4;
const [WIDTH, HEIGHT] = [595.28, 841.89];
const CONTENT = WIDTH - 2 * MARGIN;

const digest = (text: string): string => createHash('sha256').update(text).digest('hex');

let landscape: PictureView;
let portrait: PictureView;
let strip: PictureView;
beforeAll(async () => {
  const picture = async (width: number, height: number): Promise<PictureView> => {
    const jpeg = await noisy(width, height).jpeg({ quality: 40 }).toBuffer();
    return { width, height, read: () => jpeg };
  };
  landscape = await picture(400, 300);
  portrait = await picture(300, 400);
  strip = await picture(400, 4);
});

const photos = (mark: string, pictures: readonly (PictureView | null)[]): readonly PhotoView[] =>
  pictures.map((picture, i) => ({
    title: `photo ${i + 1} of defect ${mark}`,
    taken: 'taken Mon 23 Nov 2026 07:40, by Q-03',
    sha256: digest(`${mark}/${i + 1}`),
    picture,
  }));

const record = (marks: Readonly<Record<string, readonly (PictureView | null)[]>>): Promise<Drawn> => {
  const defects = Object.entries(marks).map(([mark, pictures]) => aDefect({ mark, photos: photos(mark, pictures) }));
  return drawn((created) => drawBuildRecord(aView({ parts: [aHullPart({ defects })] }), created));
};

const times = <T>(count: number, what: T): readonly T[] => Array.from({ length: count }, () => what);

/** Photos of which the picture is over a margin, is stretched, or stands on another page than its caption. */
const photoFaults = ({ pages }: Drawn, images: readonly PrintedImage[]): readonly string[] => {
  const captions = pages.flatMap((page, i) =>
    page.filter(({ text }) => /^Photo \d+ of defect/.test(text)).map((text) => ({ ...text, page: i + 1 })),
  );
  if (captions.length !== images.length) return [`${images.length} pictures and ${captions.length} captions`];
  return images.flatMap(({ page, x, y, width, height }, i) => {
    const caption = captions[i];
    const out = x < MARGIN - 0.1 || x + width > WIDTH - MARGIN + 0.1 || y < MARGIN || y + height > HEIGHT - MARGIN;
    const below = caption?.page === page && caption.y < y && y - caption.y < 20 && Math.abs(caption.x - x) < 0.1;
    return [...(out ? [`picture ${i} over a margin`] : []), ...(below ? [] : [`picture ${i} without its caption`])];
  });
};

describe('photos on a build record', () => {
  it('stand under the defect they belong to, behind the map, each with its number, day and digest', async () => {
    const { text } = await record({ D1: [landscape], D2: [], D4: [portrait, landscape] });
    const said = [
      ...[
        'Hull map',
        'Photos of the defects',
        'made smaller',
        'Defect D1',
        'air bubble (void); port, 3.42 m from transom',
      ],
      ...['Photo 1 of defect D1', 'taken Mon 23 Nov 2026 07:40, by Q-03', `SHA-256 ${digest('D1/1').slice(0, 16)} …`],
      ...['Defect D4', 'Photo 1 of defect D4', 'Photo 2 of defect D4', 'FIPS 180-4'],
      ...['photo 1 of defect D1', digest('D1/1'), 'photo 1 of defect D4', digest('D4/1'), digest('D4/2'), 'Repairs'],
    ];
    expect(outOfOrder(text, said)).toBeUndefined();
    const shown = text.slice(text.indexOf('Photosofthedefects'));
    expect(shown.slice(0, shown.indexOf('Repairs'))).not.toContain('DefectD2');
  });

  it('say in their alternative text what they are, with the whole digest', async () => {
    const { bytes } = await record({ D4: [portrait] });
    expect(await readAlternatives(bytes)).toContain(
      `Photo 1 of defect D4, taken Mon 23 Nov 2026 07:40, by Q-03. SHA-256 of the original: ${digest('D4/1')}.`,
    );
    expect([...(await structureOf(bytes)).roles]).toEqual(expect.arrayContaining(['Figure', 'H3', 'P']));
  });

  it.each([
    [1, 2],
    [4, 2],
    [5, 3],
    [9, 3],
  ])('%i of one defect stand %i in a row, in their own proportions', async (count, across) => {
    const images = await readImages((await record({ D4: times(count, landscape) })).bytes);
    const column = (CONTENT - 10 * (across - 1)) / across;
    expect(images).toHaveLength(count);
    images.forEach(({ x, width, height }, i) => {
      expect(width).toBeCloseTo(column, 1);
      expect(width / height).toBeCloseTo(4 / 3, 4);
      expect(x).toBeCloseTo(MARGIN + (i % across) * (column + 10), 1);
    });
  });

  it('of any shape stand in a square as wide as the column, and none is blown up', async () => {
    const jpeg = await noisy(24, 16).jpeg().toBuffer();
    const tiny = { width: 24, height: 16, read: () => jpeg };
    const [high, flat, small] = await readImages((await record({ D4: [portrait, strip, tiny] })).bytes);
    expect([high?.width, high?.height].map((side) => side?.toFixed(1))).toEqual(['187.6', '250.1']);
    expect([flat?.width, flat?.height].map((side) => side?.toFixed(1))).toEqual(['250.1', '2.5']);
    expect([small?.width, small?.height]).toEqual([24, 16]);
  });

  it.each(Array.from({ length: 12 }, (_, i) => 2 * i + 1))(
    'never part from their captions at a page end, behind %i defects',
    async (before) => {
      const defects = Array.from({ length: before }, (_, i): [string, readonly PictureView[]] => [`D${i + 10}`, []]);
      const paper = await record({ ...Object.fromEntries(defects), D90: [portrait, landscape], D91: [landscape] });
      const images = await readImages(paper.bytes);
      expect(images).toHaveLength(3);
      expect(photoFaults(paper, images)).toEqual([]);
      expect(pageFaults(paper)).toEqual([]);
    },
  );

  it('may be four hundred: each is read when it is drawn, and is there once', async () => {
    const reads: string[] = [];
    const counted = { ...landscape, read: () => (reads.push('read'), landscape.read()) };
    const paper = await record({ D1: times(3, counted), D2: times(397, counted) });
    expect(reads).toHaveLength(400);
    const images = await readImages(paper.bytes);
    expect(images).toHaveLength(400);
    expect(photoFaults(paper, images)).toEqual([]);
    expect(pageFaults(paper)).toEqual([]);
  }, 60_000);

  it('give the same bytes for the same pictures', async () => {
    const [one, other] = [await record({ D4: [portrait, null] }), await record({ D4: [portrait, null] })];
    expect(one.bytes.equals(other.bytes)).toBe(true);
  });
});

describe('a photo whose file is not there', () => {
  it.each<[string, () => PictureView | null]>([
    ['before the paper is drawn', () => null],
    ['while it is drawn', () => ({ ...strip, read: () => undefined })],
  ])('%s prints as a notice with its digest, and the others as ever', async (_when, missing) => {
    const paper = await record({ D4: [missing(), landscape, ...times(4, missing())] });
    const notices = paper.text.match(/Thisphotocannotbeprinted:itsfileismissingordamaged\.SHA-256oftheoriginal:/g);
    expect(notices).toHaveLength(5);
    for (const nth of [1, 2, 3, 4, 5, 6]) expect(paper.text).toContain(`Photo${nth}ofdefectD4`);
    expect(paper.text.split(digest('D4/1'))).toHaveLength(3);
    expect(await readImages(paper.bytes)).toHaveLength(1);
    expect(pageFaults(paper)).toEqual([]);
  });
});

describe('photos on a repair order', () => {
  it('are those of the defects it is about, behind the map, before the laminate', async () => {
    const defects = [aDefect({ photos: photos('D4', [landscape, portrait]) }), aDefect({ mark: 'D5' })];
    const paper = await drawn((created) => drawRepairOrder(aRepairOrder({ defects }), created));
    const said = ['Hull map with', 'Photos of these defects', 'Photo 1 of defect D4', 'Photo 2 of', 'Laminate that'];
    expect(outOfOrder(paper.text, said)).toBeUndefined();
    expect((await structureOf(paper.bytes)).bookmarks).toContain('Photos of these defects');
    const images = await readImages(paper.bytes);
    expect(images).toHaveLength(2);
    expect(photoFaults(paper, images)).toEqual([]);
    expect(pageFaults(paper)).toEqual([]);
  });

  it('are not spoken of where there are none', async () => {
    const { text } = await drawn((created) => drawRepairOrder(aRepairOrder(), created));
    expect(text).not.toMatch(/photo/i);
  });
});
