import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { inputFields, inputsAtFirst, inputsOf } from './input-rows.js';
import { LotLabel } from './lot-label.js';
import { useRows } from './use-rows.js';

/** A kit cut from rolls and sheets. */
export const KitPage = () => {
  const words = useWords();
  const { t } = words;
  const rows = useRows(1);
  return (
    <Page title={t('store.kit')} name={t('store.kit')}>
      <p className="lead">{t('store.kitLead')}</p>
      <p className="caution">{t('store.kitCaution')}</p>
      <Allowed to="cutKit" what={t('store.kit')}>
        <RecordForm
          groups={[
            { fields: [{ name: 'code', label: t('store.kitCode'), hint: t('store.ourCodeHint') }] },
            ...inputFields(words, rows.count),
          ]}
          first={inputsAtFirst(rows.count)}
          button={t('store.recordKit')}
          late
          send={(said, envelope) =>
            post('/api/kits', {}, { ...envelope, code: said('code'), inputs: inputsOf(said, rows.count) })
          }
          onDone={rows.startAnew}
          done={(receipt) => (
            <>
              <Found of={receipt} words={t('store.cutLot', { lot: receipt.result.code })} />
              <LotLabel lot={receipt.result.code} />
            </>
          )}
        >
          {() => rows.more(t('store.oneMore'))}
        </RecordForm>
      </Allowed>
    </Page>
  );
};
