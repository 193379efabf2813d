import type { Skin } from '@hull-record/trade';
import { useWords } from '../words/use-words.js';
import type { Frame } from './map-frame.js';

/** In words, how an unrolled skin lies on the page: from where it is seen, where the bow is, how long it is. */
export const HowSeen = ({ skin, frame }: { readonly skin: Skin; readonly frame: Frame }) => {
  const { t, figure } = useWords();
  return (
    <>
      {t('map.caption', {
        from: t(`map.from.${frame.seenFrom}`),
        bow: frame.bowLeft ? t('map.left') : t('map.right'),
        length: figure(skin.lengthMm / 1000, 4),
      })}
      {skin.transom === undefined ? null : ` ${t('map.transom')}`}
    </>
  );
};
