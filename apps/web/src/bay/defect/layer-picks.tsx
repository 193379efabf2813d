import type { MaterialView, PartView } from '@hull-record/contracts';
import { layerHatch } from '../../marks/layer-hatch.js';
import { Picks } from '../../ui/picks.js';
import { useWords } from '../../words/use-words.js';

interface LayerPicksProps {
  readonly part: PartView;
  readonly materials: readonly MaterialView[];
  readonly layer: string;
  readonly onLayer: (layer: string) => void;
}

const UNKNOWN = '-';

/** The layer a defect lies in, outside in, each by its hatch; or none when nobody can tell. */
export const LayerPicks = ({ part: { layers }, materials, layer, onLayer }: LayerPicksProps) => {
  const { t } = useWords();
  return (
    <Picks
      label={t('bay.layer')}
      className="layers"
      value={layer === '' ? UNKNOWN : layer}
      picks={[
        ...layers.map(({ scheduled }) => ({
          value: scheduled.code,
          words: `${scheduled.code} ${scheduled.name}`,
          drawing: (
            <svg width="42" height="32" aria-hidden="true">
              <rect className="swatch" width="42" height="32" fill={`url(#h-${layerHatch(scheduled, materials)})`} />
            </svg>
          ),
        })),
        { value: UNKNOWN, words: t('bay.layerUnknown') },
      ]}
      onPick={(code) => onLayer(code === UNKNOWN ? '' : code)}
    />
  );
};
