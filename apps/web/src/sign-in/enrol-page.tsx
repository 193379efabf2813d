import { useQueryClient } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { post } from '../api/ask.js';
import { Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { EntryForm } from './entry-form.js';

/** Where a browser becomes a device of the shop, with a one-time code from the desk; it says where it must not be used. */
export const EnrolPage = () => {
  const { t } = useWords();
  const client = useQueryClient();
  const [enrolled, setEnrolled] = useState<{ device: string; caution: string } | null>(null);
  return (
    <Page title={t('enrol.title')} name={t('enrol.title')}>
      {enrolled === null ? (
        <>
          <p className="lead">{t('enrol.lead')}</p>
          <EntryForm
            fields={[{ name: 'code', label: t('enrol.code'), fills: 'one-time-code' }]}
            button={t('enrol.do')}
            send={({ code }) => post('/api/enrolments', {}, { code })}
            onDone={(answer) => {
              setEnrolled(answer);
              void client.invalidateQueries({ queryKey: ['session'] });
            }}
          />
        </>
      ) : (
        <>
          <p className="lead" role="status">
            {t('enrol.done', { device: enrolled.device })}
          </p>
          <p className="caution">{enrolled.caution}</p>
          <p>
            <Link to="/sign-in">{t('app.signIn')}</Link>
          </p>
        </>
      )}
    </Page>
  );
};
