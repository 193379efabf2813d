import type { TouchUpView } from '@hull-record/contracts';
import { Facts } from '../../ui/page.js';
import { Moment } from '../../words/moments.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { UsedLines } from './used-lines.js';

/** Touch-ups as they were entered: how many of which kind in which zone. */
export const TouchUpDone = ({
  touchUp: { spots, doneBy, used, note, happenedAt },
}: {
  readonly touchUp: TouchUpView;
}) => {
  const { t, kind, term, figure } = useWords();
  return (
    <>
      <ul className="plain found">
        {spots.map(({ zone, kind: code, count, largestMm }, i) => (
          <li key={i}>
            <b className="n">{count}</b> × {kind(code)}, {term(zone)}
            {largestMm === undefined ? null : `, ${t('bay.upTo', { mm: figure(largestMm, 4) })}`}
          </li>
        ))}
      </ul>
      <Facts
        rows={[
          [t('bay.doneBy'), doneBy.join(', ')],
          [t('record.when'), <Moment at={happenedAt} />],
          [t('bay.note'), note === null ? null : <Said text={note} />],
        ]}
      />
      <UsedLines used={used} />
    </>
  );
};
