import type { ChartView } from '@hull-record/contracts';
import { FilterForm } from '../asked/filter-form.js';
import { useWords } from '../words/use-words.js';

/** What narrows a chart, by its name in the address. */
export const NARROWED = ['mold', 'gun', 'area', 'from', 'to', 'rules', 'run'] as const;
export type Narrowed = Readonly<Record<(typeof NARROWED)[number], string>>;

interface ChartFilterProps {
  readonly chart: ChartView | undefined;
  readonly values: Narrowed;
  readonly onChosen: (values: Narrowed) => void;
  readonly error: unknown;
}

const same = (codes: readonly string[]): readonly (readonly [string, string])[] => codes.map((code) => [code, code]);

/** Narrows a chart to a mold, a gun, an area or a period, and chooses the run rules it is read by. Never to a person. */
export const ChartFilter = ({ chart, values, onChosen, error }: ChartFilterProps) => {
  const { t } = useWords();
  return (
    <FilterForm
      button={t('app.show')}
      fields={[
        { name: 'mold', label: t('charts.mold'), kind: 'choice', options: same(chart?.molds ?? given(values.mold)) },
        { name: 'gun', label: t('charts.gun'), kind: 'choice', options: same(chart?.guns ?? given(values.gun)) },
        { name: 'area', label: t('charts.area'), kind: 'choice', options: same(chart?.areas ?? given(values.area)) },
        { name: 'from', label: t('charts.from'), kind: 'day', pointer: '/from' },
        { name: 'to', label: t('charts.to'), kind: 'day', pointer: '/to' },
        {
          name: 'rules',
          label: t('charts.rules'),
          kind: 'choice',
          options: [
            ['limits alone', t('charts.rules.limits')],
            ['Western Electric', t('charts.rules.four')],
            ['Nelson', t('charts.rules.eight')],
          ],
          none: t('charts.asFrozen'),
        },
        {
          name: 'run',
          label: t('charts.run'),
          kind: 'choice',
          options: same(['7', '8', '9']),
          none: t('charts.asFrozen'),
        },
      ]}
      values={values}
      onChosen={onChosen}
      error={error}
    />
  );
};

const given = (value: string): readonly string[] => (value === '' ? [] : [value]);
