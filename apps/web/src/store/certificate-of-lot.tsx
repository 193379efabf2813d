import type { StoreOfLot } from '@hull-record/contracts';
import { Empty } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { AddCertificate } from './add-certificate.js';

interface CertificateProps {
  readonly lot: string;
  /** It is material that nobody could name: its photos are of itself. */
  readonly isUnidentified: boolean;
  readonly photos: StoreOfLot['photos'];
}

/** Photos of the certificate that a lot came with, or of material that nobody could name, and one more. */
export const CertificateOfLot = ({ lot, isUnidentified, photos }: CertificateProps) => {
  const { t, times } = useWords();
  return (
    <>
      {photos.length === 0 ? <Empty>{t(isUnidentified ? 'store.noPhotosOfMaterial' : 'store.noPhotos')}</Empty> : null}
      <div className="photos">
        {photos.map(({ id, happenedAt }) => (
          <a key={id} href={`/api/photos/${id}`}>
            <img
              src={`/api/photos/${id}`}
              alt={t(isUnidentified ? 'store.photoOfUnnamed' : 'store.photoOf', { lot, day: times.day(happenedAt) })}
              loading="lazy"
            />
          </a>
        ))}
      </div>
      <AddCertificate lot={lot} isUnidentified={isUnidentified} />
    </>
  );
};
