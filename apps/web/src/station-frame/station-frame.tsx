import { Link, Outlet } from '@tanstack/react-router';
import { useEffect, useSyncExternalStore } from 'react';
import { ask } from '../api/ask.js';
import { session } from '../api/session.js';
import { network } from '../device/network.js';
import { shellWorker } from '../device/shell-worker.js';
import { storageStays } from '../device/storage.js';
import { GlareButton } from '../marks/glare-button.js';
import { drain, keepDraining } from '../outbox/drain.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { useHolder } from './use-holder.js';
import { WaitingTape } from './waiting-tape.js';

/** So often it is asked whether the service is there, ms. */
const HEARD_EVERY_MS = 20_000;

/** The frame of the station: who has the tablet, what waits to be sent, one task, and the usual cautions. */
export const StationFrame = () => {
  const { t } = useWords();
  useEffect(() => {
    keepDraining();
    void storageStays.ask();
    void shellWorker.register();
    return listen();
  }, []);
  return (
    <div className="station">
      <header className="st-bar">
        <Link to="/station">{t('station.start')}</Link>
        <Who />
        <GlareButton />
      </header>
      <WaitingTape />
      <main id="page" tabIndex={-1}>
        <Outlet />
      </main>
      <footer className="st-safe">
        <Text of="station.caution" />
        <NoNetworkReady />
      </footer>
    </div>
  );
};

/** Whether this device can go on, and start again, with no network. */
const NoNetworkReady = () => {
  const { t } = useWords();
  const readiness = useSyncExternalStore(shellWorker.subscribe, shellWorker.readiness);
  return <p aria-live="polite">{t(`station.noNetwork.${readiness}`)}</p>;
};

const Who = () => {
  const { t } = useWords();
  const holder = useHolder();
  return (
    <Link to="/station/take-over" className="st-who">
      {holder === null ? (
        t('station.nobody')
      ) : (
        <>
          <span className="n">{holder.badge}</span>
          {holder.proved ? null : <span> {t('station.unproved')}</span>}
        </>
      )}
    </Link>
  );
};

/** Asks from time to time who is signed in here: it tells whether the service is there, and its clock. */
const listen = (): (() => void) => {
  const once = async (): Promise<void> => {
    try {
      session.told(await ask('/api/session', {}));
      if (!network.get().reached) void drain().catch(() => undefined);
      network.tried(true);
    } catch {
      network.tried(false);
    }
  };
  const soon = (): void => void once();
  soon();
  addEventListener('online', soon);
  const timer = setInterval(soon, HEARD_EVERY_MS);
  return () => {
    clearInterval(timer);
    removeEventListener('online', soon);
  };
};
