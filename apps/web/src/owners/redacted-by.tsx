import type { Redactable } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const STATES = {
  erased: 'owners.isErasedOriginal',
  'kept apart': 'owners.isKeptOriginal',
  'in the journal': 'owners.isInJournal',
} as const;

/** When, by whom and why something was redacted, and where its original is. */
export const RedactedBy = ({ act }: { readonly act: Redactable['photos'][number]['redacted'] }) => {
  const { t } = useWords();
  if (act === null) return null;
  return (
    <p>
      {mark('made', t('owners.redactedBy', { by: act.by }))} <Day at={act.at} />. {t(STATES[act.original])}{' '}
      {t('owners.redactedWhy')} <Said text={act.reason} />
    </p>
  );
};
