import { CalendarDay } from '../words/moments.js';
import { useWords } from '../words/use-words.js';

/** Says that areas of a photo were blacked out, and when. */
export const Redacted = ({ on }: { readonly on: string }) => {
  const { t } = useWords();
  return (
    <span className="note">
      {' '}
      {t('record.redacted')} <CalendarDay at={on} />
    </span>
  );
};
