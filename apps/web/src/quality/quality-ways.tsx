import { Link } from '@tanstack/react-router';
import { useWords } from '../words/use-words.js';

/** The pages of the quality desk. */
export const QualityWays = () => {
  const { t } = useWords();
  return (
    <p className="buttons">
      <Link to="/quality/release" className="btn">
        {t('quality.release')}
      </Link>
      <Link to="/quality/counts" className="btn">
        {t('quality.counts')}
      </Link>
      <Link to="/charts" className="btn">
        {t('quality.charts')}
      </Link>
      <Link to="/quality/concessions" className="btn">
        {t('quality.concessions')}
      </Link>
      <Link to="/equipment" className="btn">
        {t('equipment.due')}
      </Link>
      <Link to="/models" className="btn">
        {t('app.nav.models')}
      </Link>
      <Link to="/molds" className="btn">
        {t('molds.title')}
      </Link>
    </p>
  );
};
