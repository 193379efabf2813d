import { FilterForm } from '../asked/filter-form.js';
import { useWords } from '../words/use-words.js';

const LABELLED = ['lot', 'container', 'part', 'hull', 'equipment', 'badge'] as const;

interface ChooseLabelsProps {
  readonly of: string;
  readonly codes: string;
  readonly onChosen: (chosen: { of: string; codes: string }) => void;
}

/** What the labels are for. Who comes from the thing itself finds it filled in. */
export const ChooseLabels = ({ of, codes, onChosen }: ChooseLabelsProps) => {
  const { t, term } = useWords();
  return (
    <FilterForm
      button={t('labels.preview')}
      fields={[
        {
          name: 'of',
          label: t('labels.of'),
          kind: 'choice',
          options: LABELLED.map((each) => [each, term(each)]),
          none: t('entry.choose'),
        },
        { name: 'codes', label: t('labels.codes'), kind: 'lines', hint: t('labels.codesHint') },
      ]}
      values={{ of, codes: codes.replaceAll(',', '\n') }}
      onChosen={({ of: kind, codes: typed }) =>
        onChosen({
          of: kind,
          codes: typed
            .split(/[\n,]/)
            .map((each) => each.trim())
            .filter(Boolean)
            .join(','),
        })
      }
    />
  );
};
