import type { Skin } from '@hull-record/trade';

export type PartKind = 'hull molding' | 'deck' | 'stringer grid';

/** A model of the demo. `area` is what is laminated, m2 by part. */
export interface DemoModel {
  readonly code: string;
  readonly name: string;
  /** How the model's hull numbers and serials begin. */
  readonly short: string;
  readonly firstNumber: number;
  readonly area: Readonly<Record<PartKind, number>>;
  readonly skins: Readonly<Record<PartKind, Skin>>;
}

/** Invented girths: a V-bottom with one chine, full aft and drawn in at the bow, scaled to length and half girth. */
const hullSkin = (lengthMm: number, girthMm: number): Skin => {
  const at = (x: number, edge: number, chine: number, waterline: number) => ({
    xMm: Math.round(x * lengthMm),
    edgeGirthMm: Math.round(edge * girthMm),
    chineGirthMm: Math.round(chine * girthMm),
    waterlineGirthMm: Math.round(waterline * girthMm),
  });
  return {
    lengthMm,
    stations: [
      at(0, 0.95, 0.57, 0.62),
      at(0.25, 0.99, 0.58, 0.62),
      at(0.5, 1, 0.55, 0.54),
      at(0.75, 0.87, 0.44, 0.3),
      at(0.9, 0.58, 0.26, 0.08),
      at(1, 0.2, 0.1, 0),
    ],
    transom: { halfWidthMm: Math.round(girthMm * 0.52), heightMm: Math.round(girthMm * 0.4) },
  };
};

const flatSkin = (lengthMm: number, girthMm: number): Skin => ({
  lengthMm,
  stations: [
    { xMm: 0, edgeGirthMm: girthMm },
    { xMm: Math.round(lengthMm * 0.6), edgeGirthMm: girthMm },
    { xMm: lengthMm, edgeGirthMm: Math.round(girthMm * 0.25) },
  ],
});

const model = (short: string, name: string, firstNumber: number, lengthMm: number, girthMm: number): DemoModel => {
  const square = (lengthMm * girthMm) / 1e6;
  return {
    ...{ code: `TS${short}`, name: `TS ${short}, ${name}`, short, firstNumber },
    area: { 'hull molding': square * 1.75, deck: square * 1.25, 'stringer grid': square * 0.5 },
    skins: {
      'hull molding': hullSkin(lengthMm, girthMm),
      deck: flatSkin(lengthMm - 200, Math.round(girthMm * 0.6)),
      'stringer grid': flatSkin(Math.round(lengthMm * 0.7), Math.round(girthMm * 0.4)),
    },
  };
};

export const MODELS = [
  model('86', 'open, 8.6 m', 104, 8_600, 2_250),
  model('62', 'cuddy, 6.2 m', 71, 6_200, 1_800),
  model('74', 'pilothouse, 7.4 m', 11, 7_400, 2_050),
] as const;

/** The molds of a part: hulls take turns in three of them, decks and grids in two. */
export const moldsOf = ({ short }: DemoModel, kind: PartKind): readonly string[] =>
  kind === 'hull molding'
    ? [1, 2, 3].map((n) => `M-${short}-${n}`)
    : [1, 2].map((n) => `M-${short}-${kind === 'deck' ? 'D' : 'G'}${n}`);
