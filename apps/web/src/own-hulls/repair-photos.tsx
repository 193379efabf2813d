import type { AddOwnRepairPhoto as Sent, OwnRepair } from '@hull-record/contracts';
import { pathOf } from '../api/ask.js';
import { postPhoto } from '../api/post-photo.js';
import { Allowed } from '../entry/allowed.js';
import { Redacted } from '../record/redacted.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';
import { AddPhoto } from './add-photo.js';

const SHOWN = ['before', 'ground out', 'laid up', 'finished', 'other'] as const satisfies readonly Sent['shows'][];

interface RepairPhotosProps {
  readonly number: string;
  readonly repair: OwnRepair;
}

/** The photos of an outside repair that the dealer reported, and a way to add one. */
export const RepairPhotos = ({ number, repair }: RepairPhotosProps) => {
  const { t, term } = useWords();
  const at = (photo: string): string =>
    pathOf('/api/own-hulls/:number/outside-repairs/:repair/photos/:photo', { number, repair: repair.id, photo });
  return (
    <>
      {repair.photos.length === 0 ? null : (
        <ul className="plain shots large">
          {repair.photos.map(({ id, shows, redactedOn }) => (
            <li key={id}>
              <figure>
                <a href={at(id)}>
                  <img
                    className="shot"
                    src={at(id)}
                    alt={t('own.photoOf', { mark: repair.mark, shows: term(shows) })}
                    loading="lazy"
                  />
                </a>
                <figcaption className="note">
                  {term(shows)}
                  {redactedOn === null ? null : <Redacted on={redactedOn} />}
                </figcaption>
              </figure>
            </li>
          ))}
        </ul>
      )}
      <Allowed to="addOwnRepairPhoto" what={t('own.addRepairPhoto')}>
        <Fold summary={t('own.addRepairPhoto')}>
          <AddRepairPhoto number={number} repair={repair.id} />
        </Fold>
      </Allowed>
    </>
  );
};

const AddRepairPhoto = ({ number, repair }: { readonly number: string; readonly repair: string }) => {
  const { t, term } = useWords();
  const shows = { name: 'shows', label: t('own.shows'), kind: 'choice' as const };
  return (
    <AddPhoto
      fields={[{ ...shows, options: SHOWN.map((each) => [each, term(each)]) }]}
      first={{ shows: 'finished' }}
      button={t('own.addRepairPhotoDo')}
      send={(said, envelope, photo) =>
        postPhoto(
          '/api/own-hulls/:number/outside-repairs/:repair/photos',
          { number, repair },
          { ...envelope, shows: said('shows') },
          photo,
        )
      }
    />
  );
};
