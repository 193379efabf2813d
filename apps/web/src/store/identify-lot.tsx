import { post } from '../api/ask.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** Says which lot unidentified material was: everything drawn of it is of that lot then. */
export const IdentifyLot = ({ lot }: { readonly lot: string }) => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'as', label: t('store.reallyWas') },
            { name: 'reason', label: t('record.reason'), kind: 'words', hint: t('store.identifyHint') },
          ],
        },
      ]}
      button={t('store.identifyDo')}
      sure={(said) => t('store.identifySure', { lot, as: said('as') })}
      send={(said, envelope) =>
        post('/api/lots/:lot/identifications', { lot }, { ...envelope, as: said('as'), reason: said('reason') })
      }
      done={({ result }) => <p>{mark('made', t('store.identified', { count: result.draws }))}</p>}
    />
  );
};
