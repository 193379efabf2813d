import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import type { Skin } from '@hull-record/trade';
import { partQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { PlaceFields } from '../skin/place-fields.js';
import { TouchMap } from '../skin/touch-map.js';
import { Where } from '../skin/where.js';
import { Button } from '../ui/button.js';
import { MeasureField } from '../ui/measure-field.js';
import { useWords } from '../words/use-words.js';
import { NO_SPOT, SPOT_FIGURES, type SpotDraft } from './spot-draft.js';

interface SpotFieldsProps {
  /** The hull molding. */
  readonly part: string | undefined;
  readonly skin: Skin | undefined;
  readonly spots: readonly SpotDraft[];
  readonly onSpots: (spots: readonly SpotDraft[]) => void;
}

/** The spots of a claim, one after the other: touched on the hull map, or typed as a tape measures them. */
export const SpotFields = ({ part, skin, spots, onSpots }: SpotFieldsProps) => {
  const { t } = useWords();
  const [asked, setOpen] = useState(0);
  const open = Math.min(asked, spots.length - 1);
  const spot = spots[open] ?? NO_SPOT;
  const change = (some: Partial<SpotDraft>): void => onSpots(spots.with(open, { ...spot, ...some }));
  const add = (): void => {
    onSpots([...spots, NO_SPOT]);
    setOpen(spots.length);
  };
  const drop = (): void => {
    onSpots(spots.length === 1 ? [NO_SPOT] : spots.toSpliced(open, 1));
    setOpen(0);
  };
  return (
    <div className="spots-entry">
      <p>{t('claims.spotOf', { number: open + 1, count: spots.length })}</p>
      <Placing part={part} skin={skin} spot={spot} onChange={change} />
      <div className="sizes">
        {SPOT_FIGURES.map((name) => (
          <MeasureField
            key={name}
            label={t(`claims.spot.${name}`)}
            value={spot.figures[name]}
            whole={name === 'counted'}
            onChange={(typed) => change({ figures: { ...spot.figures, [name]: typed } })}
          />
        ))}
      </div>
      <div className="buttons">
        {open === 0 ? null : <Button onPress={() => setOpen(open - 1)}>{t('claims.spotBefore')}</Button>}
        {open === spots.length - 1 ? null : <Button onPress={() => setOpen(open + 1)}>{t('claims.spotAfter')}</Button>}
        {spot.place === undefined || open < spots.length - 1 ? null : (
          <Button onPress={add}>{t('claims.anotherSpot')}</Button>
        )}
        {spot.place === undefined ? null : <Button onPress={drop}>{t('claims.dropSpot')}</Button>}
      </div>
    </div>
  );
};

interface PlacingProps {
  readonly part: string | undefined;
  readonly skin: Skin | undefined;
  readonly spot: SpotDraft;
  readonly onChange: (some: Partial<SpotDraft>) => void;
}

const Placing = ({ part, skin, spot: { place }, onChange }: PlacingProps) => {
  const { t } = useWords();
  const query = useQuery({ ...partQuery(part ?? ''), enabled: part !== undefined });
  const onPlace = (next: SpotDraft['place']): void => onChange({ place: next });
  const fields = <PlaceFields skin={skin} place={place} onPlace={onPlace} />;
  if (part === undefined || skin === undefined)
    return (
      <>
        <p>{t('claims.noMap')}</p>
        {fields}
      </>
    );
  return (
    <Answer what={t('hulls.part', { part })} query={query}>
      {(view) => (
        <>
          <TouchMap part={view} skin={skin} place={place} onPlace={onPlace} />
          {place === undefined ? null : <Where place={place} skin={skin} />}
          {fields}
        </>
      )}
    </Answer>
  );
};
