import type { ClaimView, MarkClaim as Sent } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { FOUND_BY } from './found-by.js';

/** How a claim came to light. What a hold or a notice prompted is kept, and not compared. */
export const HowFound = ({ claim }: { readonly claim: ClaimView }) => {
  const { t, term } = useWords();
  return (
    <>
      <p>
        <b>{term(claim.foundBy)}</b>. {claim.prompted ? t('claims.promptedWhy') : t('claims.unpromptedWhy')}{' '}
        {claim.foundByReason === null ? null : <Said text={claim.foundByReason} />}
      </p>
      <Fold summary={t('claims.mark')}>
        <Allowed to="markClaim" what={t('claims.mark')}>
          <RecordForm
            groups={[
              {
                fields: [
                  {
                    name: 'foundBy',
                    label: t('claims.foundBy'),
                    kind: 'choice',
                    options: FOUND_BY.map((each) => [each, term(each)]),
                  },
                  { name: 'reason', label: t('record.reason'), kind: 'words' },
                ],
              },
            ]}
            button={t('claims.markDo')}
            send={(said, envelope) =>
              post(
                '/api/claims/:claim/marks',
                { claim: claim.id },
                { ...envelope, foundBy: said('foundBy') as Sent['foundBy'], reason: said('reason') },
              )
            }
            done={({ result }) => (
              <Found
                of={{ result: {} }}
                words={result.prompted ? t('claims.markedPrompted') : t('claims.markedUnprompted')}
              />
            )}
          />
        </Allowed>
      </Fold>
    </>
  );
};
