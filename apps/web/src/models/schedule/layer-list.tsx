import type { MaterialView } from '@hull-record/contracts';
import { useState } from 'react';
import { useDraftFields } from '../../entry/draft/draft-context.js';
import { layerHatch } from '../../marks/layer-hatch.js';
import { mark } from '../../marks/mark.js';
import { LaminateBand } from '../../record/laminate-band.js';
import { ScheduledWords } from '../../record/scheduled-words.js';
import { Button } from '../../ui/button.js';
import { useWords } from '../../words/use-words.js';
import { added, dropped, moved } from './rearrange.js';
import { layerBody, named, type LayerDraft } from './schedule-draft.js';
import { demandOfDraft } from './view-of.js';

interface LayerListProps {
  readonly layers: readonly LayerDraft[];
  readonly materials: readonly MaterialView[];
  readonly open: number;
  /** `isAsked`: a person wants to edit it, and not to move it. */
  readonly onOpen: (index: number, isAsked: boolean) => void;
}

/** The layers that are being entered as a section, outside in: each is opened, moved, taken away, or another put after it. */
export const LayerList = ({ layers, materials, open, onOpen }: LayerListProps) => {
  const { t } = useWords();
  const fields = useDraftFields();
  const [gone, setGone] = useState<{ readonly name: string; readonly before: readonly LayerDraft[] } | null>(null);
  const put = (next: readonly LayerDraft[], opened: number, isAsked = false): void => {
    fields.put('/layers', next);
    setGone(null);
    onOpen(opened, isAsked);
  };
  const drop = (at: number): void => {
    put(dropped(layers, at), Math.max(0, Math.min(open, layers.length - 2)));
    setGone({ name: nameOf(layers[at], t('schedule.unnamed')), before: layers });
  };
  return (
    <div className="layer-list">
      <h3>{t('schedule.layers')}</h3>
      <ol>
        {layers.map((layer, i) => (
          <LayerRow
            key={layer.key}
            {...{ layer, layers, materials }}
            isOpen={i === open}
            wrong={fields.wrongBelow(`/layers/${i}`)}
            onOpen={() => onOpen(i, true)}
            onUp={i === 0 ? undefined : () => put(moved(layers, i, -1), i - 1)}
            onDown={i === layers.length - 1 ? undefined : () => put(moved(layers, i, 1), i + 1)}
            onAdd={() => put(added(layers, i), i + 1, true)}
            onDrop={layers.length === 1 ? undefined : () => drop(i)}
          />
        ))}
      </ol>
      {gone === null ? null : (
        <div role="status">
          <p>{t('schedule.dropped', { layer: gone.name })}</p>
          <Button onPress={() => put(gone.before, open)}>{t('schedule.undo')}</Button>
        </div>
      )}
    </div>
  );
};

const nameOf = (layer: LayerDraft | undefined, unnamed: string): string => layer?.code.trim() || unnamed;

interface LayerRowProps {
  readonly layer: LayerDraft;
  readonly layers: readonly LayerDraft[];
  readonly materials: readonly MaterialView[];
  readonly isOpen: boolean;
  /** How many of its fields are wrong. */
  readonly wrong: number;
  readonly onOpen: () => void;
  readonly onUp: (() => void) | undefined;
  readonly onDown: (() => void) | undefined;
  readonly onAdd: () => void;
  readonly onDrop: (() => void) | undefined;
}

const LayerRow = ({ layer, layers, materials, isOpen, wrong, ...acts }: LayerRowProps) => {
  const { t } = useWords();
  const unnamed = t('schedule.unnamed');
  const body = layerBody(layer, named(layers, unnamed));
  const { plies = [], zone = 'whole part', predecessors = [] } = body;
  const name = nameOf(layer, unnamed);
  const hatch = layerHatch({ ...body, plies }, materials);
  const isEnd = layers.at(-1) !== layer && !layers.some((other) => other.predecessors.includes(layer.key));
  return (
    <li className={isOpen ? 'opened-layer' : undefined}>
      <div className="band">
        <LaminateBand
          hatch={hatch}
          words={t('models.band', { layer: name, hatch: t(`hatch.${hatch}`) })}
          isOpened={isOpen}
        />
      </div>
      <div>
        <ScheduledWords
          layer={{ code: name, name: body.name, plies, zone }}
          demand={demandOfDraft(layer)}
          isBold={isOpen}
        />
        <p className="note soft">
          {predecessors.length === 0 ? t('models.first') : t('models.after', { layers: predecessors.join(', ') })}
        </p>
        {isEnd ? <p className="note">{mark('near', t('schedule.end'))}</p> : null}
        {wrong === 0 ? null : <p>{mark('outside', t('schedule.wrongHere', { count: wrong }))}</p>}
        <div className="buttons">
          <LayerButton sign={t('schedule.edit')} words={t('schedule.open', { layer: name })} act={acts.onOpen} />
          <LayerButton sign="↑" words={t('schedule.up', { layer: name })} act={acts.onUp} />
          <LayerButton sign="↓" words={t('schedule.down', { layer: name })} act={acts.onDown} />
          <LayerButton sign="+" words={t('schedule.add', { layer: name })} act={acts.onAdd} />
          <LayerButton sign="×" words={t('schedule.drop', { layer: name })} act={acts.onDrop} />
        </div>
      </div>
    </li>
  );
};

interface LayerButtonProps {
  readonly sign: string;
  readonly words: string;
  readonly act: (() => void) | undefined;
}

const LayerButton = ({ sign, words, act }: LayerButtonProps) => (
  <Button label={words} disabled={act === undefined} {...(act === undefined ? {} : { onPress: act })}>
    {sign}
  </Button>
);
