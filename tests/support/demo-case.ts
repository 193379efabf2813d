import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { CaseAnswer, LookView } from '@hull-record/contracts';
import { answerOf } from '../../apps/service/src/cases/answer/answer-of.js';
import type { CaseInputs } from '../../apps/service/src/cases/inputs/case-inputs.js';
import type { CaseSettings } from '../../apps/service/src/cases/settings.js';
import type { RunningService } from './service.js';

/** What a look rested on, as the service keeps it. */
export const inputsOf = async (service: RunningService, { inputsSha256 }: LookView): Promise<CaseInputs> => {
  const name = inputsSha256 ?? '';
  return JSON.parse(await readFile(join(service.dataDir, 'photos', name.slice(0, 2), name), 'utf8')) as CaseInputs;
};

/** The answer that the same settings give when a lot and the hulls that hold it had never been. */
export const answerWithout = async (lot: string, look: LookView, inputs: CaseInputs): Promise<CaseAnswer> => {
  const holding = new Set(inputs.lots.filter((each) => each.lot === lot).flatMap(({ hulls }) => Array.from(hulls)));
  const kept = inputs.hulls.map((_, place) => place).filter((place) => !holding.has(place));
  const places = new Map(kept.map((place, i) => [place, i]));
  const moved = (hulls: ArrayLike<number>): number[] => Array.from(hulls).flatMap((place) => places.get(place) ?? []);
  return answerOf(look.frozen.settings as unknown as CaseSettings, {
    ...inputs,
    hulls: kept.flatMap((place) => inputs.hulls[place] ?? []),
    lots: inputs.lots
      .filter((each) => each.lot !== lot)
      .map((each) => ({
        ...{ ...each, hulls: moved(each.hulls) },
        shares: Array.from(each.shares).filter((_, i) => places.has(each.hulls[i] ?? -1)),
      })),
    others: inputs.others.map((each) => ({ ...each, hulls: moved(each.hulls) })),
    spots: inputs.spots.flatMap((spot) => {
      const hull = places.get(spot.hull);
      return hull === undefined ? [] : [{ ...spot, hull }];
    }),
  });
};
