/** Sets a bookmark; the top of its view is y, points from the head of the present page. */
export const bookmark = (doc: PDFKit.PDFDocument, name: string, y: number): void => {
  // PDFKit takes the height and places left from the page's right edge; the types know neither.
  const place: { expanded?: boolean; top?: number; left?: number } = { top: y, left: doc.page.width };
  doc.outline.addItem(name, place);
};
