import type { ClaimView, DecideClaim as Sent } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { decimal } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const DECISIONS = ['accepted', 'part paid', 'goodwill', 'refused', 'more is asked'] as const;

/** What was decided, the newest first, and deciding: by a person, with a reason. */
export const Decisions = ({ claim }: { readonly claim: ClaimView }) => {
  const { t } = useWords();
  const columns = useDecisionColumns();
  return (
    <>
      {claim.decisions.length === 0 ? (
        <Empty>{t('claims.notDecided')}</Empty>
      ) : (
        <Table caption={t('claims.decisions')} columns={columns} rows={claim.decisions} />
      )}
      <Allowed to="decideClaim" what={t('claims.decide')}>
        <Decide claim={claim.id} bears={claim.term.bearsPercent} />
      </Allowed>
    </>
  );
};

type Decided = ClaimView['decisions'][number];

const useDecisionColumns = (): readonly Column<Decided>[] => {
  const { t, term, figure, plain } = useWords();
  return [
    { head: t('claims.decision'), cell: ({ decision }) => term(decision), names: true },
    { head: t('record.reason'), cell: ({ reason }) => <Said text={reason} /> },
    {
      head: t('claims.paid'),
      cell: ({ paidPercent }) => (paidPercent === null ? '–' : `${figure(paidPercent, 4)} %`),
      class: 'r n',
    },
    {
      head: t('claims.cost'),
      cell: ({ cost }) => (cost === null ? '–' : `${plain(cost.amount)} ${cost.currency}`),
      class: 'r n',
    },
    { head: t('claims.hours'), cell: ({ hours }) => (hours === null ? '–' : `${figure(hours, 4)} h`), class: 'r n' },
    {
      head: t('claims.termsSaid'),
      cell: ({ term: { within } }) => t(`claims.within.${within === null ? 'unknown' : within ? 'yes' : 'no'}`),
    },
    { head: t('claims.decidedBy'), cell: ({ by }) => by, class: 'n' },
    { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
  ];
};

interface DecideProps {
  readonly claim: string;
  /** What the builder bears by the terms: shown as a hint, and never filled in for who decides. */
  readonly bears: number | null;
}

const Decide = ({ claim, bears }: DecideProps) => {
  const { t, term, figure } = useWords();
  const hint = bears === null ? undefined : t('claims.paidHint', { percent: figure(bears, 4) });
  return (
    <RecordForm
      groups={[
        {
          name: t('claims.decide'),
          fields: [
            {
              name: 'decision',
              label: t('claims.decision'),
              kind: 'choice',
              options: DECISIONS.map((each) => [each, term(each)]),
              hint: t('claims.decisionHint'),
            },
            { name: 'reason', label: t('record.reason'), kind: 'words' },
            { name: 'paidPercent', label: t('claims.paid'), kind: 'decimal', hint },
            { name: 'cost', label: t('claims.cost'), kind: 'decimal', pointer: '/cost/amount' },
            {
              name: 'currency',
              label: t('claims.currency'),
              hint: t('claims.currencyHint'),
              pointer: '/cost/currency',
            },
            { name: 'hours', label: t('claims.hours'), kind: 'decimal' },
          ],
        },
      ]}
      button={t('claims.decideDo')}
      send={(said, envelope) =>
        post(
          '/api/claims/:claim/decisions',
          { claim },
          {
            ...envelope,
            decision: said('decision') as Sent['decision'],
            reason: said('reason'),
            ...number('paidPercent', said('paidPercent')),
            ...number('hours', said('hours')),
            ...(said('cost').trim() === '' && said('currency').trim() === ''
              ? {}
              : { cost: { amount: decimal(said('cost')), currency: said('currency').trim().toUpperCase() } }),
          },
        )
      }
      done={({ result }) => (
        <Found of={{ result: {} }} words={t('claims.decidedNow', { decision: term(result.decision) })} />
      )}
    />
  );
};

/** A number that may be left out. */
const number = <K extends string>(name: K, typed: string): { readonly [N in K]?: number } =>
  (typed.trim() === '' ? {} : { [name]: Number(decimal(typed)) }) as { [N in K]?: number };
