/** What a photo may be: the name of its format, and its media type. */
export interface PhotoType {
  readonly format: 'jpeg' | 'png' | 'webp';
  readonly type: string;
}

const SIGNATURES: readonly (PhotoType & { readonly begins: (start: string) => boolean })[] = [
  { format: 'jpeg', type: 'image/jpeg', begins: (start) => start.startsWith('\xff\xd8\xff') },
  { format: 'png', type: 'image/png', begins: (start) => start.startsWith('\x89PNG\r\n\x1a\n') },
  { format: 'webp', type: 'image/webp', begins: (start) => start.startsWith('RIFF') && start.startsWith('WEBP', 8) },
];

/** The last chunk of any PNG: IEND is empty, so that its checksum is always this. */
const PNG_END = Buffer.from('IEND\xae\x42\x60\x82', 'latin1');

/**
 * What a file is by its first bytes, whatever its name says; undefined of anything that is not taken.
 *
 * Nothing else reaches a decoder: an SVG can hold a script, and decoders of many formats are many ways in. Signatures:
 * ITU-T T.81 (SOI, and the byte that begins the marker after it), ISO/IEC 15948 5.2, RFC 9649 2.4.
 */
export const photoTypeOf = (file: Buffer): PhotoType | undefined => {
  const start = file.toString('latin1', 0, 16);
  const found = SIGNATURES.find(({ begins }) => begins(start));
  return found === undefined ? undefined : { format: found.format, type: found.type };
};

/** Whether a PNG has its last chunk (ISO/IEC 15948 11.2.5); one cut off behind its pixels decodes without a complaint. */
export const pngIsWhole = (file: Buffer): boolean => file.includes(PNG_END);
