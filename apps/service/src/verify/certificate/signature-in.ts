/** Where the signature of a PDF is, and over what (ISO 32000-1, section 12.8.1). */
export interface SignatureIn {
  readonly signed: Buffer;
  /** PKCS #7 in DER. */
  readonly cms: Buffer;
}

const RANGE = /\/ByteRange\s*\[\s*(\d+)\s+(\d+)\s+(\d+)\s+(\d+)\s*\]/g;

/** Reads the one signature of a file, which has to be over all of it; a sentence when it is not. */
export const signatureIn = (pdf: Buffer): SignatureIn | string => {
  const text = pdf.toString('latin1');
  const ranges = [...text.matchAll(RANGE)].map((found) => found.slice(1).map(Number));
  const [range] = ranges;
  if (range === undefined) return 'The file has no signature.';
  if (ranges.length > 1) return 'The file has more than one signature.';
  const [from = 0, first = 0, second = 0, rest = 0] = range;
  const between = text.slice(first, second);
  const whole = from === 0 && second + rest === pdf.length && /^<(?:[0-9a-f]{2})+>$/.test(between);
  if (!whole) return 'The signature is not over the whole file.';
  const der = Buffer.from(between.slice(1, -1), 'hex');
  const length = lengthOf(der);
  if (der.subarray(length).some((byte) => byte !== 0)) return 'Something stands behind the signature.';
  return { signed: Buffer.concat([pdf.subarray(0, first), pdf.subarray(second)]), cms: der.subarray(0, length) };
};

/** Length of the first value of DER (X.690, section 8.1.3): the room behind the signature is filled with zeros. */
const lengthOf = (der: Buffer): number => {
  const size = der[1] ?? 0;
  if (size < 0x80) return 2 + size;
  const bytes = size & 0x7f;
  return 2 + bytes + der.subarray(2, 2 + bytes).reduce((sum, byte) => sum * 256 + byte, 0);
};
