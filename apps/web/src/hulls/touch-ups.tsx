import type { PartView, TouchUpView } from '@hull-record/contracts';
import { mark, stamp } from '../marks/mark.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { UsedList } from './used.js';

/** The touch-ups of a part: many small spots in one entry, with one acceptance. */
export const TouchUps = ({ part: { touchUps, number } }: { readonly part: PartView }) => {
  const { t, kind } = useWords();
  if (touchUps.length === 0) return null;
  return (
    <>
      <h3>{t('hulls.touchUps')}</h3>
      <Table
        caption={t('hulls.touchUpsOf', { part: number })}
        columns={[
          { head: t('hulls.mark'), cell: ({ mark: own }) => own, names: true, class: 'n' },
          {
            head: t('hulls.spots'),
            cell: ({ spots }) => spots.map(({ kind: code, count }) => `${count} × ${kind(code)}`).join(', '),
          },
          {
            head: t('hulls.done'),
            cell: ({ happenedAt, doneBy, note }) => (
              <>
                <Text of="hulls.doneBy" with={{ when: <Moment at={happenedAt} />, by: doneBy.join(', ') }} />
                {note === null ? null : (
                  <p className="note">
                    <Said text={note} />
                  </p>
                )}
              </>
            ),
          },
          { head: t('hulls.lotsUsed'), cell: ({ used }) => <UsedList used={used} /> },
          { head: t('hulls.accepted'), cell: (touchUp) => <Acceptance of={touchUp} /> },
        ]}
        rows={touchUps}
      />
    </>
  );
};

const Acceptance = ({ of: { acceptance } }: { readonly of: TouchUpView }) => {
  const { t } = useWords();
  if (acceptance === null) return mark('near', t('hulls.waitsForAcceptance'));
  const who = { by: acceptance.by, at: <Moment at={acceptance.at} /> };
  return acceptance.accepted
    ? stamp(<Text of="hulls.acceptedBy" with={who} />)
    : mark('outside', <Text of="hulls.refusedBy" with={who} />);
};
