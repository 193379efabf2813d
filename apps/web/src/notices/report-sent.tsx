import type { NoticeView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

const REPORTS = ['initial', 'follow-up'] as const;

/** Records that a report was sent to the authority: the second clock runs from the first of them. */
export const ReportSent = ({ notice }: { readonly notice: NoticeView }) => {
  const { t, term } = useWords();
  return (
    <Fold summary={t('notices.reportSent')}>
      <Allowed to="reportNotice" what={t('notices.reportSent')}>
        <RecordForm
          groups={[
            {
              fields: [
                {
                  name: 'what',
                  label: t('notices.report'),
                  kind: 'choice',
                  options: REPORTS.map((each) => [each, term(each)]),
                },
                { name: 'sentOn', label: t('notices.sentOn'), kind: 'day' },
                { name: 'proof', label: t('notices.proof'), hint: t('notices.proofHint') },
              ],
            },
          ]}
          button={t('notices.reportSentDo')}
          send={(said, envelope) =>
            post(
              '/api/notices/:notice/reports',
              { notice: notice.code },
              {
                ...envelope,
                what: said('what') as (typeof REPORTS)[number],
                sentOn: said('sentOn'),
                ...given('proof', said('proof')),
              },
            )
          }
          done={({ result }) => (
            <Found of={{ result: {} }} words={t('notices.reported', { report: term(result.what) })} />
          )}
        />
      </Allowed>
    </Fold>
  );
};
