import type { RepairView } from '@hull-record/contracts';
import { LotLink } from '../../record/links.js';
import { useWords } from '../../words/use-words.js';

/** What was used, a line each: lot, amount, and how that is known. */
export const UsedLines = ({ used }: { readonly used: RepairView['used'] }) => {
  const { t, amount, term } = useWords();
  return (
    <div>
      <h2>{t('bay.used')}</h2>
      {used.length === 0 ? (
        <p>{t('bay.nothingUsed')}</p>
      ) : (
        <ul className="plain found">
          {used.map(({ id, lot, amount: taken }) => (
            <li key={id}>
              <span className="n">
                <LotLink to={lot} />
              </span>{' '}
              {amount(taken)}, {term(taken.basis)}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};
