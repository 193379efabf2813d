import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';

const FEEDS = ['resin', 'catalyst', 'glass'] as const;

/** Says what is hooked up to a gun from a time on; with neither lot nor tank, the feed is unhooked. */
export const HookUpGun = ({ code }: { readonly code: string }) => {
  const { t, term } = useWords();
  return (
    <Allowed to="hookUpGun" what={t('guns.hookUp')}>
      <p className="caution">{t('guns.caution')}</p>
      <RecordForm
        groups={[
          {
            name: t('guns.hookUp'),
            fields: [
              { name: 'feed', label: t('guns.feed'), kind: 'choice', options: FEEDS.map((feed) => [feed, term(feed)]) },
              { name: 'lot', label: t('record.lot'), hint: t('guns.lotHint') },
              { name: 'tank', label: t('guns.orTank') },
            ],
          },
        ]}
        button={t('guns.recordHookUp')}
        late
        send={(said, envelope) =>
          post(
            '/api/guns/:gun/hook-ups',
            { gun: code },
            {
              ...{ ...envelope, feed: said('feed') as (typeof FEEDS)[number] },
              ...given('lot', said('lot')),
              ...given('tank', said('tank')),
            },
          )
        }
        done={({ result: { feed, to } }) => (
          <p className="verdict">
            {mark(
              'made',
              to === null ? t('guns.unhooked', { feed: term(feed) }) : t('guns.hooked', { feed: term(feed), to }),
            )}
          </p>
        )}
      />
    </Allowed>
  );
};
