import { readLabelPath, type Labelled, type LabelTargetQuery, type LabelTargetView } from '@hull-record/contracts';
import { InvalidRequest } from '../platform/refusals.js';

/** Things that the web page shows by their code, and where. */
const PAGES: Readonly<Partial<Record<Labelled, string>>> = { lot: 'lots', hull: 'hulls' };

/**
 * What the path of a scanned label names; it does not ask whether it is in the record.
 *
 * @throws InvalidRequest when the path is none of ours, which the schema of the query refuses before
 */
export const findLabelTarget = ({ path }: LabelTargetQuery): LabelTargetView => {
  const target = readLabelPath(path);
  if (target === null) throw new InvalidRequest([{ pointer: '/path', detail: 'is not the path of one of our labels' }]);
  const page = PAGES[target.of];
  return { ...target, page: page === undefined ? null : `#/${page}/${encodeURIComponent(target.code)}` };
};
