import { D714_FREQUENCIES } from '@hull-record/trade';
import { MeasureField } from '../../ui/measure-field.js';
import { Picks } from '../../ui/picks.js';
import { useWords } from '../../words/use-words.js';
import { isNoFigure, type Draft } from './draft.js';

interface SizeFieldsProps {
  readonly draft: Draft;
  readonly onChange: (change: Partial<Draft>) => void;
}

/** How large it is. */
export const SizeFields = ({ draft, onChange }: SizeFieldsProps) => {
  const { t } = useWords();
  return (
    <div className="sizes">
      {(['long', 'wide', 'deep'] as const).map((name) => (
        <Figure key={name} name={name} label={t(`bay.${name}`)} draft={draft} onChange={onChange} />
      ))}
    </div>
  );
};

const SIZES = ['8', '6', '4', '2', '10'] as const;

/** Blisters by ASTM D714: the size of the largest and how many there are, and a count where one was made. */
export const BlisterFields = ({ draft, onChange }: SizeFieldsProps) => {
  const { t } = useWords();
  return (
    <section className="blister">
      <h2>{t('bay.blister')}</h2>
      <p className="soft">{t('bay.blisterSource')}</p>
      <Picks
        label={t('bay.d714')}
        value={draft.d714 || undefined}
        picks={SIZES.map((size) => ({ value: size, words: t(`bay.d714.${size}`) }))}
        onPick={(d714) => onChange({ d714, ...(d714 === '10' ? { frequency: '' } : {}) })}
      />
      {draft.d714 === '' || draft.d714 === '10' ? null : (
        <Picks
          label={t('bay.frequency')}
          value={draft.frequency || undefined}
          picks={D714_FREQUENCIES.map((each) => ({ value: each, words: `${each}, ${t(`bay.frequency.${each}`)}` }))}
          onPick={(frequency) => onChange({ frequency })}
        />
      )}
      <div className="sizes">
        {(['counted', 'area'] as const).map((name) => (
          <Figure key={name} name={name} label={t(`bay.${name}`)} draft={draft} onChange={onChange} />
        ))}
      </div>
    </section>
  );
};

interface FigureProps extends SizeFieldsProps {
  readonly name: 'long' | 'wide' | 'deep' | 'counted' | 'area';
  readonly label: string;
}

const Figure = ({ name, label, draft, onChange }: FigureProps) => {
  const { t } = useWords();
  return (
    <MeasureField
      label={label}
      value={draft[name]}
      whole={name === 'counted'}
      wrong={isNoFigure(draft[name]) ? t('bay.missing.figure') : undefined}
      onChange={(typed) => onChange({ [name]: typed })}
    />
  );
};
