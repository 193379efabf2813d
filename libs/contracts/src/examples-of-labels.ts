/** One request for each route about labels that takes a body. */
export const EXAMPLES_OF_LABELS = {
  drawLabels: {
    stock: 'a4-70x37',
    labels: [
      { of: 'lot', code: 'VE-2231' },
      { of: 'container', code: 'D-118-1' },
      { of: 'hull', code: '86-0112' },
      { of: 'badge', code: 'LAM-07' },
    ],
    skip: 3,
  },
};
