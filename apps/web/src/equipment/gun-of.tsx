import { useQuery } from '@tanstack/react-query';
import { gunQuery } from '../api/queries-of-equipment.js';
import { Answer } from '../asked/answer.js';
import { LotLink } from '../record/links.js';
import { Empty, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { HookUpGun } from './hook-up-gun.js';
import { SetGun } from './set-gun.js';

/** What feeds a gun, and how much catalyst it adds: what it sprays is resolved by both, as they were then. */
export const GunOf = ({ code }: { readonly code: string }) => {
  const { t, percent } = useWords();
  const query = useQuery(gunQuery(code));
  return (
    <Section name={t('guns.feeds')}>
      <Answer what={t('guns.ofGun', { code })} query={query}>
        {({ hookUps, settings }) => (
          <>
            {hookUps.length === 0 ? (
              <Empty>{t('guns.noHookUps')}</Empty>
            ) : (
              <Table
                caption={t('guns.hookUpsCaption')}
                columns={[
                  { head: t('guns.feed'), cell: ({ feed }) => <Term word={feed} />, names: true },
                  {
                    head: t('guns.to'),
                    cell: ({ lot, tank }) => (lot === null ? (tank ?? t('guns.nothing')) : <LotLink to={lot} />),
                  },
                  { head: t('guns.from'), cell: ({ from }) => <Moment at={from} /> },
                  {
                    head: t('guns.until'),
                    cell: ({ until }) => (until === null ? t('guns.still') : <Moment at={until} />),
                  },
                ]}
                rows={hookUps}
              />
            )}
            <HookUpGun code={code} />
            {settings.length === 0 ? (
              <Empty>{t('guns.noSettings')}</Empty>
            ) : (
              <Table
                caption={t('guns.settingsCaption')}
                columns={[
                  {
                    head: t('guns.adds'),
                    cell: ({ catalystPercent }) => percent(catalystPercent / 100),
                    names: true,
                    class: 'r',
                  },
                  { head: t('guns.from'), cell: ({ from }) => <Moment at={from} /> },
                ]}
                rows={settings}
              />
            )}
            <SetGun code={code} />
          </>
        )}
      </Answer>
    </Section>
  );
};
