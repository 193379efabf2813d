import type { Day, NowLayer, NowPart } from '../day/now.js';
import { layerHatch } from '../marks/layer-hatch.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface LayerBandsProps {
  readonly part: NowPart;
  readonly current: string;
  readonly materials: Day['materials'];
}

/** The laminate of a part as a section, outside first: made layers in full, the current one framed, others to come. */
export const LayerBands = ({ part, current, materials }: LayerBandsProps) => {
  const { t } = useWords();
  return (
    <figure className="st-section">
      <ol aria-label={t('lay.section', { part: part.number })}>
        {part.layers.map((layer) => (
          <li
            key={layer.scheduled.code}
            className={layer.scheduled.code === current ? 'st-band st-band-now' : 'st-band'}
            aria-current={layer.scheduled.code === current ? 'step' : undefined}
          >
            <svg aria-hidden="true" className={layer.record === null ? 'later' : 'full'}>
              <rect width="100%" height="100%" fill={`url(#h-${layerHatch(layer.scheduled, materials)})`} />
              <rect className="edge" width="100%" height="100%" />
            </svg>
            <span className="n b">{layer.scheduled.code}</span>
            <span>
              <Said text={layer.scheduled.name} />
            </span>
            <span className="soft">{t(`lay.state.${stateOf(layer)}`)}</span>
          </li>
        ))}
      </ol>
      <figcaption className="soft">{t('lay.notToScale')}</figcaption>
    </figure>
  );
};

const stateOf = ({
  record,
  scheduled: { holdPoint },
}: NowLayer): 'toCome' | 'made' | 'waits' | 'unsigned' | 'signed' => {
  if (record === null) return 'toCome';
  if (record.waits) return 'waits';
  if (holdPoint === undefined) return 'made';
  return record.signature === null ? 'unsigned' : 'signed';
};
