import { useState } from 'react';
import type { EntryField, Said } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import type { EnvelopeSent } from '../entry/use-envelope.js';
import { mark } from '../marks/mark.js';
import { PhotoField } from '../ui/photo-field.js';
import { useWords } from '../words/use-words.js';

interface AddPhotoProps {
  readonly button: string;
  readonly fields?: readonly EntryField[];
  readonly first?: Readonly<Record<string, string>>;
  readonly send: (said: Said, envelope: EnvelopeSent, photo: File | null) => Promise<unknown>;
}

/** The form that adds a photo to something of an own hull; it asks for the next when one is kept. */
export const AddPhoto = ({ button, fields, first = {}, send }: AddPhotoProps) => {
  const { t } = useWords();
  const [photo, setPhoto] = useState<File | null>(null);
  const [sent, setSent] = useState(0);
  return (
    <RecordForm
      groups={fields === undefined ? [] : [{ fields }]}
      first={first}
      button={button}
      send={(said, envelope) => send(said, envelope, photo)}
      onDone={() => {
        setPhoto(null);
        setSent((before) => before + 1);
      }}
      done={() => <p>{mark('made', t('own.pictureKept'))}</p>}
    >
      {() => <PhotoField key={sent} label={t('claims.photo')} hint={t('claims.photoHint')} onChosen={setPhoto} />}
    </RecordForm>
  );
};
