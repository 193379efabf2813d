import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import program from 'zxing-wasm/reader/zxing_reader.wasm?url';

/** What became of one picture: the text of a code in it, none, or why it could not be looked at. */
export type Looked = { readonly code: string | undefined } | { readonly wrong: string };

interface Itself {
  readonly postMessage: (looked: Looked) => void;
  onmessage: ((event: MessageEvent<ImageData>) => void) | null;
}

/**
 * A thread that reads codes. It alone may compile WebAssembly: its file is sent with a security policy of its own
 * (`security-headers.ts` of the service), which the page is spared.
 */
const worker = globalThis as unknown as Itself;

// From this service, not from the host that the library names by itself.
prepareZXingModule({ overrides: { locateFile: () => program } });

const look = async (picture: ImageData): Promise<Looked> => {
  const [found] = await readBarcodes(picture, { formats: ['DataMatrix', 'QRCode', 'Code128'], maxNumberOfSymbols: 1 });
  return { code: found?.isValid ? found.text : undefined };
};

worker.onmessage = ({ data }) =>
  void look(data)
    .catch((error: unknown) => ({ wrong: String(error) }))
    .then(worker.postMessage.bind(globalThis));
