import type { ReactNode } from 'react';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { Moment } from '../words/moments.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface StaleProps {
  /** When the figures below were read, ms since 1970. */
  readonly since: number;
  readonly again: () => void;
  readonly busy: boolean;
}

/** Says above figures that they were read a while ago and could not be read anew. */
export const Stale = ({ since, again, busy }: StaleProps): ReactNode => {
  const { t } = useWords();
  return (
    <div className="trouble near" role="status">
      <p>{mark('near', <Text of="app.stale" with={{ at: <Moment at={new Date(since).toISOString()} /> }} />)}</p>
      <Button onPress={again} busy={busy}>
        {t('app.again')}
      </Button>
    </div>
  );
};
