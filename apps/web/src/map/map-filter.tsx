import type { ModelView } from '@hull-record/contracts';
import { FilterForm, type Chosen } from '../asked/filter-form.js';
import { useWords } from '../words/use-words.js';
import { partKindsOf } from './part-kinds.js';

/** What an address of the map says, besides the area. */
export const FILTERS = ['model', 'part', 'kind', 'layer', 'mold', 'lot', 'from', 'until'] as const;
export type FilterName = (typeof FILTERS)[number];

interface MapFilterProps {
  readonly models: readonly ModelView[];
  readonly model: ModelView;
  readonly molds: readonly { readonly code: string; readonly model: string; readonly partKind: string }[];
  readonly kinds: readonly { readonly code: string }[];
  readonly values: Chosen<FilterName>;
  readonly onChosen: (values: Chosen<FilterName>) => void;
  readonly error: unknown;
}

/** What narrows the map: model and part, and which of their defects. */
export const MapFilter = ({ models, model, molds, kinds, values, onChosen, error }: MapFilterProps) => {
  const { t, term, kind } = useWords();
  const layers = model.schedules.filter(({ partKind }) => partKind === values.part).flatMap(({ layers: of }) => of);
  const names = new Map(layers.map(({ code, name }) => [code, `${code} ${name}`]));
  const own = molds.filter((each) => each.model === model.code && each.partKind === values.part);
  return (
    <FilterForm
      button={t('app.show')}
      fields={[
        {
          ...{ name: 'model', label: t('record.model'), kind: 'choice', none: model.name },
          options: models.filter(({ code }) => code !== model.code).map(({ code, name }) => [code, name]),
        },
        {
          ...{ name: 'part', label: t('record.part'), kind: 'choice', none: term('hull molding') },
          options: partKindsOf(model)
            .filter((each) => each !== 'hull molding')
            .map((each) => [each, term(each)]),
        },
        {
          ...{ name: 'kind', label: t('record.defect'), kind: 'choice', pointer: '/kind' },
          options: kinds.map(({ code }) => [code, kind(code)]),
        },
        { name: 'layer', label: t('record.layer'), kind: 'choice', options: [...names] },
        { name: 'mold', label: t('manyMap.mold'), kind: 'choice', options: own.map(({ code }) => [code, code]) },
        { name: 'lot', label: t('manyMap.lot'), kind: 'text', pointer: '/lot' },
        { name: 'from', label: t('manyMap.from'), kind: 'day', pointer: '/from' },
        { name: 'until', label: t('manyMap.until'), kind: 'day', pointer: '/until' },
      ]}
      values={values}
      onChosen={onChosen}
      error={error}
    />
  );
};
