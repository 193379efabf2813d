import type { ReactNode } from 'react';
import { mark } from '../marks/mark.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface FoundProps {
  /** What was recorded, in words. */
  readonly words: ReactNode;
  readonly of: {
    readonly result: {
      readonly nonconformities?: readonly { readonly id: string; readonly detail: string }[];
      readonly warnings?: readonly string[];
    };
  };
}

/** Says that something is recorded, with what does not fit a rule: it is kept as it happened, and waits for quality. */
export const Found = ({ words, of: { result } }: FoundProps) => {
  const { t } = useWords();
  const { nonconformities = [], warnings = [] } = result;
  return (
    <>
      <p className="verdict">{mark('made', words)}</p>
      {nonconformities.length + warnings.length === 0 ? null : (
        <>
          <p>{nonconformities.length === 0 ? t('entry.warned') : t('entry.found')}</p>
          <ul className="plain">
            {nonconformities.map(({ id, detail }) => (
              <li key={id}>{mark('outside', <Said text={detail} />)}</li>
            ))}
            {warnings.map((warning) => (
              <li key={warning}>{mark('near', <Said text={warning} />)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};
