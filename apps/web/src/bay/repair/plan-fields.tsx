import { TAPER_RATIOS } from '@hull-record/trade';
import { MeasureField } from '../../ui/measure-field.js';
import { Picks } from '../../ui/picks.js';
import { useWords } from '../../words/use-words.js';
import type { RepairDraft, WorkedOut } from './repair-draft.js';

interface PlanFieldsProps {
  readonly draft: RepairDraft;
  readonly worked: WorkedOut;
  readonly onChange: (change: Partial<RepairDraft>) => void;
}

/** How it is ground out. What the record tells stands in the fields already, and may be overwritten. */
export const PlanFields = ({ draft, worked: { plan, cut }, onChange }: PlanFieldsProps) => {
  const { t } = useWords();
  const told = (mm: number): string => (Number.isNaN(mm) ? '' : String(mm));
  const field = (name: 'long' | 'wide' | 'depth' | 'original', known: number) => (
    <MeasureField
      label={t(`bay.plan.${name}`)}
      value={draft[name] === '' ? told(known) : draft[name]}
      onChange={(typed) => onChange({ [name]: typed === '' ? ' ' : typed })}
    />
  );
  return (
    <div className="plan-fields">
      <Picks
        label={t('bay.from')}
        className="few"
        value={draft.from}
        picks={(['outside', 'inside'] as const).map((from) => ({ value: from, words: t(`bay.from.${from}`) }))}
        onPick={(from) => onChange({ from, depth: '' })}
      />
      <div className="sizes">
        {field('long', plan.lengthMm)}
        {field('wide', plan.widthMm)}
        {field('depth', plan.depthMm)}
        {field('original', plan.originalMm)}
      </div>
      {cut.untold.length === 0 ? null : (
        <p className="soft small">{t('bay.untold', { layers: cut.untold.join(', ') })}</p>
      )}
      <div className="side-by-side">
        <Picks
          label={t('bay.taper')}
          className="few"
          value={draft.ratio}
          picks={Object.values(TAPER_RATIOS.values).map((ratio) => ({ value: String(ratio), words: `${ratio}:1` }))}
          onPick={(ratio) => onChange({ ratio })}
        />
        <Picks
          label={t('bay.sides')}
          className="few"
          value={draft.sides}
          picks={(['one', 'both'] as const).map((sides) => ({ value: sides, words: t(`bay.sides.${sides}`) }))}
          onPick={(sides) => onChange({ sides })}
        />
      </div>
      <p className="soft small">{t('bay.taperSource')}</p>
    </div>
  );
};
