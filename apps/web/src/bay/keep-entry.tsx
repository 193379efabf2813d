import type { UseMutationResult } from '@tanstack/react-query';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';
import type { KeptEntry } from './entry-page.js';
import { NotKept } from './not-kept.js';

interface KeepEntryProps {
  /** What has to be entered first, in words. */
  readonly missing: readonly string[];
  readonly keeping: UseMutationResult<KeptEntry, Error, void>;
  readonly children: string;
}

/** The foot of a form of the bay: what is missing still, why it was not kept, and the button that keeps it. */
export const KeepEntry = ({ missing, keeping, children }: KeepEntryProps) => {
  const { t } = useWords();
  return (
    <>
      {missing.length === 0 ? null : <p className="soft">{t('bay.missing', { what: missing.join(', ') })}</p>}
      <NotKept error={keeping.error} />
      <Button
        className="btn go"
        busy={keeping.isPending}
        disabled={missing.length > 0}
        onPress={() => keeping.mutate()}
      >
        {children}
      </Button>
    </>
  );
};
