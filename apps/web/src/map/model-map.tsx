import { useQuery } from '@tanstack/react-query';
import type { DefectKindView, DefectMap, ModelView, MoldView } from '@hull-record/contracts';
import { useDeferredValue, useMemo } from 'react';
import { defectMapQuery } from '../api/queries-of-map.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import type { Chosen } from '../asked/filter-form.js';
import { Button } from '../ui/button.js';
import { Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { isIn, type Area } from './area.js';
import { AreaForm } from './area-form.js';
import { areaWords } from './area-words.js';
import { cellSizeMm, cellsOf, type Cell } from './density.js';
import { FullestSquares } from './fullest-squares.js';
import { MapBoard } from './map-board.js';
import { MapFilter, type FilterName } from './map-filter.js';
import { MapList } from './map-list.js';
import { partKindsOf } from './part-kinds.js';

type Answered<S> = S extends { readonly _zod: { readonly output: infer O } } ? O : never;

interface ModelMapProps {
  readonly known: {
    readonly models: readonly ModelView[];
    readonly model: ModelView;
    readonly molds: readonly Answered<typeof MoldView>[];
    readonly kinds: readonly Answered<typeof DefectKindView>[];
  };
  readonly values: Chosen<FilterName>;
  readonly area: Area | undefined;
  readonly onChosen: (values: Chosen<FilterName>) => void;
  readonly onArea: (area: Area | undefined) => void;
}

const NO_SPOTS: DefectMap['points'] = [];

/** The map of one model: what narrows it, the drawing, and the list of what is on it. */
export const ModelMap = ({ known, values, area, onChosen, onArea }: ModelMapProps) => {
  const words = useWords();
  const { t } = words;
  const { model } = known;
  const part = partKindsOf(model).find((kind) => kind === values.part) ?? 'hull molding';
  const { model: _model, part: _part, ...narrowed } = values;
  const filter = { ...narrowed, partKind: part };
  const query = useQuery(defectMapQuery(model.code, filter));
  const skin = model.skins[part];
  // Thousands of dots are drawn after the answer came, in pieces between which the page answers.
  const data = useDeferredValue(query.data);
  const spots = data?.points ?? NO_SPOTS;
  const cells = useMemo(() => cellsOf(spots, cellSizeMm(skin?.lengthMm ?? 0)), [spots, skin]);
  const listed = area === undefined ? t('manyMap.listed') : t('manyMap.listedIn', { area: areaWords(area, words) });
  return (
    <>
      <div className="many-filter">
        <MapFilter {...known} values={{ ...values, part }} onChosen={onChosen} error={query.error} />
      </div>
      <div className="many-and-words">
        {skin === undefined ? null : (
          <MapBoard
            key={`${model.code} ${part}`}
            kind={part}
            skin={skin}
            spots={spots}
            cells={cells}
            area={area}
            onArea={onArea}
            words={data === undefined ? t('manyMap.title') : sentence(data, cells, words)}
          />
        )}
        <div className="many-words">
          <Answer what={t('manyMap.onMap')} query={{ ...query, data }}>
            {(map) => <MapWords map={map} cells={cells} area={area} onArea={onArea} />}
          </Answer>
        </div>
      </div>
      <Section name={t('record.defects')}>
        <AreaForm area={area} onArea={onArea} />
        {area === undefined ? null : (
          <p>
            <Button onPress={() => onArea(undefined)}>{t('manyMap.wholeSkin')}</Button>
          </p>
        )}
        <MapList model={model.code} filter={{ ...filter, ...inQuery(area) }} caption={listed} />
      </Section>
    </>
  );
};

const inQuery = (area: Area | undefined) =>
  area === undefined
    ? {}
    : {
        surface: area.surface,
        ...{ alongFrom: String(area.along[0]), alongTo: String(area.along[1]) },
        ...{ acrossFrom: String(area.across[0]), acrossTo: String(area.across[1]) },
      };

type Say = ReturnType<typeof useWords>;

/** What the map shows, in one sentence or two. */
const sentence = ({ found, parts, partsWith }: DefectMap, [fullest]: readonly Cell[], words: Say): string => {
  const all = words.t('manyMap.found', { found, parts, partsWith });
  if (fullest === undefined || found < 2) return all;
  const most = { count: fullest.count, parts: fullest.parts, area: areaWords(fullest.area, words) };
  return `${all} ${words.t('manyMap.fullest', most)}`;
};

interface MapWordsProps {
  readonly map: DefectMap;
  readonly cells: readonly Cell[];
  readonly area: Area | undefined;
  readonly onArea: (area: Area) => void;
}

const MapWords = ({ map, cells, area, onArea }: MapWordsProps) => {
  const words = useWords();
  const { t, kind } = words;
  const inside = area === undefined ? [] : map.points.filter((point) => isIn(area, point));
  return (
    <>
      <RecomputingNote of={map.recomputing} />
      <p className="lead" role="status">
        {sentence(map, cells, words)}
      </p>
      {area === undefined ? null : (
        <p className="b">
          {t('manyMap.inArea', { count: inside.length, parts: new Set(inside.map(({ part }) => part)).size })}
        </p>
      )}
      {map.found > map.points.length ? <p>{t('manyMap.newest', { count: map.points.length })}</p> : null}
      {map.kinds.length === 0 ? null : (
        <p>{map.kinds.map(({ kind: code, found }) => `${kind(code)} ${found}`).join(', ')}</p>
      )}
      <p className="note soft">{t('manyMap.notWhy')}</p>
      {cells.length === 0 ? null : <FullestSquares cells={cells} onArea={onArea} />}
    </>
  );
};
