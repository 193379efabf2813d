import type { BuildRecordView, HatchKind, MapMark } from '@hull-record/paper';
import { aLayer, someReadings } from './paper-layers.js';
import { aDefect, aHullPart, aRepair, aView, SKIN } from './paper-views.js';

const mark = (name: string, x: number, girth: number): MapMark => ({
  mark: name,
  place: { surface: 'shell', side: 'port', fromTransomMm: x, girthMm: girth },
  state: 'open',
});

const HATCHES: readonly HatchKind[] = ['gel coat', 'mat', 'woven', 'core', 'putty', 'board', 'other'];
const FOREIGN = '船体记录 مرحبا بالعالم Łódź šķiedra ≥ 36 µm 🚤';

/** Everything at once: 400 readings, 60 defects in one spot, names of 200 characters, writing of many scripts. */
export const anExtremeView = (): BuildRecordView => {
  const long = (tag: string): string => `${tag}${'x'.repeat(199 - tag.length)}!`;
  const layers = HATCHES.map((hatch, i) =>
    aLayer({
      position: String(i + 1),
      hatch,
      name: long(`Layer${i}`),
      note: `${FOREIGN} ${'word '.repeat(900)}end${i}.`,
      readings: [someReadings(i === 0 ? 400 : 1)],
    }),
  );
  const marks = Array.from({ length: 60 }, (_, i) => mark(`D${i + 1}`, 4000 + (i % 8) * 60, 600 + i * 9));
  return aView({
    plantName: long('Plant'),
    model: FOREIGN,
    parts: [
      aHullPart({
        kind: long('Kind'),
        layers,
        defects: marks.map(({ mark: name }) => aDefect({ mark: name, kind: long('Kind '), note: FOREIGN })),
        repairs: [
          aRepair({
            outside: {
              ...{ done: long('Done'), material: FOREIGN, knownFrom: `${long('Known')}; ${FOREIGN}` },
              ...{ note: 'yard '.repeat(900), photos: long('SHA') },
            },
          }),
        ],
        map: { skin: SKIN, seenFrom: 'outside, from below', marks: [...marks, mark('OFF', 90000, 10)] },
      }),
    ],
  });
};
