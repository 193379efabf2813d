import type { Redactable } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Day } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { RedactedBy } from './redacted-by.js';

type Text = Redactable['texts'][number];

interface RedactableTextProps {
  readonly text: Text;
  /** Something keeps originals of this hull. */
  readonly kept: boolean;
}

/** A text as it is shown, what became of its original, and the form that gives it another wording. */
export const RedactableText = ({ text, kept }: RedactableTextProps) => {
  const { t } = useWords();
  const name = `${t(KINDS[text.kind])} ${text.mark}`;
  const form = text.redacted === null ? t('owners.redact') : t('owners.redactAgain');
  return (
    <li>
      <h3>
        {t(KINDS[text.kind])} <Term word={text.mark} />
      </h3>
      <p className="soft">
        <Day at={text.at} />
      </p>
      <p>
        <Said text={text.text} />
      </p>
      <RedactedBy act={text.redacted} />
      {text.original === null || !text.erasable ? null : (
        <Fold summary={t('owners.keptApartText')}>
          <p>
            <Said text={text.original} />
          </p>
        </Fold>
      )}
      {text.erasable ? null : <p className="note">{t('owners.inTheJournal')}</p>}
      <Fold summary={`${form}: ${name}`}>
        <RecordForm
          groups={[
            {
              fields: [
                { name: 'wording', label: t('owners.wording'), hint: t('owners.wordingIs'), kind: 'lines' },
                { name: 'reason', label: t('owners.why'), hint: t('owners.noNames'), kind: 'words' },
              ],
            },
          ]}
          button={form}
          sure={() => (kept || !text.erasable ? '' : t('owners.sure'))}
          send={(said, envelope) => {
            const { kind, of } = text;
            return post(
              '/api/text-redactions',
              {},
              { ...envelope, kind, of, wording: said('wording'), reason: said('reason') },
            );
          }}
          done={({ result: { original } }) => <p>{t(ORIGINALS[original])}</p>}
        />
      </Fold>
    </li>
  );
};

const KINDS = {
  claim: 'owners.textOfClaim',
  'claim decision': 'owners.textOfDecision',
  'claim mark': 'owners.textOfMark',
  defect: 'owners.textOfDefect',
  repair: 'owners.textOfRepair',
  'life fact': 'owners.textOfLife',
} as const;

const ORIGINALS = {
  erased: 'owners.redactedErased',
  'kept apart': 'owners.redactedKept',
  'in the journal': 'owners.redactedInJournal',
} as const;
