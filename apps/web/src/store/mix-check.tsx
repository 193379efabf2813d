import { useMutation } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import type { PostBody } from '../api/contract.js';
import { useEnvelope } from '../entry/use-envelope.js';
import { mark } from '../marks/mark.js';
import { Trouble } from '../asked/trouble.js';
import { Button } from '../ui/button.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type MixCheckProps = Pick<PostBody<'/api/mixes/check'>, 'code' | 'inputs'>;

/** Asks what would be wrong with a bucket before it is mixed; nothing is recorded. */
export const MixCheck = ({ code, inputs }: MixCheckProps) => {
  const { t } = useWords();
  const envelopes = useEnvelope();
  const asking = useMutation({
    mutationFn: (body: MixCheckProps) =>
      post('/api/mixes/check', {}, { ...envelopes.of(JSON.stringify(body), ''), ...body }),
  });
  const asked = JSON.stringify({ code, inputs });
  const ofThis = asking.variables !== undefined && JSON.stringify(asking.variables) === asked;
  const check = (): void => asking.mutate({ code, inputs });
  return (
    <div className="wide">
      <Button onPress={check} busy={asking.isPending}>
        {t('store.check')}
      </Button>
      {asking.error && ofThis ? <Trouble what={t('store.theCheck')} error={asking.error} again={check} /> : null}
      {asking.data && ofThis ? (
        <div role="status">
          {asking.data.stops.length === 0 ? mark('inside', t('store.checkFine')) : null}
          <ul className="plain">
            {asking.data.stops.map(({ rule, detail, remedy }) => (
              <li key={`${rule} ${detail}`}>
                {mark(
                  'stopped',
                  <>
                    <b>{t('store.stop')}</b> <Said text={`${detail} ${remedy}`} />
                  </>,
                )}
              </li>
            ))}
            {asking.data.warnings.map((warning) => (
              <li key={warning}>{mark('near', <Said text={warning} />)}</li>
            ))}
          </ul>
        </div>
      ) : null}
    </div>
  );
};
