import { useQuery } from '@tanstack/react-query';
import type { LookView } from '@hull-record/contracts';
import { lookAgainQuery } from '../api/queries-of-cases.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { Facts } from '../ui/page.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What a look rests on, by its digests, and whether it comes out again from what was kept. */
export const LookAgain = ({ view }: { readonly view: LookView }) => {
  const { t } = useWords();
  const query = useQuery(lookAgainQuery(view.case, String(view.look)));
  const asked = query.isFetching || query.data !== undefined || query.error !== null;
  return (
    <div className="again">
      <h3>{t('cases.again')}</h3>
      <Facts
        rows={[
          [t('cases.inputs'), <span className="n hash">{view.inputsSha256 ?? '–'}</span>],
          [t('cases.answerHash'), <span className="n hash">{view.answerSha256 ?? '–'}</span>],
          [t('cases.settingsHash'), <span className="n hash">{view.frozen.sha256}</span>],
        ]}
      />
      <Allowed to="computeLookAgain" what={t('cases.again')}>
        <p className="more">
          <Button onPress={() => void query.refetch()} busy={query.isFetching}>
            {t('cases.againDo')}
          </Button>
        </p>
        {asked ? (
          <Answer what={t('cases.answerAgain')} query={query}>
            {({ same, says, answerSha256 }) => (
              <p role="status">
                {mark(same ? 'inside' : 'outside', <Said text={says} />)}{' '}
                <span className="n hash note">{answerSha256}</span>
              </p>
            )}
          </Answer>
        ) : null}
      </Allowed>
    </div>
  );
};
