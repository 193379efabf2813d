import type { ScheduleView } from '@hull-record/contracts';
import type { Draft } from '../../entry/draft/use-draft.js';
import { mark } from '../../marks/mark.js';
import { useWords } from '../../words/use-words.js';
import type { ScheduleDraft } from './schedule-draft.js';

interface KeptDraftProps {
  readonly draft: Draft<ScheduleDraft>;
  readonly newest: ScheduleView | undefined;
}

/** Says that a draft was begun before, and whether another version was published since. */
export const KeptDraft = ({ draft: { isKept, value }, newest }: KeptDraftProps) => {
  const { t } = useWords();
  const now = newest?.version ?? 0;
  if (!isKept) return null;
  if (now === value.basedOn) return <p>{mark('to come', t('models.isKept'))}</p>;
  return <p role="status">{mark('near', t('schedule.newer', { newest: now, before: value.basedOn }))}</p>;
};
