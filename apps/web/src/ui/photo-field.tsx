import { useId } from 'react';

/** The field of the form that the service reads a photo from. */
const NAME = 'photo';

interface PhotoFieldProps {
  readonly label: string;
  readonly hint: string;
  readonly onChosen: (photo: File | null) => void;
}

/** A photo from the camera of the device, or from its files. */
export const PhotoField = ({ label, hint, onChosen }: PhotoFieldProps) => {
  const id = useId();
  return (
    <div className="field photo-field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name={NAME}
        type="file"
        accept="image/jpeg,image/png,image/webp"
        capture="environment"
        aria-describedby={`${id}-hint`}
        onChange={(event) => onChosen(event.target.files?.[0] ?? null)}
      />
      <span id={`${id}-hint`} className="note soft">
        {hint}
      </span>
    </div>
  );
};
