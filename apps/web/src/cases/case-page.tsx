import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { CaseView } from '@hull-record/contracts';
import { caseQuery } from '../api/queries-of-cases.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { stamp } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { FreezeSettings } from './freeze-settings.js';
import { LookShown } from './look-shown.js';
import { Looks } from './looks.js';
import { SettingsShown } from './settings-shown.js';

const route = getRouteApi('/cases/$case');

/** One case: how it is judged, every look at it, and what the look that is opened found. */
export const CasePage = () => (
  <AfterSaleWords>
    <OneCase />
  </AfterSaleWords>
);

const OneCase = () => {
  const { t } = useWords();
  const { case: code } = route.useParams();
  const query = useQuery(caseQuery(code));
  return (
    <Page title={t('cases.titleOf', { code })} kind={t('cases.case')} name={code}>
      <Answer
        what={t('cases.theCase', { code })}
        query={query}
        notThere={
          <Empty>
            {t('cases.notThere')} <Link to="/cases">{t('cases.title')}</Link>
          </Empty>
        }
      >
        {(view) => <Case view={view} />}
      </Answer>
    </Page>
  );
};

const Case = ({ view }: { readonly view: CaseView }) => {
  const { t } = useWords();
  const { look: asked } = route.useSearch();
  const done = view.history.find(({ progress }) => progress.state === 'done') ?? view.history[0];
  const look = view.history.find(({ look: number }) => String(number) === asked) ?? done;
  return (
    <>
      {view.underCounsel ? (
        <p>{stamp(t('cases.counselMark', { readers: view.readers.join(', ') || view.by }))}</p>
      ) : null}
      <p className="lead">{view.title}</p>
      <Facts
        rows={[
          [t('cases.openedOn'), <Moment at={view.openedAt} />],
          [t('cases.by'), <span className="n">{view.by}</span>],
          [t('cases.looks'), view.looks],
        ]}
      />
      <Section name={t('cases.looks')}>
        <Looks view={view} open={look?.look} />
      </Section>
      {look === undefined ? null : <LookShown code={view.code} look={look.look} looks={view.looks} />}
      <Section name={t('cases.settings')}>
        <Settings view={view} />
      </Section>
    </>
  );
};

const Settings = ({ view: { code, settings } }: { readonly view: CaseView }) => {
  const { t } = useWords();
  const [newest, ...before] = settings;
  return (
    <>
      {newest === undefined ? <Empty>{t('cases.nothingFrozen')}</Empty> : <SettingsShown frozen={newest} />}
      {before.map((frozen) => (
        <Fold key={frozen.version} summary={t('cases.version', { version: frozen.version })}>
          <SettingsShown frozen={frozen} />
        </Fold>
      ))}
      <Fold summary={t('cases.freeze')} open={newest === undefined}>
        <Allowed to="freezeCase" what={t('cases.freeze')}>
          <FreezeSettings code={code} />
        </Allowed>
      </Fold>
    </>
  );
};
