import { post } from '../api/ask.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** Accepts or refuses a repair; whoever does so did not do it. */
export const AcceptRepair = ({ repair }: { readonly repair: string }) => {
  const { t } = useWords();
  return (
    <>
      <p className="caution">{t('quality.acceptCaution')}</p>
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'accepted',
                label: t('quality.acceptedOrNot'),
                kind: 'choice',
                options: [
                  ['yes', t('quality.accept')],
                  ['no', t('quality.refuse')],
                ],
              },
              { name: 'note', label: t('record.note'), kind: 'words', hint: t('quality.refuseHint') },
            ],
          },
        ]}
        button={t('quality.recordDecision')}
        send={(said, envelope) =>
          post(
            '/api/repairs/:repair/acceptances',
            { repair },
            {
              ...envelope,
              accepted: (said('accepted') === '' ? undefined : said('accepted') === 'yes') as boolean,
              ...given('note', said('note')),
            },
          )
        }
        done={() => <p>{mark('made', t('quality.judged'))}</p>}
      />
    </>
  );
};
