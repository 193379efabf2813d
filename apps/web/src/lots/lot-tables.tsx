import type { LotView } from '@hull-record/contracts';
import { LotState } from '../marks/lot-state.js';
import { LotLink } from '../record/links.js';
import { Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface LotTableProps {
  readonly lot: LotView;
}

/** What was put into a lot that was made here. */
export const Inputs = ({ lot: { inputs } }: LotTableProps) => {
  const { t, term, amount } = useWords();
  if (inputs.length === 0) return null;
  return (
    <Section name={t('lots.madeOf')}>
      <Table
        caption={t('lots.inputs')}
        columns={[
          { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
          { head: t('record.amount'), cell: ({ amount: of }) => amount(of), class: 'r' },
          { head: t('record.basis'), cell: ({ amount: { basis } }) => term(basis) },
        ]}
        rows={inputs}
      />
    </Section>
  );
};

/** The received lots in a lot, whatever way they took, the largest first. */
export const Composition = ({ lot: { origin, composition } }: LotTableProps) => {
  const { t, percent } = useWords();
  if (origin === 'received') return null;
  return (
    <Section name={t('lots.receivedIn')}>
      <Table
        caption={t('lots.fractions')}
        columns={[
          {
            head: t('record.lot'),
            cell: ({ source }) => (source === null ? t('lots.allOthers') : <LotLink to={source} />),
            names: true,
            class: 'n',
          },
          { head: t('lots.role'), cell: ({ role }) => (role === null ? '–' : <Term word={role} />) },
          { head: t('lots.fraction'), cell: ({ fraction }) => percent(fraction), class: 'r' },
        ]}
        rows={[...composition].sort((a, b) => b.fraction - a.fraction)}
      />
      <p className="note soft">
        {t('record.wellMixed')} {t('lots.addUp')}
      </p>
    </Section>
  );
};

/** What was decided about a lot, and why. */
export const States = ({ lot: { states } }: LotTableProps) => {
  const { t } = useWords();
  if (states.length === 0) return null;
  return (
    <Section name={t('lots.states')}>
      <Table
        caption={t('lots.statesCaption')}
        columns={[
          { head: t('record.state'), cell: ({ state }) => <LotState state={state} />, names: true },
          { head: t('record.since'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
          { head: t('record.reason'), cell: ({ reason }) => (reason === null ? '–' : <Said text={reason} />) },
        ]}
        rows={states}
      />
    </Section>
  );
};

/** Values as on the supplier's certificate. */
export const Certificate = ({ lot: { certificate } }: LotTableProps) => {
  const { t, figure } = useWords();
  const values = Object.entries(certificate);
  if (values.length === 0) return null;
  return (
    <Section name={t('lots.certificate')}>
      <Table
        caption={t('lots.certificateCaption')}
        columns={[
          { head: t('record.what'), cell: ([what]) => <Said text={what} />, names: true },
          {
            head: t('lots.value'),
            cell: ([, value]) => (typeof value === 'number' ? figure(value, 9) : <Said text={String(value)} />),
            class: 'r',
          },
        ]}
        rows={values}
      />
    </Section>
  );
};
