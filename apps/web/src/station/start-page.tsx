import { Link } from '@tanstack/react-router';
import { STATION_TASKS } from '../station-frame/tasks.js';
import { StationPage } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { useWords } from '../words/use-words.js';

/** Where work at the station begins: what one may do, first what is one's own. */
export const StartPage = () => {
  const { t } = useWords();
  const holder = useHolder();
  // Of who took over off line the roles may not be known: nothing is kept from them, the service judges later.
  const roles = holder?.roles ?? [];
  const tasks =
    roles.length === 0
      ? STATION_TASKS
      : STATION_TASKS.filter((task) => task.roles.some((role) => roles.includes(role)));
  return (
    <StationPage title={t('station.title')} name={t('station.title')}>
      {holder === null ? (
        <p className="st-say">
          <Link to="/station/take-over" className="btn do">
            {t('station.takeOver')}
          </Link>
        </p>
      ) : null}
      <nav aria-label={t('station.tasks')}>
        <ul className="st-tasks">
          {tasks.map(({ to, name, help }) => (
            <li key={to}>
              <Link to={to}>
                <b>{t(name)}</b>
                <span>{t(help)}</span>
              </Link>
            </li>
          ))}
        </ul>
      </nav>
    </StationPage>
  );
};
