import { Link } from '@tanstack/react-router';
import { useMay } from '../api/use-may.js';
import { useWords } from '../words/use-words.js';

/** The pages of people, devices and programs. */
export const PeopleWays = () => {
  const { t } = useWords();
  const may = useMay();
  return (
    <p className="buttons">
      <Link to="/people" className="btn" activeOptions={{ exact: true }}>
        {t('people.badges')}
      </Link>
      <Link to="/devices" className="btn">
        {t('people.devices')}
      </Link>
      {may('listTokens') ? (
        <Link to="/tokens" className="btn">
          {t('people.tokens')}
        </Link>
      ) : null}
    </p>
  );
};
