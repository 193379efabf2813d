import { useQuery } from '@tanstack/react-query';
import { balanceQuery } from '../api/queries-of-store.js';
import { Answer } from '../asked/answer.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Facts } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** The account of every kilogram of a lot: received = used + put into other lots + lost + left, less what counts found. */
export const BalanceOfLot = ({ lot }: { readonly lot: string }) => {
  const { t, mass, term, percent } = useWords();
  const query = useQuery(balanceQuery(lot));
  return (
    <Answer what={t('store.theBalance')} query={query}>
      {(balance) => (
        <>
          <p className="verdict">
            {mark(balance.verdict === 'balances' ? 'inside' : 'outside', <Term word={balance.verdict} />)}
          </p>
          <Facts
            rows={[
              [t('store.came'), mass(balance.receivedKg)],
              [t('store.used'), mass(balance.usedKg)],
              [t('store.putInto'), mass(balance.putIntoKg)],
              [t('store.lost'), mass(balance.lostKg)],
              [t('store.difference'), mass(balance.differenceKg)],
              [t('store.left'), mass(balance.leftKg)],
              [t('record.basis'), term(balance.basis)],
              [
                t('store.lossAllowance'),
                balance.lossAllowance === null ? t('record.notKnown') : percent(balance.lossAllowance),
              ],
            ]}
          />
          <p className="note soft">{t('store.balanceIs')}</p>
          {balance.lines.length === 0 ? null : (
            <Fold summary={t('store.lines', { count: balance.lines.length })}>
              <Table
                caption={t('store.linesCaption')}
                columns={[
                  { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
                  { head: t('record.what'), cell: ({ kind }) => <Term word={kind} />, names: true },
                  { head: t('store.into'), cell: ({ what }) => <Said text={what} /> },
                  { head: t('store.change'), cell: ({ changeKg }) => mass(changeKg), class: 'r' },
                  { head: t('store.left'), cell: ({ leftKg }) => mass(leftKg), class: 'r' },
                  { head: t('record.basis'), cell: ({ basis }) => (basis === null ? '–' : term(basis)) },
                ]}
                rows={balance.lines}
              />
            </Fold>
          )}
        </>
      )}
    </Answer>
  );
};
