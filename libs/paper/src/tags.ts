/** An element of the document's structure: a section, a heading, a table row. */
export type Element = PDFKit.PDFStructureElement;

/** Attributes of an element; `alt` says what a figure shows, `scope` what a heading cell heads. */
export interface ElementFacts {
  readonly alt?: string;
  readonly title?: string;
  readonly scope?: 'Column' | 'Row';
}

/** Opens an element under a parent; the caller ends it. */
export const open = (doc: PDFKit.PDFDocument, parent: Element, type: string, facts: ElementFacts = {}): Element => {
  const element = doc.struct(type, { ...facts });
  parent.add(element);
  return element;
};

/**
 * Draws content that belongs to an element, on the present page only.
 *
 * An element may take content on several pages; the content itself may not run over a page end, nor hold an artifact.
 */
export const mark = (doc: PDFKit.PDFDocument, element: Element, type: string, draw: () => void): void => {
  element.add(doc.markStructureContent(type));
  draw();
  doc.endMarkedContent();
};

/** Draws what is no content: rules, running heads, repeated table headings. */
export const artifact = (doc: PDFKit.PDFDocument, type: 'Pagination' | 'Layout', draw: () => void): void => {
  doc.markContent('Artifact', { type });
  draw();
  doc.endMarkedContent();
};
