import { useState } from 'react';
import { postPhoto } from '../api/post-photo.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { PhotoField } from '../ui/photo-field.js';
import { useWords } from '../words/use-words.js';

interface AddCertificateProps {
  readonly lot: string;
  readonly isUnidentified: boolean;
}

/** Adds a photo of the certificate of a lot, or of material that nobody could name. The original is kept as it came; a copy without metadata is shown. */
export const AddCertificate = ({ lot, isUnidentified }: AddCertificateProps) => {
  const { t } = useWords();
  const words = t(isUnidentified ? 'store.photoOfMaterial' : 'store.photo');
  const [photo, setPhoto] = useState<File | null>(null);
  const [chosen, setChosen] = useState(0);
  return (
    <Allowed to="addLotPhoto" what={words}>
      <RecordForm
        groups={[]}
        button={t('store.photoDo')}
        send={(_, envelope) => postPhoto('/api/lots/:lot/photos', { lot }, envelope, photo)}
        onDone={() => {
          setPhoto(null);
          setChosen((before) => before + 1);
        }}
        done={({ result }) => (
          <p>{mark('made', t('store.photoKept', { digest: result.originalSha256.slice(0, 12) }))}</p>
        )}
      >
        {() => <PhotoField key={chosen} label={words} hint={t('store.photoHint')} onChosen={setPhoto} />}
      </RecordForm>
    </Allowed>
  );
};
