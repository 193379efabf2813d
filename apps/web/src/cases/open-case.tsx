import { useNavigate } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { useWords } from '../words/use-words.js';
import { listed } from './listed.js';

/** Opens a case. One prepared at the direction of counsel is seen by those named alone. */
export const OpenCase = () => {
  const { t } = useWords();
  const navigate = useNavigate();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('cases.code'), hint: t('cases.codeHint') },
            { name: 'title', label: t('cases.about'), kind: 'words' },
            { name: 'underCounsel', label: t('cases.underCounsel'), kind: 'tick' },
            { name: 'readers', label: t('cases.readers'), hint: t('cases.readersHint'), kind: 'words' },
          ],
        },
      ]}
      button={t('cases.openDo')}
      send={(said, envelope) =>
        post(
          '/api/cases',
          {},
          {
            ...envelope,
            code: said('code'),
            title: said('title'),
            underCounsel: said('underCounsel') === 'yes',
            readers: listed(said('readers')),
          },
        )
      }
      onDone={({ result }) => void navigate({ to: '/cases/$case', params: { case: result.code } })}
      done={({ result }) => <Found of={{ result: {} }} words={t('cases.opened', { code: result.code })} />}
    />
  );
};
