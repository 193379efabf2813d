import type { DefectView, PartView } from '@hull-record/contracts';
import { checkPlace, placeOnMap, type Skin } from '@hull-record/trade';
import { HowSeen } from './how-seen.js';
import { DefectRing } from '../marks/defect-mark.js';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';
import { frameOf, type Frame } from './map-frame.js';
import { SkinDrawing } from './skin-drawing.js';

interface HullMapProps {
  readonly part: PartView;
  readonly skin: Skin;
  /** The id of the row that a mark leads to. */
  readonly rowId: (defect: DefectView) => string;
}

/**
 * The skin of a part unrolled flat, with its defects as numbered rings; a ring leads to its row in the list.
 *
 * The skin is drawn in millimetres and grows with the page; rings stand over it, so that they keep their size.
 */
export const HullMap = ({ part, skin, rowId }: HullMapProps) => {
  const { term } = useWords();
  const frame = frameOf(part.kind, skin);
  const spots = part.defects.filter(({ place }) => checkPlace(place, skin).length === 0);
  return (
    <figure>
      <p className="side note soft">{term('port')}</p>
      <div className="map" style={{ aspectRatio: `${frame.width} / ${frame.height}` }}>
        <SkinDrawing part={part} skin={skin} frame={frame} />
        {spots.map((defect) => (
          <Spot key={defect.id} defect={defect} frame={frame} rowId={rowId(defect)} />
        ))}
      </div>
      <p className="side note soft">{term('starboard')}</p>
      <figcaption className="note soft">
        <HowSeen skin={skin} frame={frame} />
      </figcaption>
    </figure>
  );
};

interface SpotProps {
  readonly defect: DefectView;
  readonly frame: Frame;
  readonly rowId: string;
}

const Spot = ({ defect, frame: { at, width, height }, rowId }: SpotProps) => {
  const { t, term, kind } = useWords();
  const { x, y } = at(placeOnMap(defect.place));
  return (
    <div className="spot" style={{ left: `${(100 * x) / width}%`, top: `${(100 * y) / height}%` }}>
      <Button
        className="spot-button"
        label={t('map.spot', { mark: defect.mark, kind: kind(defect.kind), state: term(defect.state) })}
        onPress={() => document.getElementById(rowId)?.focus()}
      >
        <DefectRing state={defect.state} />
        <span>{defect.mark}</span>
      </Button>
    </div>
  );
};
