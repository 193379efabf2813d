import { Link } from '@tanstack/react-router';
import { useWords } from '../words/use-words.js';

/** The way to the label of a lot that was made just now. */
export const LotLabel = ({ lot }: { readonly lot: string }) => {
  const { t } = useWords();
  return (
    <p>
      <Link to="/labels" search={{ of: 'lot', codes: lot }} className="btn">
        {t('store.printLotLabel')}
      </Link>
    </p>
  );
};
