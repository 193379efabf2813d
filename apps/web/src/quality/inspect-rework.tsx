import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** Says that the rework or repair of a disposition was done; whoever enters this inspected it, and did not do it. */
export const InspectRework = ({ disposition }: { readonly disposition: string }) => {
  const { t } = useWords();
  return (
    <Allowed to="recordRework" what={t('quality.inspect')}>
      <RecordForm
        groups={[
          {
            fields: [
              { name: 'doneBy', label: t('quality.doneBy'), hint: t('quality.doneByHint') },
              { name: 'note', label: t('record.note'), kind: 'words' },
            ],
          },
        ]}
        button={t('quality.inspect')}
        late
        send={(said, envelope) =>
          post(
            '/api/dispositions/:disposition/rework',
            { disposition },
            {
              ...envelope,
              doneBy: said('doneBy')
                .split(',')
                .map((badge) => badge.trim())
                .filter((badge) => badge !== ''),
              note: said('note'),
            },
          )
        }
        done={() => <p>{mark('made', t('quality.inspected'))}</p>}
      />
    </Allowed>
  );
};
