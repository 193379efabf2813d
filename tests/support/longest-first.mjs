import sequencer from '@jest/test-sequencer';

const Sequencer = sequencer.default ?? sequencer;

/**
 * Files that run for more than half a minute, the longest first. Begun last, one of them would keep one worker busy
 * while the other has nothing left to do; where nothing was timed before, as in CI, files go by size alone.
 */
const LONG = [
  'faults/planted',
  'integration/search-against-walk',
  'integration/demo.test',
  'integration/writes',
  'browser/page',
  'browser/every-page',
  'integration/random-weeks',
  'integration/corrections-against-walk',
  'browser/station',
  'browser/bay',
];

const rank = ({ path }) => {
  const place = LONG.findIndex((part) => path.includes(`tests/${part}`));
  return place < 0 ? LONG.length : place;
};

/** Runs the long files first, the others as Jest would. */
export default class LongestFirst extends Sequencer {
  sort(tests) {
    return [...super.sort(tests)].sort((a, b) => rank(a) - rank(b));
  }
}
