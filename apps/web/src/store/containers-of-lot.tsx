import type { ContainerView, LotView } from '@hull-record/contracts';
import { Link } from '@tanstack/react-router';
import { mark, tape } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Empty } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { LabelContainers } from './label-containers.js';
import { TellContainer } from './tell-container.js';

interface ContainersProps {
  readonly lot: LotView;
  readonly containers: readonly ContainerView[];
}

/** The containers of a lot: where each stands and what is in it, what became of it, and labels for more. */
export const ContainersOfLot = ({ lot, containers }: ContainersProps) => {
  const { t, mass } = useWords();
  const { quantity, unit, basis } = lot.amount;
  return (
    <>
      {containers.length === 0 ? (
        <Empty>{t('store.noContainersHelp')}</Empty>
      ) : (
        <>
          <Table
            caption={t('store.containersCaption', { lot: lot.code })}
            columns={[
              { head: t('store.label'), cell: ({ label }) => label, names: true, class: 'n' },
              { head: t('store.kind'), cell: ({ kind }) => <Term word={kind} /> },
              { head: t('record.place'), cell: ({ place }) => place ?? t('record.notKnown') },
              { head: t('store.left'), cell: ({ leftKg }) => mass(leftKg), class: 'r' },
              { head: t('record.state'), cell: (container) => <ContainerState of={container} /> },
            ]}
            rows={containers}
          />
          <p>
            <Link to="/labels" search={{ of: 'container', codes: containers.map(({ label }) => label).join(',') }}>
              {t('store.printLabels')}
            </Link>
          </p>
          <Fold summary={t('store.tell')}>
            <TellContainer containers={containers} />
          </Fold>
        </>
      )}
      <Fold summary={t('store.labelMore')} open={containers.length === 0}>
        <LabelContainers
          key={containers.length}
          lot={lot.code}
          have={containers.length}
          amount={{ quantity, unit: unit as never, basis: basis as never }}
        />
      </Fold>
    </>
  );
};

const ContainerState = ({ of: { rejected, holds, openedAt, history } }: { readonly of: ContainerView }) => {
  const { t, term } = useWords();
  if (holds.length > 0) return tape(t('store.onHold'));
  if (rejected) return mark('stopped', term('rejected'));
  if (history.findLast(({ what }) => what !== 'moved')?.what === 'emptied') return mark('none', term('emptied'));
  return openedAt === null ? mark('to come', t('store.closed')) : mark('none', t('store.open'));
};
