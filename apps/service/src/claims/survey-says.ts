import type { FileClaim } from '@hull-record/contracts';
import { bottomAreaM2, surveyDoubts, type Skin } from '@hull-record/trade';

/** What speaks against the moisture readings of a claim, by practice; readings are never turned into per cent of water. */
export const surveySays = (
  { moisture, hoursAshore }: Pick<FileClaim, 'moisture' | 'hoursAshore'>,
  skin: Skin | null,
): readonly string[] => {
  if (!moisture) return [];
  const unknown = hoursAshore === undefined ? ['How long the boat was ashore is not said: 24 h at least.'] : [];
  const coated = moisture.coating === 'removed at the spots' ? [] : ['The coating was not removed at the spots.'];
  if (!skin) return [...unknown, ...coated];
  const survey = { hoursAshore: hoursAshore ?? 24, readings: moisture.readings.length };
  const areaM2 = bottomAreaM2(skin) || undefined;
  return [...unknown, ...coated, ...surveyDoubts({ ...survey, lengthM: skin.lengthMm / 1000, areaM2 })];
};
