import { post } from '../api/ask.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** Says of which bucket or gun a defect of cure came, or why neither can be named. */
export const AnswerAsk = ({ defect }: { readonly defect: string }) => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'lot', label: t('quality.bucket') },
            { name: 'gun', label: t('quality.gun') },
            { name: 'note', label: t('record.note'), kind: 'words', hint: t('quality.answerHint') },
          ],
        },
      ]}
      button={t('quality.recordAnswer')}
      send={(said, envelope) =>
        post(
          '/api/defects/:defect/answers',
          { defect },
          { ...envelope, ...given('lot', said('lot')), ...given('gun', said('gun')), ...given('note', said('note')) },
        )
      }
      done={({ result }) => <p>{mark('made', t('quality.answered', { answer: result.bucketOrGun }))}</p>}
    />
  );
};
