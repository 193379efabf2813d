import type { ReactNode } from 'react';
import { Refused, Unreachable } from '../api/problem.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import type { EntryField, Wrong } from './entry-field.js';

interface NotRecordedProps {
  readonly error: Error | null;
  readonly wrong: Wrong;
  readonly labels: readonly EntryField[];
  /** The page found it and says it in the language of the person; what the service says is English. */
  readonly isOwn?: boolean;
}

/** Says that nothing was recorded and why: which fields are wrong, or what the service said, or that it was not reached. */
export const NotRecorded = ({ error, wrong, labels, isOwn = false }: NotRecordedProps): ReactNode => {
  const { t } = useWords();
  if (error === null) return null;
  const named = labels.filter(({ name }) => wrong.at[name] !== undefined);
  return (
    <div className="trouble" role="alert">
      <p>
        <b>{t('entry.notRecorded')}</b>
      </p>
      <ul className="plain">
        {named.map(({ name, label }) => (
          <li key={name}>
            {label}: {isOwn ? wrong.at[name] : <Said text={wrong.at[name] ?? ''} />}
          </li>
        ))}
        {wrong.elsewhere.map((detail) => (
          <li key={detail}>
            <Said text={detail} />
          </li>
        ))}
        {named.length + wrong.elsewhere.length === 0 ? <li>{whyOf(error, t)}</li> : null}
      </ul>
      <p className="note">{t('entry.kept')}</p>
    </div>
  );
};

const whyOf = (error: Error, t: ReturnType<typeof useWords>['t']): ReactNode => {
  if (error instanceof Unreachable) return t('entry.unreachable');
  if (!(error instanceof Refused)) return t('app.notShown');
  if (error.status >= 500) return t('app.failed', { status: error.status });
  return error.message === '' ? t('app.refused', { status: error.status }) : <Said text={error.message} />;
};
