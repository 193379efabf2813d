import type { MaterialView } from '@hull-record/contracts';
import type { Hatch } from './hatch-tiles.js';

/** The role that gives a layer its look, the telling one first: resin is in nearly every layer. */
const BY_ROLE: readonly (readonly [role: string, hatch: Hatch])[] = [
  ['core', 'core'],
  ['board', 'board'],
  ['glass', 'mat'],
  ['putty', 'putty'],
  ['bonding paste', 'putty'],
  ['gel coat', 'gel'],
];

/** Words for woven or stitched cloth; a glass without any is drawn as mat. Common practice, no source. */
const CLOTH = /woven|stitch|biax|triax|quadrax|cloth/i;

/** How a layer is drawn: by the role of the materials its schedule allows, cloth by the words of its plies. */
export const layerHatch = (
  layer: { readonly plies: readonly string[]; readonly materials: readonly { readonly material: string }[] },
  materials: readonly Pick<MaterialView, 'code' | 'name' | 'role'>[],
): Hatch => {
  const allowed = layer.materials.flatMap(({ material }) => materials.find(({ code }) => code === material) ?? []);
  const hatch = BY_ROLE.find(([role]) => allowed.some((material) => material.role === role))?.[1] ?? 'other';
  const words = [...layer.plies, ...allowed.map(({ name }) => name)].join(' ');
  return hatch === 'mat' && CLOTH.test(words) ? 'weave' : hatch;
};
