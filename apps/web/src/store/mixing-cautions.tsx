import { useWords } from '../words/use-words.js';

/** What can hurt at mixing: it reminds, and replaces neither a data sheet nor training. */
export const MixingCautions = () => {
  const { t } = useWords();
  return (
    <div className="caution" role="note">
      <p>
        <b>{t('store.neverMix')}</b>
      </p>
      <p>{t('store.mixOrder')}</p>
      <p>{t('store.mixBurns')}</p>
      <p className="note">{t('store.defer')}</p>
    </div>
  );
};
