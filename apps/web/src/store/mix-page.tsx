import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { materialsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { Dose } from './dose.js';
import { inputFields, inputsAtFirst, inputsOf } from './input-rows.js';
import { LotLabel } from './lot-label.js';
import { MixCheck } from './mix-check.js';
import { MixingCautions } from './mixing-cautions.js';
import { useRows } from './use-rows.js';

/** A bucket: how much catalyst it takes, what would be wrong with it, and what was mixed. */
export const MixPage = () => {
  const { t } = useWords();
  const materials = useQuery(materialsQuery);
  return (
    <Page title={t('store.mix')} name={t('store.mix')}>
      <MixingCautions />
      <Section name={t('store.dose')}>
        <Answer what={t('store.theMaterials')} query={materials}>
          {(found) => <Dose materials={found} />}
        </Answer>
      </Section>
      <Section name={t('store.mixed')}>
        <Allowed to="makeMix" what={t('store.mix')}>
          <Mixed />
        </Allowed>
      </Section>
    </Page>
  );
};

const Mixed = () => {
  const words = useWords();
  const { t } = words;
  const rows = useRows(2);
  return (
    <RecordForm
      groups={[
        { fields: [{ name: 'code', label: t('store.bucketCode'), hint: t('store.bucketCodeHint') }] },
        ...inputFields(words, rows.count),
      ]}
      first={inputsAtFirst(rows.count)}
      button={t('store.recordMix')}
      late
      send={(said, envelope) =>
        post('/api/mixes', {}, { ...envelope, code: said('code'), inputs: inputsOf(said, rows.count) })
      }
      onDone={rows.startAnew}
      done={(receipt) => (
        <>
          <Found of={receipt} words={t('store.mixedLot', { lot: receipt.result.code })} />
          <LotLabel lot={receipt.result.code} />
        </>
      )}
    >
      {(said) => (
        <>
          {rows.more(t('store.oneMore'))}
          <MixCheck code={said('code')} inputs={inputsOf(said, rows.count)} />
        </>
      )}
    </RecordForm>
  );
};
