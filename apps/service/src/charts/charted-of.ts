import { CHARTED, type Charted } from '@hull-record/contracts';
import { NotThere } from '../platform/refusals.js';

/**
 * What is charted, by its name in the address.
 *
 * @throws NotThere when nothing of that name is charted
 */
export const chartedOf = (name: string): Charted => {
  const found = CHARTED.find((each) => each === name);
  if (found === undefined) throw new NotThere('chart of', name);
  return found;
};
