import type { MoldDetail } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { moldQuery } from '../api/queries-of-equipment.js';
import { Answer } from '../asked/answer.js';
import { mark } from '../marks/mark.js';
import { LotLink } from '../record/links.js';
import { Fold } from '../ui/fold.js';
import { Joined } from '../ui/joined.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { CalendarDay, Day, Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { CareForMold } from './care-for-mold.js';

const route = getRouteApi('/molds/$mold');

/** One mold: its state, what care is due, the care it had, and the parts pulled from it. */
export const MoldPage = () => {
  const { t } = useWords();
  const { mold } = route.useParams();
  const query = useQuery(moldQuery(mold));
  return (
    <Page title={t('molds.one', { mold })} kind={t('molds.mold')} name={mold}>
      <Answer
        what={t('molds.one', { mold })}
        query={query}
        notThere={
          <Empty>
            {t('molds.notThere', { mold })} <Link to="/molds">{t('molds.title')}</Link>
          </Empty>
        }
      >
        {(detail) => <Mold of={detail} />}
      </Answer>
    </Page>
  );
};

const Mold = ({ of }: { readonly of: MoldDetail }) => {
  const { t } = useWords();
  return (
    <>
      <p className="verdict">
        {of.overdue.length === 0
          ? mark('inside', t('molds.notDue'))
          : of.overdue.map((each) => <span key={each}>{mark('near', <Said text={each} />)}</span>)}
      </p>
      <Facts
        rows={[
          [t('record.model'), of.model],
          [t('molds.partKind'), <Term word={of.partKind} />],
          [t('molds.state'), of.state],
          [t('molds.pulls'), of.pulls],
          [t('molds.pullsOfState'), of.pullsOfState],
        ]}
      />
      <Section name={t('molds.care')}>
        <CareForMold mold={of.code} />
      </Section>
      <Section name={t('molds.had')}>
        <Care of={of} />
      </Section>
      <Section name={t('molds.parts')}>
        {of.parts.length === 0 ? (
          <Empty>{t('molds.noParts')}</Empty>
        ) : (
          <Fold summary={t('molds.countParts', { count: of.parts.length })} open={of.parts.length <= 12}>
            <Table
              caption={t('molds.partsCaption')}
              columns={[
                { head: t('record.part'), cell: ({ part }) => part, names: true, class: 'n' },
                { head: t('molds.state'), cell: ({ state }) => state, class: 'r' },
                { head: t('record.begun'), cell: ({ startedAt }) => <Day at={startedAt} /> },
              ]}
              rows={of.parts}
            />
          </Fold>
        )}
      </Section>
    </>
  );
};

const Care = ({ of: { care } }: { readonly of: MoldDetail }) => {
  const { t } = useWords();
  if (care.length === 0) return <Empty>{t('molds.noCare')}</Empty>;
  return (
    <Table
      caption={t('molds.careCaption')}
      columns={[
        { head: t('record.what'), cell: ({ what }) => <Term word={what} />, names: true },
        { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
        { head: t('molds.doneBy'), cell: ({ doneBy }) => doneBy.join(', '), class: 'n' },
        {
          head: t('molds.lots'),
          cell: ({ lots }) =>
            lots.length === 0 ? (
              '–'
            ) : (
              <Joined by=", ">
                {lots.map((lot) => (
                  <LotLink key={lot} to={lot} />
                ))}
              </Joined>
            ),
          class: 'n',
        },
        {
          head: t('molds.dueAgain'),
          cell: ({ duePulls, dueOn }) => {
            if (dueOn !== null) return <CalendarDay at={dueOn} />;
            return duePulls === null ? '–' : t('molds.afterPulls', { count: duePulls });
          },
        },
        { head: t('record.note'), cell: ({ note }) => (note === null ? '–' : <Said text={note} />) },
      ]}
      rows={care}
    />
  );
};
