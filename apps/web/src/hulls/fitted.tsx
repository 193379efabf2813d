import { useQuery } from '@tanstack/react-query';
import { fittedItemsQuery } from '../api/queries-of-hull.js';
import { Answer } from '../asked/answer.js';
import { Empty, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What is fitted to a hull by its serial number, and what was. */
export const Fitted = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQuery(fittedItemsQuery(number));
  return (
    <Section name={t('hulls.fitted')}>
      <Answer what={t('hulls.fittedTo', { number })} query={query}>
        {(items) =>
          items.length === 0 ? (
            <Empty>{t('hulls.nothingFitted')}</Empty>
          ) : (
            <Table
              caption={t('hulls.fittedCaption')}
              columns={[
                { head: t('record.what'), cell: ({ what }) => <Said text={what} />, names: true },
                { head: t('hulls.serial'), cell: ({ serial }) => serial, class: 'n' },
                { head: t('hulls.maker'), cell: ({ maker }) => maker ?? '–' },
                {
                  head: t('record.note'),
                  cell: ({ customerSupplied, note, removedBecause }) => (
                    <>
                      {customerSupplied ? `${t('hulls.customerSupplied')} ` : ''}
                      {note === null ? null : <Said text={note} />}
                      {removedBecause === null ? null : (
                        <>
                          {t('hulls.removed')} <Said text={removedBecause} />
                        </>
                      )}
                    </>
                  ),
                },
              ]}
              rows={items}
            />
          )
        }
      </Answer>
    </Section>
  );
};
