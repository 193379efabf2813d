import { Link } from '@tanstack/react-router';
import type { CaseView, LookSummary } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

interface LooksProps {
  readonly view: CaseView;
  /** The look that is opened below. */
  readonly open: number | undefined;
}

/** Every look at a case, counted, and another one. */
export const Looks = ({ view, open }: LooksProps) => {
  const { t } = useWords();
  const columns = useLookColumns(view.code, open);
  const [newest] = view.settings;
  return (
    <>
      <p>{t('cases.everyLook', { looks: view.looks })}</p>
      {view.history.length === 0 ? (
        <Empty>{newest === undefined ? t('cases.freezeFirst') : t('cases.notYetLooked')}</Empty>
      ) : (
        <Table caption={t('cases.lookList')} columns={columns} rows={view.history} />
      )}
      {newest === undefined ? null : (
        <Allowed to="lookAtCase" what={t('cases.look')}>
          <RecordForm
            groups={[]}
            button={t('cases.lookDo', { number: view.looks + 1, version: newest.version })}
            send={(_, envelope) => post('/api/cases/:case/looks', { case: view.code }, envelope)}
            done={({ result }) => <Found of={{ result: {} }} words={t('cases.lookAsked', { look: result.look })} />}
          />
        </Allowed>
      )}
    </>
  );
};

const useLookColumns = (code: string, open: number | undefined): readonly Column<LookSummary>[] => {
  const { t, term } = useWords();
  return [
    {
      head: t('cases.look'),
      cell: ({ look }) => (
        <Link to="/cases/$case" params={{ case: code }} search={{ look: String(look) }} resetScroll={false}>
          {look === open ? t('cases.lookOpen', { look }) : t('cases.lookNumber', { look })}
        </Link>
      ),
      names: true,
    },
    { head: t('cases.versionIs'), cell: ({ version }) => version, class: 'r n' },
    { head: t('record.when'), cell: ({ askedAt }) => <Moment at={askedAt} /> },
    { head: t('cases.by'), cell: ({ by }) => by, class: 'n' },
    { head: t('record.state'), cell: ({ progress }) => t(`cases.state.${progress.state}`) },
    {
      head: t('cases.word'),
      cell: ({ verdict, exploratory }) => {
        if (verdict === null) return '–';
        return exploratory ? t('cases.exploratoryWord', { word: term(verdict) }) : term(verdict);
      },
    },
  ];
};
