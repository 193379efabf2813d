import { CERTIFICATE_STATEMENT, type CertificateContent } from '@hull-record/contracts';
import type { PartRow } from '../../platform/views/making.js';
import { plantTime } from '../../platform/papers/plant-time.js';
import type { RecordFacts } from '../record-facts.js';
import { placeOf } from '../word-defects.js';
import { defectKind } from '../word-values.js';

/** What is known of an issue beside the facts of the hull. */
export interface OfIssue {
  readonly number: string;
  readonly issue: number;
  readonly issuedAt: Date;
  readonly releasedAt: Date;
  readonly signedBy: string;
  /** So many lines of layers, and of repairs and concessions together, find room. */
  readonly room: number;
}

/** What a certificate prints of a hull: materials and readings by layer, what was put right, what was conceded. */
export const wordCertificate = (facts: RecordFacts, of: OfIssue): CertificateContent => {
  const time = plantTime(facts.hull.time_zone);
  const day = (at: Date): string => /^\d+ \w+ \d+/.exec(time.at(at))?.[0] ?? '';
  const all = facts.parts.map((part) => ({
    part: part.number,
    kind: part.kind,
    layers: layersOf(facts, part, day),
  }));
  const repaired = repairsOf(facts);
  const concessions = concessionsOf(facts);
  const parts = cut(all, of.room);
  const lines = Math.max(4, Math.floor(of.room / 3));
  const layersLeft = count(all) - count(parts);
  const leftOut = [
    ...left(layersLeft, 'layers'),
    ...left(repaired.length - lines, 'repairs'),
    ...left(concessions.length - lines, 'concessions'),
  ];
  return {
    format: 'hull-record/certificate/1',
    plant: facts.hull.plant,
    ...{ number: of.number, issue: of.issue, issuedOn: day(of.issuedAt), signedBy: of.signedBy },
    hull: facts.hull.number,
    hin: facts.hins.at(-1)?.as_printed ?? null,
    model: `${facts.hull.model}, ${facts.hull.model_name}`,
    released: day(of.releasedAt),
    ...{ parts, repaired: repaired.slice(0, lines), concessions: concessions.slice(0, lines), leftOut },
    statement: CERTIFICATE_STATEMENT,
  };
};

type Parts = CertificateContent['parts'];

const count = (parts: Parts): number => parts.reduce((sum, { layers }) => sum + layers.length, 0);

/** The first parts with as many layers as there is room for. */
const cut = (parts: Parts, room: number): Parts => {
  let rest = room;
  return parts.flatMap((part) => {
    const layers = part.layers.slice(0, Math.max(0, rest));
    rest -= layers.length;
    return layers.length === 0 ? [] : [{ ...part, layers }];
  });
};

const left = (more: number, what: string): string[] =>
  more > 0 ? [`${more} more ${what} find no room here and are in the build record.`] : [];

const layersOf = (facts: RecordFacts, part: PartRow, day: (at: Date) => string): Parts[number]['layers'] =>
  part.layers.flatMap((layer) =>
    facts.layers
      .filter((made) => made.part_id === part.id && made.schedule_layer_id === layer.id)
      .map((made) => ({
        name: layer.name,
        materials: materialsOf(facts, made.root),
        made: day(made.ended_at),
        readings: readingsOf(facts, made.root),
      })),
  );

/** A mixture is of no one material: what it is made of is said, down to what was received. */
const materialsOf = (facts: RecordFacts, of: string): string => {
  const used = facts.used.filter(({ into_id }) => into_id === of);
  const names = used.flatMap(({ material, lot_id }) =>
    material === null
      ? (facts.madeOf.byLot.get(lot_id)?.supplierLots.map((source) => source.material) ?? [])
      : [material],
  );
  return [...new Set(names)].filter((name) => name !== '').join(', ');
};

const readingsOf = (facts: RecordFacts, of: string): string => {
  const taken = facts.readings.filter((reading) => reading.of_id === of);
  return [...new Set(taken.map(({ what, unit }) => `${what}\t${unit}`))]
    .map((kind) => {
      const [what = '', unit = ''] = kind.split('\t');
      const spots = taken.filter((reading) => reading.what === what && reading.unit === unit);
      const values = spots.map(({ value }) => value).sort((a, b) => Number(a) - Number(b));
      return `${what} ${values[0] ?? ''} to ${values.at(-1) ?? ''} ${unit}, ${spots.length} spots`;
    })
    .join('; ');
};

const repairsOf = (facts: RecordFacts): string[] =>
  facts.repairs
    .filter(({ accepted }) => accepted === true)
    .map((repair) => {
      const defects = facts.defects.filter((defect) => repair.defects.includes(defect.mark));
      const what = defects.map((defect) => `${defectKind(defect.kind).label}, ${placeOf(defect)}`).join('; ');
      return `${repair.mark}: ${what === '' ? 'repaired' : what}. Repaired, and accepted by another person.`;
    });

/** In neutral words: what it is, and under which concession; not why. */
const concessionsOf = (facts: RecordFacts): string[] => {
  const decided = [...facts.dispositions.values()].filter(({ concession }) => concession !== null);
  return [
    ...new Set(
      decided.map(({ of_id, concession }) => {
        const defect = facts.defects.find(({ id }) => id === of_id);
        const reading = facts.readings.find(({ root }) => root === of_id);
        const what = defect
          ? `${defectKind(defect.kind).label}, ${placeOf(defect)}`
          : reading
            ? `${reading.what} ${reading.value} ${reading.unit}`
            : 'a deviation of the work';
        return `${what}: used as is, concession ${concession ?? ''}.`;
      }),
    ),
  ].sort();
};
