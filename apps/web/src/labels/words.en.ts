/** The texts of printing labels. */
export const labelsEn = {
  'labels.title': 'Labels',
  'labels.of': 'Label for',
  'labels.codes': 'Codes, one a line',
  'labels.codesHint': 'As on record: a bucket and a kit are lots.',
  'labels.preview': 'Show the sheet',
  'labels.empty':
    'Choose what the labels are for and give its codes. From a lot, a container, a part, a hull, equipment or a person, “Print the label” fills this in.',
  'labels.theStock': 'the label stock',
  'labels.stock': 'Stock',
  'labels.roll': 'roll, {width} × {height} mm',
  'labels.sheet': '{paper}, {width} × {height} mm, {count} a sheet',
  'labels.skip': 'Places used already',
  'labels.skipHint': 'On the first sheet, row by row from the top left.',
  'labels.make': '{count, plural, one {Make the PDF of # label} other {Make the PDF of # labels}}',
  'labels.thePdf': 'the PDF of the labels',
  'labels.made': 'The PDF is made.',
  'labels.open': 'Open it',
  'labels.save': 'Save it',
  'labels.pages':
    '{count, plural, one {# label} other {# labels}} on {pages, plural, one {# page} other {# pages}}. Where each comes to stand; what is on it is in the PDF.',
  'labels.fullSize':
    'Print at full size, without scaling, and try plain paper first: sizes of stock are common practice, from memory.',
} as const;
