import type { MapPoint } from '@hull-record/trade';
import { Button } from '../ui/button.js';
import { useWords } from '../words/use-words.js';

interface MapPadProps {
  /** How far one press moves the mark, mm. */
  readonly step: number;
  readonly onStep: (step: number) => void;
  readonly onMove: (way: MapPoint) => void;
  readonly onZoom: (by: number) => void;
}

const WAYS = [
  ['up', { x: 0, y: -1 }, 'M0 -9L8 6H-8Z'],
  ['left', { x: -1, y: 0 }, 'M-9 0L6 -8V8Z'],
  ['right', { x: 1, y: 0 }, 'M9 0L-6 -8V8Z'],
  ['down', { x: 0, y: 1 }, 'M0 9L8 -6H-8Z'],
] as const;

/** Moves the mark step by step and brings the loupe nearer: large keys, for gloves. */
export const MapPad = ({ step, onStep, onMove, onZoom }: MapPadProps) => {
  const { t } = useWords();
  return (
    <div className="map-pad">
      <div className="nudge" role="group" aria-label={t('map.nudge')}>
        {WAYS.map(([name, way, d]) => (
          <Button
            key={name}
            className={`btn ${name}`}
            label={t(`map.move.${name}`, { step })}
            onPress={() => onMove(way)}
          >
            <svg width="22" height="22" viewBox="-11 -11 22 22" className="arrow" aria-hidden="true">
              <path d={d} />
            </svg>
          </Button>
        ))}
        <Button
          className="btn step n"
          label={t('map.step', { step })}
          onPress={() => onStep(step === 10 ? 100 : step === 100 ? 1 : 10)}
        >
          {t('map.mm', { mm: step })}
        </Button>
      </div>
      <div className="zoom" role="group" aria-label={t('map.zoom')}>
        <Button label={t('map.nearer')} onPress={() => onZoom(2)}>
          +
        </Button>
        <Button label={t('map.further')} onPress={() => onZoom(0.5)}>
          −
        </Button>
      </div>
    </div>
  );
};
