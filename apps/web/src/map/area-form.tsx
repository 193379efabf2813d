import { FilterForm } from '../asked/filter-form.js';
import { useWords } from '../words/use-words.js';
import type { Area } from './area.js';
import { areaFromText, areaToText } from './area.js';

interface AreaFormProps {
  readonly area: Area | undefined;
  readonly onArea: (area: Area | undefined) => void;
}

/** An area typed by its sides, for who does not drag: what is left empty is open. */
export const AreaForm = ({ area, onArea }: AreaFormProps) => {
  const { t, term } = useWords();
  const text = (value: number | undefined): string => (value === undefined ? '' : String(value));
  return (
    <FilterForm
      button={t('manyMap.list')}
      fields={[
        {
          ...{ name: 'surface', label: t('manyMap.surface'), kind: 'choice', none: t('manyMap.shell') },
          options: [['transom', term('transom')]],
        },
        { name: 'a', label: t('manyMap.alongFrom'), kind: 'mm' },
        { name: 'b', label: t('manyMap.alongTo'), kind: 'mm' },
        { name: 'c', label: t('manyMap.acrossFrom'), kind: 'mm', hint: t('manyMap.portIsPositive') },
        { name: 'd', label: t('manyMap.acrossTo'), kind: 'mm' },
      ]}
      values={{
        surface: area?.surface === 'transom' ? 'transom' : '',
        ...{ a: text(area?.along[0]), b: text(area?.along[1]), c: text(area?.across[0]), d: text(area?.across[1]) },
      }}
      onChosen={({ surface, a, b, c, d }) => {
        if ([a, b, c, d].every((each) => each === '')) onArea(undefined);
        else onArea(areaFromText(typed(surface || 'shell', [a, b, c, d])));
      }}
    />
  );
};

/** The largest skin that can be registered, mm: what is left open reaches to its edge. */
const OPEN = ['0', '100000', '-100000', '100000'];
const typed = (surface: string, sides: readonly string[]): string =>
  [surface, ...sides.map((side, i) => (side === '' ? OPEN[i] : side))].join(',');

/** As it stands in the address. */
export const areaInAddress = (area: Area | undefined): string => (area === undefined ? '' : areaToText(area));
