import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { NoticeView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { noticeQuery } from '../api/queries-of-holds.js';
import { useMay } from '../api/use-may.js';
import { Answer } from '../asked/answer.js';
import { DueDates } from '../record/due-dates.js';
import { HullLink } from '../record/links.js';
import { Joined } from '../ui/joined.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Recipients } from './recipients.js';
import { ReportSent } from './report-sent.js';

const route = getRouteApi('/notices/$notice');

/** One notice: its dates with what is late, its figures, whom it goes to, and its papers. */
export const NoticePage = () => {
  const { t } = useWords();
  const { notice } = route.useParams();
  const query = useQuery(noticeQuery(notice));
  return (
    <Page title={t('notices.titleOf', { notice })} kind={t('notices.notice')} name={notice}>
      <Answer
        what={t('notices.theNotice', { notice })}
        query={query}
        notThere={
          <Empty>
            {t('notices.notThere', { notice })} <Link to="/holds">{t('holds.title')}</Link>
          </Empty>
        }
      >
        {(view) => <Notice notice={view} />}
      </Answer>
    </Page>
  );
};

const Notice = ({ notice }: { readonly notice: NoticeView }) => {
  const { t, term } = useWords();
  const mayNames = useMay()('listRecipients');
  const { contents, decision, arguable } = notice;
  return (
    <>
      <p className="caution">{t('holds.peopleDecide')}</p>
      <Facts
        rows={[
          [t('holds.decision'), decision === null ? t('holds.notDecidedYet') : term(decision.decision)],
          [t('holds.discoveredOn'), decision === null ? null : <CalendarDay at={decision.discoveredOn} />],
          [t('holds.earliest'), arguable[0] === undefined ? null : <CalendarDay at={arguable[0].on} />],
          [
            t('holds.hold'),
            <Link to="/holds/$hold" params={{ hold: notice.hold }}>
              {t('notices.itsHold')}
            </Link>,
          ],
        ]}
      />
      <Section name={t('notices.dates')}>
        <DueDates dates={notice.dates} />
        <ReportSent notice={notice} />
      </Section>
      <Section name={t('notices.figures')}>
        <Figures notice={notice} />
      </Section>
      <Section name={t('notices.recipients')}>
        <Counts notice={notice} />
        {mayNames ? <Recipients notice={notice.code} /> : <p className="note soft">{t('notices.namesElsewhere')}</p>}
      </Section>
      <Section name={t('notices.says')}>
        <Facts
          rows={[
            [t('notices.defect'), <Said text={contents.defect} />],
            [t('notices.hazard'), <Said text={contents.hazard} />],
            [t('notices.measures'), <Said text={contents.measures} />],
            [t('notices.undertaking'), <Said text={contents.undertaking} />],
            [t('notices.manufacturer'), <Said text={`${contents.manufacturer}, ${contents.address}`} />],
            [t('notices.make'), contents.make],
            [
              t('notices.models'),
              notice.models.map(({ model, from, until }) => `${model}: ${from} – ${until}`).join('; '),
            ],
          ]}
        />
      </Section>
      <Section name={t('notices.papers')}>
        <ul className="plain">
          <li>
            <a href={paperPath('/api/notices/:notice/initial-report.pdf', { notice: notice.code })}>
              {t('notices.initial')}
            </a>
          </li>
          <li>
            <a href={paperPath('/api/notices/:notice/follow-up-report.pdf', { notice: notice.code })}>
              {t('notices.followUp')}
            </a>
          </li>
          {mayNames ? (
            <>
              <li>
                <a href={paperPath('/api/notices/:notice/letters.pdf', { notice: notice.code })}>
                  {t('notices.letters')}
                </a>
              </li>
              <li>
                <a href={`/api/notices/${encodeURIComponent(notice.code)}/recipients.csv`}>{t('notices.mailMerge')}</a>
              </li>
            </>
          ) : null}
        </ul>
      </Section>
    </>
  );
};

const Figures = ({ notice }: { readonly notice: NoticeView }) => {
  const { t } = useWords();
  const { figures, contained, outside, withoutPurchaser, hulls } = notice;
  const list = (numbers: readonly string[]) =>
    numbers.length === 0 ? null : (
      <Joined by=", ">
        {numbers.map((number) => (
          <HullLink key={number} to={number} />
        ))}
      </Joined>
    );
  return (
    <Facts
      rows={[
        [t('notices.affected'), figures.affected],
        [t('notices.discovered'), figures.discovered],
        [t('notices.completed'), figures.completed],
        [t('notices.notNotified'), figures.notNotified],
        [t('notices.hulls'), list(hulls)],
        [t('notices.contained'), list(contained)],
        [t('notices.outside'), list(outside)],
        [t('notices.withoutPurchaser'), list(withoutPurchaser)],
      ]}
    />
  );
};

type Count = NoticeView['recipients'][number];

const Counts = ({ notice }: { readonly notice: NoticeView }) => {
  const { t, term } = useWords();
  const columns: readonly Column<Count>[] = [
    { head: t('notices.kind'), cell: ({ kind }) => term(kind), names: true },
    { head: t('notices.known'), cell: ({ known }) => known, class: 'r' },
    { head: t('notices.written'), cell: ({ written }) => written, class: 'r' },
    { head: t('notices.returned'), cell: ({ returned }) => returned, class: 'r' },
    { head: t('notices.noAddress'), cell: ({ noAddress }) => noAddress, class: 'r' },
  ];
  return <Table caption={t('notices.counts')} columns={columns} rows={notice.recipients} />;
};
