import { NobodyHere } from '../outbox/queue-entry.js';
import { useWords } from '../words/use-words.js';

/** Says that an entry was not kept on this device, and why; nothing while there is no error. */
export const NotKept = ({ error }: { readonly error: Error | null }) => {
  const { t } = useWords();
  if (error === null) return null;
  return (
    <p className="wrong" role="alert">
      {error instanceof NobodyHere ? t('bay.nobody') : t('bay.notKept')}
    </p>
  );
};
