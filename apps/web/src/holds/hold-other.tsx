import { useNavigate } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { useZone } from '../entry/use-zone.js';
import { Allowed } from '../entry/allowed.js';
import type { Said } from '../entry/entry-field.js';
import { boundsFields, boundsSaid } from '../entry/hold-bounds.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

const KINDS = ['quality', 'safety'] as const;
const THINGS = ['equipment', 'mold', 'period'] as const;

/** Places a hold on equipment, a state of a mold, or a period. */
export const HoldOther = () => {
  const { t, term } = useWords();
  const navigate = useNavigate();
  const clock = useZone();
  return (
    <Fold summary={t('holds.placeOtherDo')}>
      <Allowed to="holdOther" what={t('holds.placeOtherDo')}>
        <p className="note soft">{t('holds.lotsElsewhere')}</p>
        <RecordForm
          groups={[
            {
              fields: [
                {
                  name: 'what',
                  label: t('holds.on'),
                  kind: 'choice',
                  options: THINGS.map((each) => [each, term(each)]),
                  pointer: '/on/what',
                },
                { name: 'code', label: t('holds.code'), hint: t('holds.codeHint'), pointer: '/on/code' },
                { name: 'state', label: t('holds.moldState'), hint: t('holds.moldStateHint'), pointer: '/on/state' },
                {
                  name: 'kind',
                  label: t('holds.kind'),
                  kind: 'choice',
                  options: KINDS.map((each) => [each, term(each)]),
                },
                { name: 'reason', label: t('record.reason'), kind: 'words' },
                ...boundsFields(t),
              ],
            },
          ]}
          first={{ kind: 'quality' }}
          button={t('holds.placeIt')}
          send={(said, envelope) =>
            post(
              '/api/holds',
              {},
              {
                ...envelope,
                on: thingOf(said),
                kind: said('kind') as (typeof KINDS)[number],
                reason: said('reason'),
                ...boundsSaid(said, clock),
              },
            )
          }
          done={(receipt) => (
            <Found
              of={receipt}
              words={t('holds.placed', { reached: receipt.result.reached, below: receipt.result.below })}
            />
          )}
          onDone={({ id }) => void navigate({ to: '/holds/$hold', params: { hold: id } })}
        />
      </Allowed>
    </Fold>
  );
};

const thingOf = (said: Said) => {
  const code = said('code').trim();
  if (said('what') === 'mold')
    return { what: 'mold' as const, code, ...(said('state') === '' ? {} : { state: Number(said('state')) }) };
  return said('what') === 'period' ? { what: 'period' as const } : { what: 'equipment' as const, code };
};
