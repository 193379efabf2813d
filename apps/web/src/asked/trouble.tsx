import type { ReactNode } from 'react';
import { fieldErrors, Refused, Unreachable } from '../api/problem.js';
import { Button } from '../ui/button.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface TroubleProps {
  /** What was asked for. */
  readonly what: string;
  readonly error: unknown;
  readonly again: () => void;
}

/** Says what went wrong, to what, and what to do, with a way to ask again. */
export const Trouble = ({ what, error, again }: TroubleProps) => {
  const { t } = useWords();
  return (
    <div className="trouble" role="alert">
      <p>
        <b>{t('app.notRead', { what })}</b>
      </p>
      <Reasons error={error} />
      <Button onPress={again}>{t('app.again')}</Button>
    </div>
  );
};

/** What went wrong, in plain words: the service's own when it refused for a reason. */
const Reasons = ({ error }: { readonly error: unknown }): ReactNode => {
  if (error instanceof Unreachable)
    return (
      <p>
        <Text of="app.unreachable" />
      </p>
    );
  if (!(error instanceof Refused))
    return (
      <p>
        <Text of="app.notShown" />
      </p>
    );
  if (error.status >= 500)
    return (
      <p>
        <Text of="app.failed" with={{ status: error.status }} />
      </p>
    );
  const wrong = fieldErrors(error);
  if (wrong.length > 0)
    return (
      <ul className="plain">
        {wrong.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>
            <Said text={detail} />
          </li>
        ))}
      </ul>
    );
  if (error.message === '')
    return (
      <p>
        <Text of="app.refused" with={{ status: error.status }} />
      </p>
    );
  return (
    <p>
      <Said text={error.message} />
    </p>
  );
};
