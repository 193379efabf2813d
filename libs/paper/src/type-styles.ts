import type { Face } from './fonts.js';
import { INK } from './ink.js';

/** A face at a size with its line height, in points; nothing is under 8 pt. */
export interface TypeStyle {
  readonly face: Face;
  readonly size: number;
  readonly leading: number;
  readonly ink: string;
}

/** The type of the paper by what it is for. */
export const STYLES = {
  title: { face: 'text-bold', size: 22, leading: 28, ink: INK.ink },
  part: { face: 'text-bold', size: 15, leading: 19, ink: INK.ink },
  section: { face: 'text-bold', size: 11.5, leading: 15, ink: INK.ink },
  layer: { face: 'text-bold', size: 10, leading: 13, ink: INK.ink },
  group: { face: 'text-bold', size: 9, leading: 12, ink: INK.ink },
  body: { face: 'text', size: 9, leading: 12, ink: INK.ink },
  bold: { face: 'text-bold', size: 9, leading: 12, ink: INK.ink },
  empty: { face: 'text-italic', size: 9, leading: 12, ink: INK.soft },
  label: { face: 'text', size: 8, leading: 12, ink: INK.soft },
  note: { face: 'text', size: 8, leading: 10.5, ink: INK.soft },
  code: { face: 'mono', size: 8.5, leading: 12, ink: INK.ink },
  'code-bold': { face: 'mono-bold', size: 8.5, leading: 12, ink: INK.ink },
  'code-note': { face: 'mono', size: 8, leading: 10.5, ink: INK.soft },
  number: { face: 'mono-bold', size: 15, leading: 20, ink: INK.ink },
} as const satisfies Readonly<Record<string, TypeStyle>>;

/** The name of a type style. */
export type StyleName = keyof typeof STYLES;
