import type { StockItem } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { stockQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { LotState } from '../marks/lot-state.js';
import { mark, tape } from '../marks/mark.js';
import { Empty } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { CalendarDay, Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { StoreLotLink } from './store-lot-link.js';

/** Stock of a material: first to expire first, then first received. What may not be used says why. */
export const StockInOrder = ({ material }: { readonly material: string }) => {
  const { t, mass } = useWords();
  const query = useQuery(stockQuery(material));
  return (
    <Answer what={t('store.theStock')} query={query}>
      {(stock) =>
        stock.length === 0 ? (
          <Empty>{t('store.noStock')}</Empty>
        ) : (
          <>
            <Table
              caption={t('store.orderCaption')}
              columns={[
                { head: t('record.lot'), cell: ({ lot }) => <StoreLotLink to={lot} />, names: true, class: 'n' },
                { head: t('store.use'), cell: (item) => <Use of={item} next={nextOf(stock)} /> },
                {
                  head: t('store.lastDay'),
                  cell: ({ expiresOn }) => (expiresOn === null ? '–' : <CalendarDay at={expiresOn} />),
                },
                { head: t('store.received'), cell: ({ receivedAt }) => <Day at={receivedAt} /> },
                { head: t('store.left'), cell: ({ leftKg }) => mass(leftKg), class: 'r' },
                { head: t('store.containers'), cell: (item) => <Containers of={item} /> },
              ]}
              rows={stock}
            />
            <p className="note soft">{t('store.orderNote')}</p>
          </>
        )
      }
    </Answer>
  );
};

const nextOf = (stock: readonly StockItem[]): string | undefined => stock.find(({ usable }) => usable)?.lot;

const Use = ({ of, next }: { readonly of: StockItem; readonly next: string | undefined }) => {
  const { t } = useWords();
  if (of.holds.length > 0) return tape(t('store.onHold'));
  if (of.expired) return mark('stopped', t('store.expired'));
  if (!of.usable) return <LotState state={of.state} />;
  return of.lot === next ? <b>{mark('inside', t('store.useNext'))}</b> : mark('none', t('store.later'));
};

const Containers = ({ of: { containers } }: { readonly of: StockItem }) => {
  const { t, mass } = useWords();
  if (containers.length === 0) return t('store.noContainers');
  return (
    <ul className="plain">
      {containers.map(({ label, place, openedAt, leftKg }) => (
        <li key={label}>
          <span className="n">{label}</span> {mass(leftKg)}
          {openedAt === null ? '' : `, ${t('store.open')}`}
          {place === null ? '' : `, ${place}`}
        </li>
      ))}
    </ul>
  );
};
