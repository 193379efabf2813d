import type { ChangedValue } from '@hull-record/contracts';
import { useWords } from '../words/use-words.js';
import { Said } from '../words/text.js';

/** What a certificate prints, and what is on record in its place; nothing where nothing changed. */
export const ChangedValues = ({ of }: { readonly of: readonly ChangedValue[] }) => {
  const { t } = useWords();
  if (of.length === 0) return null;
  return (
    <ul className="plain">
      {of.map(({ what, printed, now }) => (
        <li key={what}>
          <Said text={what} />: {t('record.printed')} “<Said text={printed} />
          ”,{' '}
          {now === null ? (
            t('record.nothingNow')
          ) : (
            <>
              {t('record.onRecordNow')} “<Said text={now} />”
            </>
          )}
        </li>
      ))}
    </ul>
  );
};
