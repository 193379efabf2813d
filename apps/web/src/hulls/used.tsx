import type { AmountView, UsedView } from '@hull-record/contracts';
import { Folded } from '../record/folded.js';
import { LotLink } from '../record/links.js';
import { useWords } from '../words/use-words.js';

type Used = { readonly lot: string; readonly amount: AmountView } & Partial<UsedView>;

/** What was used: each lot with its amount and how that is known, and the suppliers' lots behind it. */
export const UsedList = ({ used }: { readonly used: readonly Used[] }) => {
  const { t } = useWords();
  if (used.length === 0) return t('hulls.noneRecorded');
  return (
    <ul className="plain">
      {used.map((each, i) => (
        <li key={i}>
          <One used={each} />
        </li>
      ))}
    </ul>
  );
};

const One = ({ used: { lot, amount: of, tank, supplierLots = [], corrected } }: { readonly used: Used }) => {
  const { t, term, amount } = useWords();
  return (
    <>
      <span className="n">
        <LotLink to={lot} />
      </span>
      {` ${amount(of)}, ${term(of.basis)}`}
      {tank ? `, ${t('hulls.fromTank', { tank })}` : null}
      <div className="note soft">
        <BehindIt lots={supplierLots} />
        {corrected ? ` ${t('hulls.corrected')}` : null}
      </div>
    </>
  );
};

/** The suppliers' lots behind a lot, the largest first: a tank holds a little of every fill it ever had. */
const BehindIt = ({ lots }: { readonly lots: UsedView['supplierLots'] }) => {
  const { t, percent } = useWords();
  const words = [...lots]
    .sort((a, b) => b.fraction - a.fraction)
    .map(
      ({ supplierLot, material, fraction }) =>
        `${material}, ${supplierLot}${fraction < 1 - 1e-9 ? ` (${percent(fraction)})` : ''}`,
    );
  return <Folded items={words} atMost={2} more={(count) => t('hulls.moreSupplierLots', { count })} />;
};
