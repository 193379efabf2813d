import type { Place, Side, Skin } from '@hull-record/trade';
import { useState } from 'react';
import { MeasureField } from '../ui/measure-field.js';
import { Radios } from '../ui/radios.js';
import { typedNumber } from '../words/typed-number.js';
import { useWords } from '../words/use-words.js';

interface PlaceFieldsProps {
  readonly skin: Skin | undefined;
  readonly place: Place | undefined;
  readonly onPlace: (place: Place) => void;
}

const SIDES = ['port', 'centreline', 'starboard'] as const satisfies readonly Side[];

/** A place in figures, as a tape measures it: what is touched is shown here, and what is typed here moves the mark. */
export const PlaceFields = ({ skin, place, onPlace }: PlaceFieldsProps) => {
  const { t, term } = useWords();
  const surface = place?.surface ?? 'shell';
  const side = place?.side ?? 'port';
  const [along, out] = figuresOf(place);
  const put = (next: Place['surface'], at: Side, first: number, second: number): void =>
    onPlace(placeOf(next, at, first, at === 'centreline' ? 0 : second));
  const onShell = surface === 'shell';
  return (
    <div className="place-fields">
      {skin?.transom === undefined ? null : (
        <Radios
          label={t('map.surface')}
          value={surface}
          options={(['shell', 'transom'] as const).map((each) => [each, t(`map.surface.${each}`)])}
          onChange={(next) => put(next, side, 0, out ?? 0)}
        />
      )}
      <Radios
        label={t('map.side')}
        value={side}
        options={SIDES.map((each) => [each, term(each)])}
        onChange={(next) => put(surface, next, along ?? 0, out ?? 0)}
      />
      <Distance
        label={onShell ? t('map.fromTransom') : t('map.up')}
        mm={along}
        onMm={(mm) => put(surface, side, mm, out ?? 0)}
      />
      <Distance
        label={onShell ? t('map.fromKeel') : t('map.offCentre')}
        mm={out}
        onMm={(mm) => put(surface, side, along ?? 0, mm)}
      />
    </div>
  );
};

const figuresOf = (place: Place | undefined): readonly [number | undefined, number | undefined] => {
  if (place === undefined) return [undefined, undefined];
  return place.surface === 'shell' ? [place.fromTransomMm, place.girthMm] : [place.heightMm, place.offsetMm];
};

const placeOf = (surface: Place['surface'], side: Side, along: number, out: number): Place =>
  surface === 'shell'
    ? { surface, side, fromTransomMm: along, girthMm: out }
    : { surface, side, offsetMm: out, heightMm: along };

interface DistanceProps {
  readonly label: string;
  readonly mm: number | undefined;
  readonly onMm: (mm: number) => void;
}

/** What is typed stays as it is typed, until the mark is moved by something else. */
const Distance = ({ label, mm, onMm }: DistanceProps) => {
  const [typed, setTyped] = useState<{ readonly text: string; readonly for: number | undefined }>();
  const shown = typed !== undefined && typed.for === mm ? typed.text : mm === undefined ? '' : String(mm);
  return (
    <MeasureField
      label={label}
      value={shown}
      onChange={(text) => {
        const next = typedNumber(text);
        const sound = next !== undefined && !Number.isNaN(next);
        setTyped({ text, for: sound ? next : mm });
        if (sound) onMm(next);
      }}
    />
  );
};
