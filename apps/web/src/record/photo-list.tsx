import { useState } from 'react';
import { Button } from '../ui/button.js';
import { Camera } from '../ui/camera.js';
import { useWords } from '../words/use-words.js';
import type { Words } from '../words/words.js';
import { useThumbnail } from './use-thumbnail.js';

/** The service takes no photo larger than this, bytes (its own limit; it looks again). */
const BYTES_AT_MOST = 30 * 1024 * 1024;

interface PhotoListProps {
  /** What they are photos of, where a page has more than one list. */
  readonly heading?: string;
  readonly photos: readonly File[];
  readonly onPhotos: (photos: readonly File[]) => void;
}

/** Photos to go with an entry: taken by the camera of the device, seen with their size, and taken off again. */
export const PhotoList = ({ heading, photos, onPhotos }: PhotoListProps) => {
  const words = useWords();
  const { t } = words;
  const [large, setLarge] = useState<File>();
  const add = (taken: readonly File[]): void => {
    setLarge(taken.find(({ size }) => size > BYTES_AT_MOST));
    onPhotos([...photos, ...taken.filter(({ size }) => size <= BYTES_AT_MOST)]);
  };
  return (
    <div className="photos">
      <h2>{heading ?? t('bay.photos')}</h2>
      {photos.length === 0 ? null : (
        <ul className="plain shots">
          {photos.map((photo, i) => (
            <Shot
              key={`${i} ${photo.name}`}
              photo={photo}
              number={i + 1}
              onDrop={() => onPhotos(photos.toSpliced(i, 1))}
            />
          ))}
        </ul>
      )}
      <Camera onPhotos={add}>{photos.length === 0 ? t('bay.takePhoto') : t('bay.anotherPhoto')}</Camera>
      {large === undefined ? null : (
        <p className="wrong" role="alert">
          {t('bay.photoTooLarge', {
            name: large.name,
            size: sizeOf(large.size, words),
            most: sizeOf(BYTES_AT_MOST, words),
          })}
        </p>
      )}
      <p className="soft small">{t('bay.photoTravels')}</p>
    </div>
  );
};

const sizeOf = (bytes: number, { t, figure }: Words): string =>
  bytes < 1e6
    ? t('bay.kilobytes', { size: figure(Math.ceil(bytes / 1e3)) })
    : t('bay.megabytes', { size: figure(bytes / 1e6, 2) });

interface ShotProps {
  readonly photo: File;
  readonly number: number;
  readonly onDrop: () => void;
}

const Shot = ({ photo, number, onDrop }: ShotProps) => {
  const words = useWords();
  const { t } = words;
  const thumbnail = useThumbnail(photo);
  const name = t('bay.photo', { number, size: sizeOf(photo.size, words) });
  return (
    <li>
      {thumbnail === undefined ? <span className="shot" /> : <img className="shot" src={thumbnail} alt={name} />}
      <span>{name}</span>
      <Button label={t('bay.dropPhoto', { number })} onPress={onDrop}>
        ×
      </Button>
    </li>
  );
};
