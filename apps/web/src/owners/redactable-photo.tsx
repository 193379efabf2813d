import { useState } from 'react';
import type { Area, Redactable } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Day } from '../words/moments.js';
import { useWords } from '../words/use-words.js';
import { AreaPicker } from './area-picker.js';
import { RedactedBy } from './redacted-by.js';

interface RedactablePhotoProps {
  readonly photo: Redactable['photos'][number];
  /** Something keeps originals of this hull. */
  readonly kept: boolean;
}

/** A photo as it is shown, and the form that blacks out areas of it. */
export const RedactablePhoto = ({ photo, kept }: RedactablePhotoProps) => {
  const { t } = useWords();
  const [areas, setAreas] = useState<readonly Area[]>([]);
  const address = `/api/photos/${encodeURIComponent(photo.id)}`;
  // Another address after each act, so that no picture from before it is shown.
  const shown = photo.redacted === null ? address : `${address}?redacted=${encodeURIComponent(photo.redacted.at)}`;
  const name = t('owners.photoOf', { mark: photo.mark });
  const keeps = photo.redacted?.original === 'kept apart';
  return (
    <li>
      <h3>{name}</h3>
      <p className="soft">
        <Day at={photo.at} />
      </p>
      <RedactedBy act={photo.redacted} />
      {keeps ? (
        <p>
          <a className="btn" href={`${address}/kept-original`}>
            {t('owners.keptApartPhoto')}
          </a>
        </p>
      ) : null}
      <AreaPicker photo={{ ...photo, address: shown, name }} areas={areas} onAreas={setAreas} />
      <Fold summary={`${t('owners.blackOut')}: ${photo.mark}`}>
        <p>{t(areas.length === 0 && keeps ? 'owners.onlyErase' : 'owners.blackOutIs')}</p>
        <RecordForm
          groups={[{ fields: [{ name: 'reason', label: t('owners.why'), hint: t('owners.noNames'), kind: 'words' }] }]}
          button={t('owners.blackOut')}
          sure={() => t(kept ? 'owners.sureShown' : 'owners.sure')}
          send={(said, envelope) =>
            post(
              '/api/photos/:photo/redactions',
              { photo: photo.id },
              { ...envelope, areas: [...areas], reason: said('reason') },
            )
          }
          onDone={() => setAreas([])}
          done={({ result: { original, alsoShownAs } }) => (
            <p>
              {t(original === 'erased' ? 'owners.redactedErased' : 'owners.redactedKept')}{' '}
              {alsoShownAs.length === 0 ? null : t('owners.alsoShown', { count: alsoShownAs.length })}
            </p>
          )}
        />
      </Fold>
    </li>
  );
};
