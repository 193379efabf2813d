import type { WarrantyTermsView } from '@hull-record/contracts';
import { Facts } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** One version of the terms: from when they run, what is covered how long, and what of it the builder bears each year. */
export const TermsVersion = ({ terms }: { readonly terms: WarrantyTermsView }) => {
  const { t, term } = useWords();
  const { fromModelYear, toModelYear, starts, covers, transfer, exclusions } = terms;
  return (
    <>
      <Facts
        rows={[
          [
            t('warranty.modelYears'),
            fromModelYear === toModelYear ? `${fromModelYear}` : `${fromModelYear}–${toModelYear}`,
          ],
          [t('warranty.since'), <Day at={terms.from} />],
          [t('warranty.transfer'), transferWords(transfer, t)],
          [t('record.reason'), <Said text={terms.reason} />],
        ]}
      />
      <p>{t('warranty.startsWith', { starts: starts.map(term).join(t('warranty.orElse')) })}</p>
      <Table caption={t('warranty.covers')} columns={useCoverColumns()} rows={covers} />
      {exclusions.length === 0 ? null : (
        <p>
          {t('claims.exclusions')}{' '}
          {exclusions.map((each) => (
            <span key={each}>
              <Said text={each} />.{' '}
            </span>
          ))}
        </p>
      )}
    </>
  );
};

const transferWords = (
  { carries, untilYears }: WarrantyTermsView['transfer'],
  t: ReturnType<typeof useWords>['t'],
): string => {
  if (!carries) return t('warranty.endsOnTransfer');
  return untilYears === null ? t('warranty.carries') : t('warranty.carriesUntil', { years: untilYears });
};

type Cover = WarrantyTermsView['covers'][number];

const useCoverColumns = (): readonly Column<Cover>[] => {
  const { t, kind, figure } = useWords();
  return [
    {
      head: t('warranty.kinds'),
      cell: ({ kinds }) => (kinds.length === 0 ? t('warranty.allOthers') : kinds.map(kind).join(', ')),
      names: true,
    },
    { head: t('warranty.years'), cell: ({ years }) => t('warranty.yearsLong', { years }) },
    {
      head: t('warranty.bears'),
      cell: ({ bearsPercent }) =>
        bearsPercent.length === 0
          ? t('warranty.allOfIt')
          : bearsPercent
              .map((percent, i) => t('warranty.inYear', { year: i + 1, percent: figure(percent, 4) }))
              .join(', '),
    },
  ];
};
