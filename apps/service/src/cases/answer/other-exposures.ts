import type { OtherExposure } from '@hull-record/contracts';
import { attribute } from '@hull-record/statistics';
import type { CaseInputs } from '../inputs/case-inputs.js';
import type { CaseSettings } from '../settings.js';
import { judgedArrays } from './judged-arrays.js';
import { rowFigures } from './row-figures.js';

/** What else claimed hulls have in common, tested and corrected among themselves: shown apart from the lots. */
export const otherExposures = ({ hulls, others }: CaseInputs, { attribution }: CaseSettings): OtherExposure[] => {
  const exposures = others.map(({ family, name, hulls: places }) => ({
    ...{ lot: name, family, hulls: Uint32Array.from(places) },
  }));
  const settings = { ...attribution, thresholds: [0], weighed: 0, worlds: 0 };
  return attribute(judgedArrays(hulls), exposures, settings).rows.map((row) => {
    const { members } = row.suspect;
    const families = [...new Set(members.map(({ family }) => family))].sort();
    const names = members.map(({ lot }) => lot);
    const shown = names.length > 6 ? [...names.slice(0, 6), `${names.length - 6} more`] : names;
    return { ...rowFigures(row, shown.join(' and ')), family: families.join(' and ') };
  });
};
