import { useState } from 'react';
import { postPhoto } from '../api/post-photo.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { PhotoField } from '../ui/photo-field.js';
import { useWords } from '../words/use-words.js';

/** Adds a photo of the certificate of a lot. The original is kept as it came; a copy without metadata is shown. */
export const AddCertificate = ({ lot }: { readonly lot: string }) => {
  const { t } = useWords();
  const [photo, setPhoto] = useState<File | null>(null);
  const [chosen, setChosen] = useState(0);
  return (
    <Allowed to="addLotPhoto" what={t('store.photo')}>
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
        {() => <PhotoField key={chosen} label={t('store.photo')} hint={t('store.photoHint')} onChosen={setPhoto} />}
      </RecordForm>
    </Allowed>
  );
};
