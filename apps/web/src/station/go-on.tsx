import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { queueEntry } from '../outbox/queue-entry.js';
import { useHolder } from '../station-frame/use-holder.js';
import { useKeep } from '../station-frame/use-keep.js';
import { Button } from '../ui/button.js';
import { Fold } from '../ui/fold.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface GoOnProps {
  /** Rules that a shift lead may go on over; null when nobody may. */
  readonly rules: readonly string[] | null;
  readonly parts: readonly string[];
  readonly layer: string;
  /** It is kept that work goes on. */
  readonly onGone: () => void;
}

/** A shift lead lets work go on under nonconformance, with a reason; quality disposes before release. Never over a safety hold. */
export const GoOn = ({ rules, parts, layer, onGone }: GoOnProps) => {
  const { t } = useWords();
  const holder = useHolder();
  const { keep, busy, note } = useKeep();
  const [reason, setReason] = useState('');
  if (rules === null) return <p className="caution">{t('goOn.nobody')}</p>;
  const goOn = async (): Promise<void> => {
    const about = `${parts.join(', ')}, ${layer}`;
    const all = (): Promise<unknown> =>
      parts.reduce<Promise<unknown>>(
        (before, part) =>
          before.then(() =>
            queueEntry(
              '/api/go-ons',
              {},
              { part, layer, rules: [...rules], reason: reason.trim() },
              { lanes: [part], about, detail: rules.join(', ') },
            ),
          ),
        Promise.resolve(),
      );
    if (await keep(all)) onGone();
  };
  return (
    <Fold summary={t('goOn.title')} className="st-fold">
      <p>{t('goOn.what')}</p>
      {holder?.roles.includes('shift lead') ? (
        <>
          <TextField label={t('goOn.reason')} value={reason} onChange={setReason} kind="words" />
          {holder.proved ? null : <p className="caution">{t('goOn.unproved')}</p>}
          <Button
            className={reason.trim() === '' ? 'btn st-refuses' : 'btn'}
            busy={busy}
            onPress={() => (reason.trim() === '' ? undefined : void goOn())}
          >
            {t('goOn.do', { badge: holder.badge })}
            <small>{reason.trim() === '' ? t('goOn.sayWhy') : t('read.toQuality')}</small>
          </Button>
          {note}
        </>
      ) : (
        <Link to="/station/take-over" search={{ part: parts[0] ?? '', layer, task: 'layer' }} className="btn">
          {t('goOn.handOver')}
        </Link>
      )}
    </Fold>
  );
};
