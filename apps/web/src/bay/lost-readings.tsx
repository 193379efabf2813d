import { useMutation } from '@tanstack/react-query';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

/** Readings that found no room on this device when what they are of was kept; `keep` tries again and says whether it did. */
export interface Lost {
  readonly readings: string;
  readonly keep: () => Promise<boolean>;
}

/** Says that readings were not kept while their entry was, and tries again when a person made room. */
export const LostReadings = ({ of: { readings, keep } }: { readonly of: Lost }) => {
  const { t } = useWords();
  const keeping = useMutation({ networkMode: 'always', mutationFn: keep });
  if (keeping.data === true) return <p role="status">{t('bay.readingsKept')}</p>;
  return (
    <div className="wrong" role="alert">
      <p>{t('bay.readingsLost', { readings })}</p>
      <Button busy={keeping.isPending} onPress={() => keeping.mutate()}>
        {t('bay.readingsAgain')}
      </Button>
    </div>
  );
};
