/** A glyph of closed straight-sided contours, font units, y up; contours run clockwise. */
export interface Glyph {
  readonly codePoints: readonly number[];
  readonly advance: number;
  readonly contours: readonly (readonly (readonly [number, number])[])[];
}

/** What a small font needs beside its glyphs; 1000 units to the em. */
export interface FontFacts {
  readonly name: string;
  readonly bold: boolean;
  readonly ascent: number;
  readonly descent: number;
}

const u16 = (...values: readonly number[]): Buffer => {
  const bytes = Buffer.alloc(values.length * 2);
  values.forEach((value, i) => bytes.writeUInt16BE(value & 0xffff, i * 2));
  return bytes;
};

const u32 = (...values: readonly number[]): Buffer => {
  const bytes = Buffer.alloc(values.length * 4);
  values.forEach((value, i) => bytes.writeUInt32BE(value >>> 0, i * 4));
  return bytes;
};

const padded = (bytes: Buffer): Buffer => Buffer.concat([bytes, Buffer.alloc((4 - (bytes.length % 4)) % 4)]);

/**
 * Writes a TrueType font (ISO/IEC 14496-22) with an empty glyph 0 and the glyphs given; enough for embedding in a PDF.
 *
 * Without OS/2 table and hinting, so not for installing on a system.
 */
export const writeTrueType = (facts: FontFacts, glyphs: readonly Glyph[]): Uint8Array => {
  const all: readonly Glyph[] = [{ codePoints: [], advance: 600, contours: [] }, ...glyphs];
  const outlines = all.map(outline);
  const loca = outlines.reduce<number[]>((at, bytes) => [...at, (at.at(-1) ?? 0) + bytes.length], [0]);
  const tables: readonly (readonly [string, Buffer])[] = [
    ['cmap', cmap(all)],
    ['glyf', Buffer.concat(outlines)],
    ['head', head(facts, box(all.flatMap((glyph) => glyph.contours.flat())))],
    ['hhea', hhea(facts, all)],
    ['hmtx', u16(...all.flatMap((glyph) => [glyph.advance, left(glyph)]))],
    ['loca', u32(...loca)],
    ['maxp', maxp(all)],
    ['name', name(facts.name)],
    ['post', u32(0x00030000, 0, 0, 0, 0, 0, 0, 0)],
  ];
  return assemble(tables);
};

const assemble = (tables: readonly (readonly [string, Buffer])[]): Uint8Array => {
  const power = 2 ** Math.floor(Math.log2(tables.length));
  const start = 12 + tables.length * 16;
  const directory: Buffer[] = [];
  const bodies: Buffer[] = [];
  let offset = start;
  for (const [tag, bytes] of tables) {
    directory.push(Buffer.from(tag, 'latin1'), u32(checksum(padded(bytes)), offset, bytes.length));
    bodies.push(padded(bytes));
    offset += padded(bytes).length;
  }
  const range = u16(tables.length, power * 16, Math.log2(power), (tables.length - power) * 16);
  return Buffer.concat([u32(0x00010000), range, ...directory, ...bodies]);
};

const checksum = (bytes: Buffer): number => {
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  return sum;
};

const box = (points: readonly (readonly [number, number])[]): readonly [number, number, number, number] => {
  if (points.length === 0) return [0, 0, 0, 0];
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
};

const left = (glyph: Glyph): number => box(glyph.contours.flat())[0];

const outline = ({ contours }: Glyph): Buffer => {
  const points = contours.flat();
  if (points.length === 0) return Buffer.alloc(0);
  const ends = contours.reduce<number[]>((at, contour) => [...at, (at.at(-1) ?? -1) + contour.length], []);
  const deltas = (axis: 0 | 1): Buffer =>
    u16(...points.map((point, i) => point[axis] - (i === 0 ? 0 : (points[i - 1]?.[axis] ?? 0))));
  const onCurve = Buffer.alloc(points.length, 1);
  return padded(Buffer.concat([u16(contours.length, ...box(points), ...ends, 0), onCurve, deltas(0), deltas(1)]));
};

const head = (facts: FontFacts, bounds: readonly number[]): Buffer =>
  Buffer.concat([
    u32(0x00010000, 0x00010000, 0, 0x5f0f3cf5),
    u16(0, 1000),
    u32(0, 0, 0, 0), // made and changed: fixed, so that equal views give equal bytes
    u16(...bounds, facts.bold ? 1 : 0, 8, 2, 1, 0),
  ]);

const hhea = ({ ascent, descent }: FontFacts, glyphs: readonly Glyph[]): Buffer =>
  Buffer.concat([
    u32(0x00010000),
    u16(ascent, descent, 0, Math.max(...glyphs.map((glyph) => glyph.advance))),
    u16(0, 0, 1000, 1, 0, 0, 0, 0, 0, 0, 0, glyphs.length),
  ]);

const maxp = (glyphs: readonly Glyph[]): Buffer => {
  const contours = Math.max(...glyphs.map((glyph) => glyph.contours.length));
  const points = Math.max(...glyphs.map((glyph) => glyph.contours.flat().length));
  return Buffer.concat([u32(0x00010000), u16(glyphs.length, points, contours, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0)]);
};

/** Format 4 with one segment for each character; only characters below U+FFFF. */
const cmap = (glyphs: readonly Glyph[]): Buffer => {
  const pairs = glyphs
    .flatMap((glyph, id) => glyph.codePoints.map((code) => ({ code, id })))
    .sort((a, b) => a.code - b.code);
  const codes = [...pairs.map(({ code }) => code), 0xffff];
  const shifts = [...pairs.map(({ code, id }) => id - code), 1];
  const count = codes.length;
  const power = 2 ** Math.floor(Math.log2(count));
  const search = [count * 2, power * 2, Math.log2(power), (count - power) * 2];
  const length = 16 + count * 8;
  const zeros = codes.map(() => 0);
  return Buffer.concat([
    u16(0, 1, 3, 1),
    u32(12),
    u16(4, length, 0, ...search, ...codes, 0, ...codes, ...shifts, ...zeros),
  ]);
};

const name = (postscript: string): Buffer => {
  const text = Buffer.from(postscript, 'utf16le').swap16();
  const ids = [1, 4, 6];
  const records = ids.flatMap((id) => [3, 1, 0x409, id, text.length, 0]);
  return Buffer.concat([u16(0, ids.length, 6 + ids.length * 12, ...records), text]);
};
