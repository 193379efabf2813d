import { Link } from '@tanstack/react-router';
import { useMay } from '../api/use-may.js';
import { useWords } from '../words/use-words.js';

/** The ways from a hull to its claims, and to filing another, for those who may. */
export const ClaimsOfHull = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const may = useMay();
  return (
    <>
      {may('listClaims') ? (
        <p>
          <Link to="/claims" search={{ hull: number }}>
            {t('hulls.claims')}
          </Link>
        </p>
      ) : null}
      {may('fileClaim') ? (
        <p>
          <Link to="/claims/new" search={{ hull: number }}>
            {t('hulls.fileClaim')}
          </Link>
        </p>
      ) : null}
    </>
  );
};
