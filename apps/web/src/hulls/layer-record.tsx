import type { PartView } from '@hull-record/contracts';
import { useEffect, useRef } from 'react';
import { Folded } from '../record/folded.js';
import { LotLink } from '../record/links.js';
import { Verdicts } from '../record/verdicts.js';
import { Button } from '../ui/button.js';
import { Fold } from '../ui/fold.js';
import { Facts } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment, Span } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Readings } from './readings.js';
import { Versions } from './versions.js';

type Layer = PartView['layers'][number];

interface LayerRecordProps {
  readonly layer: Layer;
  readonly onClose: () => void;
}

/** The record of one layer, opened: how it was made, of what, what was read on it, and how it was corrected. */
export const LayerRecord = ({ layer: { scheduled, record }, onClose }: LayerRecordProps) => {
  const { t } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: 'nearest' });
  }, [scheduled.code]);
  return (
    <div className="opened">
      <div className="head">
        <h3 ref={heading} tabIndex={-1}>
          <span className="n">{scheduled.code}</span> <Said text={scheduled.name} />
        </h3>
        <Button onPress={onClose}>{t('hulls.close')}</Button>
      </div>
      {record === null ? <p>{t('hulls.notMade')}</p> : <Made record={record} scheduled={scheduled} />}
    </div>
  );
};

interface MadeProps {
  readonly record: NonNullable<Layer['record']>;
  readonly scheduled: Layer['scheduled'];
}

const Made = ({ record, scheduled }: MadeProps) => {
  const { t } = useWords();
  return (
    <>
      <Facts
        rows={[
          [t('record.when'), <Span from={record.startedAt} to={record.endedAt} />],
          [t('hulls.doneByWhom'), record.doneBy.join(', ')],
          [t('hulls.enteredBy'), record.enteredBy],
          [t('hulls.recorded'), <Moment at={record.recordedAt} />],
          [t('hulls.area'), record.area],
          [t('hulls.surface'), record.surfacePrepared === null ? null : <Said text={record.surfacePrepared} />],
          [t('record.note'), record.note === null ? null : <Said text={record.note} />],
        ]}
      />
      <UsedTable record={record} scheduled={scheduled} />
      <Readings readings={record.readings} required={scheduled.readings} drawn />
      <Verdicts verdicts={record.verdicts} />
      {record.corrected ? (
        <Fold summary={t('hulls.howCorrected')} open>
          <Versions fact={record.id} />
        </Fold>
      ) : null}
    </>
  );
};

const UsedTable = ({ record: { used }, scheduled }: MadeProps) => {
  const { t, term, amount } = useWords();
  const targets = scheduled.materials.flatMap(({ material, target }) =>
    target === undefined ? [] : [`${material} ${target.quantity} ${target.unit}`],
  );
  if (used.length === 0) return <p>{t('hulls.noneRecorded')}</p>;
  return (
    <>
      <Table
        caption={t('hulls.usedIn', { layer: scheduled.name })}
        columns={[
          { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
          {
            head: t('record.supplierLot'),
            cell: ({ supplierLots }) => (
              <Folded
                items={supplierLots.map(({ supplierLot, material }) => `${material}, ${supplierLot}`)}
                atMost={3}
                more={(count) => t('hulls.moreSupplierLots', { count })}
              />
            ),
          },
          { head: t('record.amount'), cell: ({ amount: of }) => amount(of), class: 'r' },
          { head: t('record.basis'), cell: ({ amount: { basis } }) => term(basis) },
          { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
        ]}
        rows={used}
      />
      {targets.length === 0 ? null : <p className="note soft">{t('hulls.target', { targets: targets.join(', ') })}</p>}
    </>
  );
};
