import type { RepairView } from '@hull-record/contracts';
import { Fragment } from 'react';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface ElsewhereProps {
  readonly repair: RepairView;
  readonly of: NonNullable<RepairView['outside']>;
}

/** A repair that nobody of the plant did or saw: where it was done, and from whom that is known. */
export const Elsewhere = ({ repair, of }: ElsewhereProps) => {
  const { t } = useWords();
  const { happenedAt, reportedBy, note } = repair;
  return (
    <>
      <Text of="hulls.doneElsewhere" with={{ at: of.at, by: of.toldBy, when: <Moment at={happenedAt} /> }} />
      {reportedBy === null ? null : `. ${t('hulls.reportedByDealer', { dealer: reportedBy })}`}
      {(
        [
          ['hulls.outsideDone', of.when],
          ['hulls.outsideMaterial', of.material],
          ['hulls.outsideEvidence', of.evidence],
          ['hulls.outsideNote', note ?? undefined],
        ] as const
      ).map(([label, said]) =>
        said === undefined ? null : (
          <Fragment key={label}>
            . {t(label)}: <Said text={said} />
          </Fragment>
        ),
      )}
    </>
  );
};
