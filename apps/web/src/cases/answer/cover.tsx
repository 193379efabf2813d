import type { CaseAnswer } from '@hull-record/contracts';
import { HullLink } from '../../record/links.js';
import { Joined } from '../../ui/joined.js';
import { Table } from '../../ui/table.js';
import { useWords } from '../../words/use-words.js';

/** Which classes together are in the claimed hulls, taken one after the other: something to look at, no proof. */
export const Cover = ({ of: { steps, unexplained } }: { readonly of: CaseAnswer['cover'] }) => {
  const { t } = useWords();
  return (
    <>
      <p>{t('cases.coverIs')}</p>
      {steps.length === 0 ? (
        <p>{t('cases.coversNothing')}</p>
      ) : (
        <Table
          caption={t('cases.coverSteps')}
          columns={[
            { head: t('cases.step'), cell: ({ number }) => number, class: 'r n' },
            { head: t('cases.named'), cell: ({ named }) => named, names: true, class: 'n' },
            { head: t('cases.explains'), cell: ({ explains }) => explains, class: 'r n' },
            {
              head: t('cases.runnerUp'),
              cell: ({ runnerUp, tie }) => {
                if (runnerUp === null) return '–';
                return tie ? t('cases.runnerUpTie', { named: runnerUp }) : runnerUp;
              },
            },
          ]}
          rows={steps.map((each, i) => ({ ...each, number: i + 1 }))}
        />
      )}
      <p>
        {t('cases.unexplained', { count: unexplained.length })}{' '}
        <span className="n">
          <Joined by=", ">
            {unexplained.map((hull) => (
              <HullLink key={hull} to={hull} />
            ))}
          </Joined>
        </span>
      </p>
    </>
  );
};
