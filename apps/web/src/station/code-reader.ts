import type { CodeReader } from './code-library.js';

interface Detector {
  readonly detect: (of: HTMLVideoElement) => Promise<readonly { readonly rawValue: string }[]>;
}
interface MakeDetector {
  new (options: { readonly formats: readonly string[] }): Detector;
  readonly getSupportedFormats: () => Promise<readonly string[]>;
}

/** The codes of our labels are Data Matrix; suppliers print the others too. */
const FORMATS = ['data_matrix', 'qr_code', 'code_128'];

/** The browser itself reads codes where it can (Barcode Detection API); where it cannot, a library is fetched that does. */
export const openCodeReader = async (): Promise<CodeReader> =>
  (await ownReader()) ?? (await import('./code-library.js')).openCodeLibrary();

const ownReader = async (): Promise<CodeReader | undefined> => {
  const { BarcodeDetector: Make } = globalThis as unknown as { readonly BarcodeDetector?: MakeDetector };
  if (Make === undefined) return undefined;
  // A browser may have the interface on a system that reads nothing for it.
  const known = await Make.getSupportedFormats();
  if (!FORMATS.every((format) => known.includes(format))) return undefined;
  const detector = new Make({ formats: FORMATS });
  return {
    read: async (shown) => (await detector.detect(shown))[0]?.rawValue,
    close: () => undefined,
  };
};
