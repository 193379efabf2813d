import { Link } from '@tanstack/react-router';
import { useSyncExternalStore } from 'react';
import { network } from '../device/network.js';
import { storageStays } from '../device/storage.js';
import { useOutbox } from '../outbox/use-outbox.js';
import { useWords } from '../words/use-words.js';

/** Across the top of every screen of the station: what waits to be sent, what was refused, and whether it is safe here. */
export const WaitingTape = () => {
  const { t, times } = useWords();
  const { looked, waiting, refused, heldUp } = useOutbox();
  const { reached, since } = useSyncExternalStore(network.subscribe, network.get);
  const stays = useSyncExternalStore(storageStays.subscribe, storageStays.get);
  const off = reached ? '' : `${t('outbox.noNetwork', { at: times.minute(new Date(since).toISOString()) })} `;
  if (!looked && reached) return <p className="st-sent" />;
  if (refused.length === 0 && waiting.length === 0 && reached)
    return (
      <p className="st-sent" role="status">
        {t('outbox.allSent')}
      </p>
    );
  return (
    <div className="st-tape" role="status">
      <p>
        {off}
        {waiting.length > 0 ? <b>{t('outbox.waits', { count: waiting.length })} </b> : null}
        {refused.length > 0 ? <b>{t('outbox.refused', { count: refused.length })} </b> : null}
        {heldUp === 'sign-in' ? t('outbox.waitsForSignIn') : null}
        {waiting.length > 0 && heldUp !== 'sign-in'
          ? t(stays === false ? 'outbox.mayBeLost' : 'outbox.keptHere')
          : null}
        {waiting.length + refused.length === 0 ? t('outbox.goOn') : null}
      </p>
      <Link to="/station/outbox">{t('outbox.see')}</Link>
    </div>
  );
};
