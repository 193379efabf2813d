import { DEFECT_KINDS } from '@hull-record/trade';
import { Button } from '../../ui/button.js';
import { Choice } from '../../ui/choice.js';
import { MeasureField } from '../../ui/measure-field.js';
import { useWords } from '../../words/use-words.js';
import { isNoFigure } from '../defect/draft.js';

/** Spots of one kind in one zone, as entered. */
export interface SpotsRow {
  readonly zone: string;
  readonly kind: string;
  readonly count: number;
  /** Largest of them, mm, as typed. */
  readonly largest: string;
}

export const FIRST_SPOTS = (zone: string): SpotsRow => ({ zone, kind: '', count: 1, largest: '' });

/** Zones of the two sides; a hull molding has a transom and a bottom besides (common practice). */
const OF_HULL = ['port topside', 'starboard topside', 'port bottom', 'starboard bottom', 'transom'];
const OF_OTHERS = ['port', 'starboard', 'centreline'];

/** The zones of a part that spots are told by. They are recorded in English, as all words of the record are. */
export const zonesOf = (partKind: string): readonly string[] => (partKind === 'hull molding' ? OF_HULL : OF_OTHERS);

interface SpotsFieldsProps {
  readonly number: number;
  readonly zones: readonly string[];
  readonly row: SpotsRow;
  readonly onRow: (change: Partial<SpotsRow>) => void;
  readonly onDrop?: () => void;
}

/** Spots of one kind in one zone: counted by touch. */
export const SpotsFields = ({ number, zones, row, onRow, onDrop }: SpotsFieldsProps) => {
  const { t, kind, term } = useWords();
  const { zone, count, largest } = row;
  return (
    <fieldset className="spots-row">
      <legend>{t('bay.spotsNumber', { number })}</legend>
      <Choice
        label={t('bay.zone')}
        value={zone}
        none={term(zones[0] ?? '')}
        options={zones.slice(1).map((each) => [each, term(each)])}
        onChange={(chosen) => onRow({ zone: chosen || (zones[0] ?? '') })}
      />
      <Choice
        label={t('bay.kind')}
        value={row.kind}
        none={t('bay.chooseKind')}
        options={DEFECT_KINDS.map(({ code }) => [code, kind(code)])}
        onChange={(chosen) => onRow({ kind: chosen })}
      />
      <div className="count" role="group" aria-label={t('bay.howMany')}>
        <span className="small">{t('bay.howMany')}</span>
        <Button label={t('bay.fewer')} onPress={() => onRow({ count: Math.max(1, count - 1) })}>
          −
        </Button>
        <output className="n" aria-live="polite">
          {count}
        </output>
        <Button label={t('bay.oneMore')} onPress={() => onRow({ count: Math.min(1_000, count + 1) })}>
          +
        </Button>
      </div>
      <MeasureField
        label={t('bay.largest')}
        value={largest}
        wrong={isNoFigure(largest) ? t('bay.missing.figure') : undefined}
        onChange={(typed) => onRow({ largest: typed })}
      />
      {onDrop === undefined ? null : (
        <Button label={t('bay.dropSpots', { number })} onPress={onDrop}>
          ×
        </Button>
      )}
    </fieldset>
  );
};
