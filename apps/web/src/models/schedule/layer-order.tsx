import { useDraftFields } from '../../entry/draft/draft-context.js';
import { Group } from '../../ui/group.js';
import { Tick } from '../../ui/tick.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import type { LayerDraft } from './schedule-draft.js';

interface LayerOrderProps {
  readonly index: number;
  readonly layers: readonly LayerDraft[];
}

/** Which layers are made before one: those above it; one that stands below and is named all the same is shown, to be taken out. */
export const LayerOrder = ({ index, layers }: LayerOrderProps) => {
  const { t } = useWords();
  const fields = useDraftFields();
  const at = `/layers/${index}/predecessors`;
  const chosen = layers[index]?.predecessors ?? [];
  const offered = layers.filter(({ key }, i) => i < index || chosen.includes(key));
  const wrong = fields.wrongAt(at);
  const put = (key: string, on: boolean): void =>
    fields.put(
      at,
      layers.map((layer) => layer.key).filter((each) => (each === key ? on : chosen.includes(each))),
    );
  return (
    <Group name={t('schedule.predecessors')}>
      {offered.length === 0 ? <p>{t('schedule.noLayersAbove')}</p> : null}
      {offered.map(({ key, code, name }) => (
        <Tick
          key={key}
          name={at}
          label={`${code.trim() || t('schedule.unnamed')} ${name}`}
          on={chosen.includes(key)}
          onChange={(on) => put(key, on)}
        />
      ))}
      {wrong === undefined ? null : (
        <p className="note wrong wide">
          <Said text={wrong} />
        </p>
      )}
    </Group>
  );
};
