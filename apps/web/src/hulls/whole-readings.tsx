import type { PartView } from '@hull-record/contracts';
import { useWords } from '../words/use-words.js';
import { Readings } from './readings.js';

/** Readings of the part as a whole, such as its weight, and of the joint by which it is in its hull. */
export const WholeReadings = ({ part: { partReadings, jointReadings } }: { readonly part: PartView }) => {
  const { t } = useWords();
  return (
    <>
      {partReadings.length === 0 ? null : (
        <>
          <h3>{t('hulls.partReadings')}</h3>
          <Readings readings={partReadings} drawn />
        </>
      )}
      {jointReadings.length === 0 ? null : (
        <>
          <h3>{t('hulls.jointReadings')}</h3>
          <Readings readings={jointReadings} drawn />
        </>
      )}
    </>
  );
};
