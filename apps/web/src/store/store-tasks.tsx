import { Link } from '@tanstack/react-router';
import { useMay } from '../api/use-may.js';
import { useWords } from '../words/use-words.js';

/** What can be done in the store by who is signed in; what is received stands first. */
export const StoreTasks = () => {
  const { t } = useWords();
  const may = useMay();
  const tasks = [
    ['receiveLot', '/store/receive', t('store.receive')],
    ['makeMix', '/store/mix', t('store.mix')],
    ['cutKit', '/store/kit', t('store.kit')],
    ['registerMaterial', '/store/materials', t('store.registerMaterial')],
  ] as const;
  const offered = tasks.filter(([route]) => may(route));
  if (offered.length === 0) return <p className="note soft">{t('store.readsOnly')}</p>;
  return (
    <p className="buttons">
      {offered.map(([route, to, words], i) => (
        <Link key={route} to={to} className={i === 0 ? 'btn do' : 'btn'}>
          {words}
        </Link>
      ))}
    </p>
  );
};
