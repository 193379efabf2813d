import type { StoreOfLot } from '@hull-record/contracts';
import { Empty } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { AddCertificate } from './add-certificate.js';

interface CertificateProps {
  readonly lot: string;
  readonly photos: StoreOfLot['photos'];
}

/** Photos of the certificate that a lot came with, and one more. */
export const CertificateOfLot = ({ lot, photos }: CertificateProps) => {
  const { t, times } = useWords();
  return (
    <>
      {photos.length === 0 ? <Empty>{t('store.noPhotos')}</Empty> : null}
      <div className="photos">
        {photos.map(({ id, happenedAt }) => (
          <a key={id} href={`/api/photos/${id}`}>
            <img
              src={`/api/photos/${id}`}
              alt={t('store.photoOf', { lot, day: times.day(happenedAt) })}
              loading="lazy"
            />
          </a>
        ))}
      </div>
      <AddCertificate lot={lot} />
    </>
  );
};
