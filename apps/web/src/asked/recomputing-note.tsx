import type { Recomputing } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { Moment } from '../words/moments.js';
import { Text } from '../words/text.js';

interface RecomputingNoteProps {
  readonly of: Recomputing | null | undefined;
}

/** Says above figures that they are being worked out anew; nothing while they are up to date. */
export const RecomputingNote = ({ of }: RecomputingNoteProps): ReactNode =>
  of ? (
    <p role="status">
      <Text
        of="app.recomputing"
        with={{
          b: (inside) => <b>{inside}</b>,
          count: of.recomputations.length,
          since: <Moment at={of.since} />,
        }}
      />
    </p>
  ) : null;
