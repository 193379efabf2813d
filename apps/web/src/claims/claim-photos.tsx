import { useState } from 'react';
import type { AddClaimPhoto as Sent, ClaimView } from '@hull-record/contracts';
import { postPhoto } from '../api/post-photo.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Redacted } from '../record/redacted.js';
import { Fold } from '../ui/fold.js';
import { PhotoField } from '../ui/photo-field.js';
import { useWords } from '../words/use-words.js';

const SHOWN = ['HIN plate', 'whole side', 'zone with scale', 'close-up with ruler', 'other'] as const;

/** The set of pictures that a claim is asked for: those that are there, and those that are missing. */
export const ClaimPhotos = ({ claim }: { readonly claim: ClaimView }) => {
  const { t, term } = useWords();
  const asked = claim.photosAsked;
  return (
    <>
      <p className="verdict">
        {asked.length === 0
          ? mark('made', t('claims.photosWhole'))
          : mark('to come', t('claims.photosMissing', { missing: asked.map(term).join(', ') }))}
      </p>
      {claim.photos.length === 0 ? null : (
        <ul className="plain shots large">
          {claim.photos.map(({ id, shows, originalSha256, redactedOn }) => (
            <li key={id}>
              <figure>
                <a href={photoAt(id)}>
                  <img
                    className="shot"
                    src={photoAt(id)}
                    alt={t('claims.photoOf', { shows: term(shows) })}
                    loading="lazy"
                  />
                </a>
                <figcaption className="note">
                  {term(shows)} <span className="n soft">{originalSha256.slice(0, 12)}</span>
                  {redactedOn === null ? null : <Redacted on={redactedOn} />}
                </figcaption>
              </figure>
            </li>
          ))}
        </ul>
      )}
      <Fold summary={t('claims.addPhoto')}>
        <Allowed to="addClaimPhoto" what={t('claims.addPhoto')}>
          <AddPhoto claim={claim.id} next={asked[0] ?? 'other'} />
        </Allowed>
      </Fold>
    </>
  );
};

const photoAt = (id: string): string => `/api/photos/${encodeURIComponent(id)}`;

interface AddPhotoProps {
  readonly claim: string;
  /** The first kind of picture that is missing: offered first. */
  readonly next: string;
}

const AddPhoto = ({ claim, next }: AddPhotoProps) => {
  const { t, term } = useWords();
  const [photo, setPhoto] = useState<File | null>(null);
  const [chosen, setChosen] = useState(0);
  return (
    <RecordForm
      groups={[
        {
          fields: [
            {
              name: 'shows',
              label: t('claims.shows'),
              kind: 'choice',
              options: SHOWN.map((each) => [each, term(each)]),
            },
          ],
        },
      ]}
      first={{ shows: next }}
      button={t('claims.addPhotoDo')}
      send={(said, envelope) =>
        postPhoto('/api/claims/:claim/photos', { claim }, { ...envelope, shows: said('shows') as Sent['shows'] }, photo)
      }
      onDone={() => {
        setPhoto(null);
        setChosen((before) => before + 1);
      }}
      done={({ result }) => (
        <p>{mark('made', t('claims.photoKept', { digest: result.originalSha256.slice(0, 12) }))}</p>
      )}
    >
      {() => <PhotoField key={chosen} label={t('claims.photo')} hint={t('claims.photoHint')} onChosen={setPhoto} />}
    </RecordForm>
  );
};
