import PDFDocument from 'pdfkit';

/** What the PDF says about itself. */
export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  readonly keywords: string;
}

/**
 * Opens a tagged A4 document without a page.
 *
 * The moment it was made is the caller's, so that equal views made at an equal moment give equal bytes: PDFKit takes
 * dates and the file's /ID from what is set here. No buffered pages: each page is written out when the next begins.
 */
export const openDocument = (facts: DocumentFacts, created: Date): PDFKit.PDFDocument =>
  new PDFDocument({
    autoFirstPage: false,
    bufferPages: false,
    size: 'A4',
    margin: 0,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en',
    displayTitle: true,
    info: {
      Producer: 'Hull Record',
      Creator: 'Hull Record',
      Title: facts.title,
      Author: facts.author,
      Subject: facts.subject,
      Keywords: facts.keywords,
      CreationDate: created,
      ModDate: created,
    },
  });
