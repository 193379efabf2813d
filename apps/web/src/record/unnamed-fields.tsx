import type { Unnamed } from '../day/unnamed.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';
import { PhotoList } from './photo-list.js';

interface UnnamedFieldsProps {
  readonly of: Unnamed;
  readonly onChange: (of: Unnamed) => void;
}

/** What is known of material that nobody can name: its looks, where it stood, which lots it may be of, a photo. */
export const UnnamedFields = ({ of, onChange }: UnnamedFieldsProps) => {
  const { t } = useWords();
  const field = (name: 'looks' | 'foundAt' | 'likely', label: string) => (
    <TextField label={label} kind="words" value={of[name]} onChange={(typed) => onChange({ ...of, [name]: typed })} />
  );
  return (
    <div className="unnamed">
      {field('looks', t('bay.looks'))}
      {field('foundAt', t('bay.foundAt'))}
      {field('likely', t('bay.code.unidentified'))}
      <PhotoList
        heading={t('bay.photosOfMaterial')}
        photos={of.photos}
        onPhotos={(photos) => onChange({ ...of, photos })}
      />
    </div>
  );
};
