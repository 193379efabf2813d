import { useState, type PointerEvent } from 'react';
import type { Area } from '@hull-record/contracts';
import { Button } from '../ui/button.js';
import { Fold } from '../ui/fold.js';
import { Group } from '../ui/group.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface AreaPickerProps {
  readonly photo: {
    readonly address: string;
    readonly name: string;
    readonly width: number;
    readonly height: number;
  };
  readonly areas: readonly Area[];
  readonly onAreas: (areas: readonly Area[]) => void;
}

interface Point {
  readonly x: number;
  readonly y: number;
}

/** An area smaller than this, in fractions of the picture, was a touch and no drag. */
const LEAST = 0.01;

/** A photo on which areas are drawn by dragging, or given in figures. */
export const AreaPicker = ({ photo, areas, onAreas }: AreaPickerProps) => {
  const { t } = useWords();
  const [from, setFrom] = useState<Point | null>(null);
  const [to, setTo] = useState<Point | null>(null);
  const drawn = from === null || to === null ? null : between(from, to);
  const end = (): void => {
    if (drawn !== null && drawn.width >= LEAST && drawn.height >= LEAST) onAreas([...areas, drawn]);
    setFrom(null);
    setTo(null);
  };
  return (
    <>
      <div
        className="area-picker"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          setFrom(pointOf(event));
          setTo(null);
        }}
        onPointerMove={(event) => (from === null ? undefined : setTo(pointOf(event)))}
        onPointerUp={end}
        onPointerCancel={() => setFrom(null)}
      >
        <img src={photo.address} alt={photo.name} width={photo.width} height={photo.height} draggable={false} />
        {[...areas, ...(drawn === null ? [] : [drawn])].map((area, i) => (
          <span key={i} className="blacked" style={styleOf(area)} />
        ))}
      </div>
      <ol className="plain areas">
        {areas.map((area, i) => (
          <li key={i}>
            {t('owners.areaAt', percentOf(area))}{' '}
            <Button
              label={t('owners.removeArea', { number: i + 1 })}
              onPress={() => onAreas(areas.filter((_, other) => other !== i))}
            >
              {t('owners.remove')}
            </Button>
          </li>
        ))}
      </ol>
      <InFigures onArea={(area) => onAreas([...areas, area])} />
    </>
  );
};

const NOTHING = { left: '', top: '', wide: '', high: '' };
const SIDES = [
  ['left', 'owners.fromLeft'],
  ['top', 'owners.fromTop'],
  ['wide', 'owners.wide'],
  ['high', 'owners.high'],
] as const;

const InFigures = ({ onArea }: { readonly onArea: (area: Area) => void }) => {
  const { t } = useWords();
  const [typed, setTyped] = useState(NOTHING);
  const area = areaOf(typed);
  return (
    <Fold summary={t('owners.inFigures')}>
      <Group name={t('owners.areaInPercent')}>
        {SIDES.map(([side, label]) => (
          <TextField
            key={side}
            kind="percent"
            label={t(label)}
            value={typed[side]}
            onChange={(value) => setTyped((before) => ({ ...before, [side]: value }))}
          />
        ))}
      </Group>
      <Button
        disabled={area === null}
        onPress={() => {
          if (area !== null) onArea(area);
          setTyped(NOTHING);
        }}
      >
        {t('owners.addArea')}
      </Button>
    </Fold>
  );
};

const pointOf = ({ currentTarget, clientX, clientY }: PointerEvent): Point => {
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  const inside = (value: number): number => Math.min(1, Math.max(0, value));
  return { x: inside((clientX - left) / width), y: inside((clientY - top) / height) };
};

const between = (a: Point, b: Point): Area => ({
  ...{ x: Math.min(a.x, b.x), y: Math.min(a.y, b.y) },
  ...{ width: Math.abs(a.x - b.x), height: Math.abs(a.y - b.y) },
});

const areaOf = ({ left, top, wide, high }: typeof NOTHING): Area | null => {
  const [x, y, width, height] = [left, top, wide, high].map((typed) => (typed === '' ? NaN : Number(typed) / 100));
  const area = { x: x ?? NaN, y: y ?? NaN, width: width ?? NaN, height: height ?? NaN };
  const can = area.x >= 0 && area.y >= 0 && area.width > 0 && area.height > 0;
  return can && area.x + area.width <= 1.000_001 && area.y + area.height <= 1.000_001 ? area : null;
};

const percent = (fraction: number): string => `${Math.round(fraction * 1_000) / 10}`;

const percentOf = ({ x, y, width, height }: Area) => ({
  ...{ left: percent(x), top: percent(y), wide: percent(width), high: percent(height) },
});

const styleOf = ({ x, y, width, height }: Area) => ({
  ...{ left: `${x * 100}%`, top: `${y * 100}%`, width: `${width * 100}%`, height: `${height * 100}%` },
});
