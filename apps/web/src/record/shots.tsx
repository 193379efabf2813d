import { Redacted } from './redacted.js';
import { useWords } from '../words/use-words.js';

interface ShotsProps {
  readonly photos: readonly { readonly id: string; readonly redactedOn: string | null }[];
}

/** Photos of a defect as the service shows them, without their metadata; each leads to itself, larger. */
export const Shots = ({ photos }: ShotsProps) => {
  const { t } = useWords();
  if (photos.length === 0) return null;
  return (
    <ul className="plain shots large">
      {photos.map(({ id, redactedOn }, i) => {
        const address = `/api/photos/${encodeURIComponent(id)}`;
        return (
          <li key={id}>
            <a href={address}>
              <img className="shot" src={address} alt={t('record.photo', { number: i + 1 })} loading="lazy" />
            </a>
            {redactedOn === null ? null : <Redacted on={redactedOn} />}
          </li>
        );
      })}
    </ul>
  );
};
