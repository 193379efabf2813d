import { getDocument, OPS, VerbosityLevel, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { unpackedStreams } from './glyphs.js';

/**
 * What is wrong with the structure of a paper, beside what its pages show: offsets in its cross-reference table that
 * point beside their objects, marked content or graphics states left open, a page that the PDF reader cannot draw
 * without guessing, content of the structure tree that no page has. Checked against ISO 32000-2, 7.5.4 and 14.6.
 */
export const structureFaults = async (bytes: Buffer): Promise<readonly string[]> => [
  ...crossReferenceFaults(bytes.toString('latin1')),
  ...streamFaults(bytes),
  ...(await readerFaults(bytes)),
];

const streamFaults = (bytes: Buffer): readonly string[] => {
  try {
    const contents = unpackedStreams(bytes).filter(isContent);
    return contents.length === 0 ? ['no content of a page was found'] : contents.flatMap(contentFaults);
  } catch (error) {
    return [`a stream cannot be unpacked: ${String(error)}`];
  }
};

const crossReferenceFaults = (raw: string): readonly string[] => {
  const start = Number(/startxref\r?\n(\d+)\r?\n%%EOF\s*$/.exec(raw)?.[1] ?? -1);
  const table = /^xref\n0 (\d+)\n([^]*?)trailer/.exec(raw.slice(start));
  if (start < 0 || table === null) return ['startxref points at no cross-reference table'];
  const entries = (table[2] ?? '').match(/\d{10} \d{5} [nf]\s\n/g) ?? [];
  const faults = entries.flatMap((entry, number) => {
    const offset = Number(entry.slice(0, 10));
    const free = entry[17] === 'f';
    return free || raw.startsWith(`${number} 0 obj`, offset) ? [] : [`object ${number} is not at ${offset}`];
  });
  return entries.length === Number(table[1])
    ? faults
    : [...faults, `${entries.length} entries for ${table[1]} objects`];
};

/** Every page begins by turning its y axis down; fonts and tables of characters begin otherwise. */
const isContent = (stream: string): boolean => /^1 0 0 -1 0 \S+ cm\n/.test(stream);

/** Operators of a page's content, whose strings are written in hexadecimal or stand in tags. */
const contentFaults = (stream: string, page: number): readonly string[] => {
  const name = `content ${page + 1}`;
  const operators = stream.replace(/\((?:\\[^]|[^\\)])*\)/g, '()').split(/\s+/);
  const count = (...which: readonly string[]): number =>
    operators.filter((operator) => which.includes(operator)).length;
  return [
    ...(count('BDC', 'BMC') === count('EMC') ? [] : [`${name}: marked content is left open`]),
    ...(count('q') === count('Q') ? [] : [`${name}: a graphics state is left open`]),
    ...(count('BT') === count('ET') ? [] : [`${name}: a text is left open`]),
  ];
};

interface TreeNode {
  readonly type?: string;
  readonly id?: string;
  readonly children?: readonly TreeNode[];
}

const readerFaults = async (bytes: Buffer): Promise<readonly string[]> => {
  const task = getDocument({ data: Uint8Array.from(bytes), stopAtErrors: true, verbosity: VerbosityLevel.ERRORS });
  try {
    const paper = await task.promise;
    const faults: string[] = [];
    for (let number = 1; number <= paper.numPages; number += 1) {
      faults.push(...(await pageStructureFaults(await paper.getPage(number), number)));
    }
    return faults;
  } catch (error) {
    return [`the reader stopped: ${String(error)}`];
  } finally {
    await task.destroy();
  }
};

/** Each piece of tagged content stands in the tree, and the tree names no other. */
const pageStructureFaults = async (page: PDFPageProxy, number: number): Promise<readonly string[]> => {
  const { fnArray, argsArray } = await page.getOperatorList();
  const marked = fnArray.flatMap((operation, i): readonly number[] => {
    const id = operation === OPS.beginMarkedContentProps ? (argsArray[i] as readonly unknown[])[1] : null;
    return typeof id === 'number' ? [id] : [];
  });
  const named = contentIds((await page.getStructTree()) as TreeNode | null).map((id) => Number(/\d+$/.exec(id)?.[0]));
  return [
    ...(new Set(marked).size === marked.length ? [] : [`page ${number}: content is tagged twice`]),
    ...marked.filter((id) => !named.includes(id)).map((id) => `page ${number}: content ${id} is not in the tree`),
    ...named
      .filter((id) => !marked.includes(id))
      .map((id) => `page ${number}: the tree names content ${id}, not there`),
  ];
};

const contentIds = (node: TreeNode | null): readonly string[] => [
  ...(node?.type === 'content' && node.id !== undefined ? [node.id] : []),
  ...(node?.children ?? []).flatMap(contentIds),
];
