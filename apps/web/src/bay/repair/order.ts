import type { DefectView, PartView } from '@hull-record/contracts';
import {
  checkRepair,
  plySizes,
  taperLength,
  toSi,
  type PatchPlan,
  type Ply,
  type RepairFinding,
} from '@hull-record/trade';

type Layer = PartView['layers'][number]['scheduled'] & {
  readonly demand: PartView['layers'][number]['demand'];
};

/** From which side the damage is ground out. */
export type From = 'outside' | 'inside';

/** One ply that a patch replaces, and the layer it is of. */
export interface ReplacedPly extends Ply {
  readonly layer: string;
  readonly words: string;
}

/** The laminate that is ground out: the layers from the damaged one to the side that is ground. */
export interface Cut {
  readonly layers: readonly string[];
  /** From the bottom of the grind-out; empty where the schedule does not name the glass. */
  readonly plies: readonly ReplacedPly[];
  /** Thickness of what is cut, and of the whole laminate, mm, as far as the schedule tells; gel coat not included. */
  readonly cutMm: number;
  readonly wholeMm: number;
  /** Layers in between that the schedule gives no thickness of, such as core or gel coat. */
  readonly untold: readonly string[];
}

const layersOf = (part: PartView): readonly Layer[] =>
  part.layers.map(({ scheduled, demand }) => ({ ...scheduled, demand }));

/** What is ground out of a part to reach a layer from a side; of an unknown layer everything is. */
export const cutOf = (part: PartView, layer: string | null, from: From): Cut => {
  const all = layersOf(part);
  const found = all.findIndex(({ code }) => code === layer);
  const at = found >= 0 ? found : from === 'outside' ? all.length - 1 : 0;
  // The bottom of the grind-out is the damaged layer itself.
  const cut = from === 'outside' ? all.slice(0, at + 1).toReversed() : all.slice(at);
  const thickness = (layers: readonly Layer[]): number =>
    layers.reduce((sum, { demand }) => sum + (demand?.thicknessMm ?? 0), 0);
  return {
    layers: cut.map(({ code }) => code),
    plies: cut.flatMap(pliesOf),
    cutMm: thickness(cut),
    wholeMm: thickness(all),
    untold: cut.filter(({ demand }) => demand === null).map(({ code }) => code),
  };
};

const pliesOf = ({ code, plies: named, laminate }: Layer): readonly ReplacedPly[] =>
  (laminate?.plies ?? []).map(({ arealMass, fibreMassFraction }, i) => ({
    layer: code,
    words: named.length === laminate?.plies.length ? (named[i] ?? '') : `${arealMass.value} ${arealMass.unit}`,
    arealMassKgPerM2: toSi(arealMass.value, arealMass.unit),
    fibreMassFraction,
  }));

/** A repair as it is planned, mm: the opening that is left when all that is damaged is out, and how it is tapered. */
export interface Plan {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly depthMm: number;
  readonly originalMm: number;
  readonly ratio: number;
  readonly sides: 'one' | 'both';
}

/** A plan worked out: the taper, what is ground off in all, the plies with their sizes, and what is wrong with it. */
export interface Order {
  readonly taperMm: number;
  readonly outerLengthMm: number;
  readonly outerWidthMm: number;
  readonly patch: PatchPlan | null;
  readonly findings: readonly RepairFinding[];
}

const sound = (mm: number): boolean => Number.isFinite(mm) && mm > 0;

/** Works a plan out by the rules of the trade; null while a figure of it is missing. */
export const orderOf = (plan: Plan, plies: readonly Ply[]): Order | null => {
  const { lengthMm, widthMm, depthMm, originalMm, ratio, sides } = plan;
  if (![lengthMm, widthMm, depthMm, originalMm, ratio].every(sound)) return null;
  const taperMm = taperLength(sides === 'both' ? depthMm / 2 : depthMm, ratio);
  const patch = plies.length === 0 ? null : plySizes({ lengthMm, widthMm }, plies, ratio);
  const patchMm = patch?.thicknessMm ?? depthMm;
  return {
    taperMm,
    outerLengthMm: lengthMm + 2 * taperMm,
    outerWidthMm: widthMm + 2 * taperMm,
    patch,
    findings: checkRepair({ originalMm, damageDepthMm: depthMm, taperMm, patchMm, sides }),
  };
};

/** The opening that holds all of these defects when each is as large as it was measured, mm; undefined when none was. */
export const openingOf = (
  defects: readonly DefectView[],
): { readonly lengthMm: number | undefined; readonly widthMm: number | undefined } => {
  const largest = (sizes: readonly (number | null)[]): number | undefined => {
    const known = sizes.filter((size): size is number => size !== null);
    return known.length === 0 ? undefined : Math.max(...known);
  };
  const lengthMm = largest(defects.map((defect) => defect.lengthMm ?? defect.widthMm));
  return { lengthMm, widthMm: largest(defects.map((defect) => defect.widthMm)) ?? lengthMm };
};
