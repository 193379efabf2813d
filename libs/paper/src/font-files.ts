import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { unpackWoff } from './open-type.js';

/** The faces of the house: words, and codes or figures. */
export type Face = 'text' | 'text-bold' | 'text-italic' | 'mono' | 'mono-bold';

/** A font that a face falls back on for characters of some scripts. */
export interface Fallback {
  readonly name: string;
  /** Characters it is asked about at all, so that no other text opens its file. */
  readonly scripts: RegExp;
  readonly rightToLeft: boolean;
  readonly file: (bold: boolean) => string;
}

const require = createRequire(import.meta.url);

/** Subsets of the house's own families. */
export const SUBSETS = ['latin', 'latin-ext'] as const;

const CUTS: Readonly<Record<Face, readonly [family: 'next' | 'mono', cut: string]>> = {
  text: ['next', '400-normal'],
  'text-bold': ['next', '700-normal'],
  'text-italic': ['next', '400-italic'],
  mono: ['mono', '400-normal'],
  'mono-bold': ['mono', '700-normal'],
};

/** The file of a face of Atkinson Hyperlegible Next or Mono (SIL OFL 1.1). */
export const houseFile = (face: Face, subset: (typeof SUBSETS)[number]): string => {
  const [kind, cut] = CUTS[face];
  const name = `atkinson-hyperlegible-${kind}`;
  return `@fontsource/${name}/files/${name}-${subset}-${cut}.woff`;
};

const subset = (family: string, part: string, scripts: RegExp, rightToLeft = false): Fallback => ({
  name: `${family} ${part}`,
  scripts,
  rightToLeft,
  file: (bold) => `@fontsource/${family}/files/${family}-${part}-${bold ? 700 : 400}-normal.woff`,
});

/** The package names its own door only; its fonts lie beside it. */
const besideDoor = (name: string, file: string): string => join(dirname(require.resolve(name)), '..', 'fonts', file);

/**
 * What every face falls back on, in this order, each regular or bold: all under SIL OFL 1.1.
 *
 * Vazirmatn and not Noto for Arabic, because it draws each letter whole: where dots are glyphs of their own, a PDF
 * cannot tell the letters apart when its text is read back. One large font for Chinese, because files cut by ranges
 * hold only half as many characters; it holds kana too.
 */
export const FALLBACKS: readonly Fallback[] = [
  ...['latin-ext', 'vietnamese'].map((part) => subset('noto-sans', part, /\p{Script=Latin}/u)),
  ...['cyrillic', 'cyrillic-ext'].map((part) => subset('noto-sans', part, /\p{scx=Cyrillic}/u)),
  ...['greek', 'greek-ext'].map((part) => subset('noto-sans', part, /\p{scx=Greek}/u)),
  subset('noto-sans-hebrew', 'hebrew', /\p{scx=Hebrew}/u, true),
  subset('vazirmatn', 'arabic', /\p{scx=Arabic}/u, true),
  subset('nanum-gothic', 'korean', /\p{Script=Hangul}/u),
  {
    name: 'noto-sans-hans',
    scripts: /(?!\p{Emoji_Presentation})[\p{scx=Han}\p{scx=Hira}\p{scx=Kana}\p{scx=Bopo}\p{Script=Common}]/u,
    rightToLeft: false,
    file: (bold) => besideDoor('@embedpdf/fonts-sc', `NotoSansHans-${bold ? 'Bold' : 'Regular'}.otf`),
  },
];

/** Fonts that were read and unpacked, by file: they are the same for every paper. */
const unpacked = new Map<string, Buffer>();

/** The OpenType font in a file of a package, read when it is first asked for. */
export const fontFile = (file: string): Buffer => {
  const known = unpacked.get(file) ?? read(require.resolve(file));
  unpacked.set(file, known);
  return known;
};

const read = (path: string): Buffer => (path.endsWith('.woff') ? unpackWoff(readFileSync(path)) : readFileSync(path));
