import type { Unnamed } from '../day/propose.js';
import { PhotoList } from '../record/photo-list.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface UnnamedFieldsProps {
  readonly of: Unnamed;
  readonly onChange: (of: Unnamed) => void;
}

/** What is known of material that nobody can name: its looks, where it stood, which lots it may be of, a photo. */
export const UnnamedFields = ({ of, onChange }: UnnamedFieldsProps) => {
  const { t } = useWords();
  return (
    <div className="st-unnamed">
      <TextField
        label={t('bay.looks')}
        kind="words"
        value={of.looks}
        onChange={(looks) => onChange({ ...of, looks })}
      />
      <TextField
        label={t('bay.foundAt')}
        kind="words"
        value={of.foundAt}
        onChange={(foundAt) => onChange({ ...of, foundAt })}
      />
      <TextField
        label={t('bay.code.unidentified')}
        kind="words"
        value={of.likely}
        onChange={(likely) => onChange({ ...of, likely })}
      />
      <PhotoList photos={of.photos} onPhotos={(photos) => onChange({ ...of, photos })} />
    </div>
  );
};
