import { Link } from '@tanstack/react-router';
import { useSyncExternalStore } from 'react';
import { useDay } from '../day/use-day.js';
import type { Work } from '../day/work-of.js';
import { shellWorker } from '../device/shell-worker.js';
import { STATION_TASKS } from '../station-frame/tasks.js';
import { StationPage } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';
import { DayState } from './day-state.js';
import { WorkList } from './work-list.js';

/** Where work at the station begins: what one may do, and the day's list, first where work stands still. */
export const StartPage = () => {
  const { t } = useWords();
  const holder = useHolder();
  const day = useDay();
  // Of who took over off line the roles may not be known: nothing is kept from them, the service judges later.
  const roles = holder?.roles ?? [];
  const tasks =
    roles.length === 0
      ? STATION_TASKS
      : STATION_TASKS.filter((task) => task.roles.some((role) => roles.includes(role)));
  const work = workOfRoles(roles);
  return (
    <StationPage title={t('station.title')} name={t('station.title')}>
      <NewVersion />
      {holder === null ? (
        <p className="st-say">
          <Link to="/station/take-over" className="btn do">
            {t('station.takeOver')}
          </Link>
        </p>
      ) : null}
      <nav aria-label={t('station.tasks')}>
        <ul className="st-tasks st-tasks-two">
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
      {holder === null ? null : (
        <DayState of={day}>{(now) => <WorkList day={now} empty={t('day.nothing')} {...work} />}</DayState>
      )}
    </StationPage>
  );
};

/** What of the day's list is theirs; all of it when their roles are not known. */
const workOfRoles = (roles: readonly string[]): { only?: readonly Work['what'][] } => {
  if (roles.length === 0) return {};
  const lays = roles.some((role) => ['laminator', 'shift lead'].includes(role));
  const inspects = roles.some((role) => ['inspector', 'quality'].includes(role));
  return { only: [...(lays ? ['make' as const] : []), ...(inspects ? ['sign' as const] : []), 'read again', 'read'] };
};

const NewVersion = () => {
  const { t } = useWords();
  const newer = useSyncExternalStore(shellWorker.subscribe, shellWorker.isNewer);
  return newer ? <Button onPress={shellWorker.loadNewer}>{t('station.newer')}</Button> : null;
};
