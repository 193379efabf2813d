import type { ScheduleView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Table } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { changesBetween, type LayerChange } from './changes.js';
import { useLayerWords } from './use-layer-words.js';

interface ChangesShownProps {
  readonly before: ScheduleView;
  readonly now: ScheduleView;
}

/** A line of the table: one field of a layer, or a layer that came or went. */
interface Line {
  readonly layer: string;
  readonly what: string;
  readonly before: readonly string[];
  readonly now: readonly string[];
  readonly isWhole: boolean;
}

/** What differs between a version of a schedule and the one before: layer by layer, each field before and now. */
export const ChangesShown = ({ before, now }: ChangesShownProps) => {
  const { t, term } = useWords();
  const say = useLayerWords();
  const { process, layers, order } = changesBetween(before, now);
  const lines = layers.flatMap((change) => linesOf(change));
  function linesOf(change: LayerChange): readonly Line[] {
    const { layer } = change;
    const name = `${layer.code} ${layer.name}`;
    if (change.kind === 'changed')
      return change.fields.map((field) => ({
        ...{ layer: name, what: t(`models.field.${field}`), isWhole: false },
        ...{ before: say(field, change.before), now: say(field, layer) },
      }));
    const words = [...say('materials', layer), ...say('plies', layer)];
    const isNew = change.kind === 'added';
    const what = t(isNew ? 'models.layerAdded' : 'models.layerRemoved', { layer: layer.code });
    return [{ layer: name, what, before: isNew ? [] : words, now: isNew ? words : [], isWhole: true }];
  }
  if (process === null && order === null && lines.length === 0)
    return <p>{t('models.nothingDiffers', { version: before.version })}</p>;
  return (
    <>
      {process === null ? null : (
        <p>{t('models.processDiffers', { before: term(process[0]), now: term(process[1]) })}</p>
      )}
      {order === null ? null : (
        <p>{t('models.orderDiffers', { before: order[0].join(', '), now: order[1].join(', ') })}</p>
      )}
      {lines.length === 0 ? null : (
        <Table
          caption={t('models.changesCaption', { version: before.version })}
          columns={[
            { head: t('record.layer'), cell: ({ layer }) => layer, names: true },
            { head: t('models.what'), cell: ({ what, isWhole }) => (isWhole ? mark('near', what) : what) },
            {
              head: t('models.now', { version: before.version }),
              cell: (line) => <Items of={line.before} />,
            },
            { head: t('models.now', { version: now.version }), cell: (line) => <Items of={line.now} /> },
          ]}
          rows={lines}
        />
      )}
    </>
  );
};

const Items = ({ of }: { readonly of: readonly string[] }) => {
  const { t } = useWords();
  if (of.length === 0) return <span className="soft">{t('models.nothing')}</span>;
  return (
    <ul className="plain close">
      {of.map((words, i) => (
        <li key={i}>{words}</li>
      ))}
    </ul>
  );
};
