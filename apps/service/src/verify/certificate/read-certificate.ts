/** What a certificate prints, and what is embedded in it. */
export interface ReadPdf {
  /** All texts of all pages, without spaces. */
  readonly printed: string;
  readonly pages: number;
  readonly embedded: ReadonlyMap<string, Buffer>;
}

/** Reads a PDF; the reader is loaded only when it is needed. */
export const readPdf = async (pdf: Buffer): Promise<ReadPdf> => {
  const { getDocument } = await import('pdfjs-dist/legacy/build/pdf.mjs');
  const paper = await getDocument({ data: Uint8Array.from(pdf), verbosity: 0, useSystemFonts: false }).promise;
  const texts: string[] = [];
  for (let page = 1; page <= paper.numPages; page += 1) {
    const { items } = await (await paper.getPage(page)).getTextContent({ disableNormalization: true });
    texts.push(...items.map((item) => ('str' in item ? item.str : '')));
  }
  const attached = (await paper.getAttachments()) as Readonly<Record<string, { content: Uint8Array }>> | null;
  const read = {
    printed: solid(texts.join('')),
    pages: paper.numPages,
    embedded: new Map(Object.entries(attached ?? {}).map(([name, { content }]) => [name, Buffer.from(content)])),
  };
  await paper.loadingTask.destroy();
  return read;
};

/** A text without spaces and line ends: where it was broken over lines does not matter. */
export const solid = (text: string): string => text.replace(/\s/gu, '');
