import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { decimal } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

/** Says how much catalyst a gun adds from a time on. What is right is on the data sheet and in a timed catch. */
export const SetGun = ({ code }: { readonly code: string }) => {
  const { t, percent } = useWords();
  return (
    <Allowed to="setGun" what={t('guns.set')}>
      <RecordForm
        groups={[
          {
            name: t('guns.set'),
            fields: [
              { name: 'catalystPercent', label: t('guns.percent'), hint: t('guns.percentHint'), kind: 'decimal' },
            ],
          },
        ]}
        button={t('guns.recordSetting')}
        late
        send={(said, envelope) =>
          post(
            '/api/guns/:gun/settings',
            { gun: code },
            { ...envelope, catalystPercent: Number(decimal(said('catalystPercent'))) },
          )
        }
        done={({ result }) => (
          <p className="verdict">{mark('made', t('guns.isSet', { percent: percent(result.catalystPercent / 100) }))}</p>
        )}
      />
    </Allowed>
  );
};
