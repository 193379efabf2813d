import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

const OF = ['defect', 'reading', 'nonconformity', 'equipment check'] as const;
const DISPOSITIONS = ['use as is', 'rework', 'repair', 'scrap'] as const;

/** Whether a disposition is given of such a thing. */
export const isDisposable = (of: string): of is (typeof OF)[number] => (OF as readonly string[]).includes(of);

interface DisposeProps {
  readonly of: (typeof OF)[number];
  readonly about: string;
}

/** Says what is done about something that is not as it should be: use as is under a concession, rework, repair, scrap. */
export const Dispose = ({ of, about }: DisposeProps) => {
  const { t, term } = useWords();
  return (
    <Allowed to="dispose" what={t('quality.decide')}>
      <p className="caution">{t('quality.disposeCaution')}</p>
      <RecordForm
        groups={[
          {
            fields: [
              {
                name: 'disposition',
                label: t('quality.disposition'),
                kind: 'choice',
                options: DISPOSITIONS.map((each) => [each, term(each)]),
              },
              { name: 'reason', label: t('record.reason'), kind: 'words' },
              { name: 'concession', label: t('quality.concession'), hint: t('quality.concessionHint') },
            ],
          },
        ]}
        button={t('quality.recordDecision')}
        sure={(said) => (said('disposition') === 'scrap' ? t('quality.scrapSure') : '')}
        send={(said, envelope) =>
          post(
            '/api/dispositions',
            {},
            {
              ...envelope,
              of,
              about,
              disposition: said('disposition') as (typeof DISPOSITIONS)[number],
              reason: said('reason'),
              ...given('concession', said('concession')),
            },
          )
        }
        done={({ result }) => <p>{mark('made', t('quality.decided', { disposition: term(result.disposition) }))}</p>}
      />
    </Allowed>
  );
};
