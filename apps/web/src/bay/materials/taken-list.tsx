import { BASES, MATERIAL_ROLES } from '@hull-record/trade';
import type { Unnamed } from '../../day/unnamed.js';
import { UnnamedFields } from '../../record/unnamed-fields.js';
import { Button } from '../../ui/button.js';
import { Choice } from '../../ui/choice.js';
import { MeasureField } from '../../ui/measure-field.js';
import { TextField } from '../../ui/text-field.js';
import { unitSign } from '../../words/figures.js';
import { useWords } from '../../words/use-words.js';
import { NOTHING_TAKEN, type TakenBasis, type TakenFrom, type TakenRow, type TakenUnit } from './taken-row.js';

const UNITS = ['kg', 'g', 'lb', 'oz', 'L', 'mL', 'm2', 'ft2', 'm', 'pc'] as const satisfies readonly TakenUnit[];

interface TakenListProps {
  readonly rows: readonly TakenRow[];
  readonly onRows: (rows: readonly TakenRow[]) => void;
}

/** What was used, lot by lot: scanned or typed, with how much and how that is known. */
export const TakenList = ({ rows, onRows }: TakenListProps) => {
  const { t } = useWords();
  const put = (i: number, change: Partial<TakenRow>): void =>
    onRows(rows.map((row, at) => (at === i ? { ...row, ...change } : row)));
  return (
    <div className="taken">
      <h2>{t('bay.used')}</h2>
      {rows.map((row, i) => (
        <Taken
          key={i}
          number={i + 1}
          row={row}
          onRow={(change) => put(i, change)}
          onDrop={() => onRows(rows.toSpliced(i, 1))}
        />
      ))}
      <Button onPress={() => onRows([...rows, NOTHING_TAKEN])}>{t('bay.addUsed')}</Button>
    </div>
  );
};

interface TakenProps {
  readonly number: number;
  readonly row: TakenRow;
  readonly onRow: (change: Partial<TakenRow>) => void;
  readonly onDrop: () => void;
}

const Taken = ({ number, row, onRow, onDrop }: TakenProps) => {
  const { t, term } = useWords();
  return (
    <fieldset>
      <legend>{t('bay.usedNumber', { number })}</legend>
      <Choice
        label={t('bay.takenFrom')}
        value={row.from === 'lot' ? '' : row.from}
        none={t('bay.from.lot')}
        options={[
          ['tank', t('bay.from.tank')],
          ['gun', t('bay.from.gun')],
          ['unidentified', t('bay.from.unidentified')],
        ]}
        onChange={(from) => onRow({ from: (from || 'lot') as TakenFrom })}
      />
      {row.from === 'unidentified' ? (
        <OfNobodyKnows of={row.unnamed} onChange={(unnamed) => onRow({ unnamed })} />
      ) : (
        <TextField
          label={t(`bay.code.${row.from}`)}
          kind="text"
          value={row.code}
          onChange={(code) => onRow({ code })}
        />
      )}
      <MeasureField label={t('bay.quantity')} value={row.quantity} onChange={(quantity) => onRow({ quantity })} />
      <Choice
        label={t('bay.unit')}
        value={row.unit}
        none={unitSign('kg')}
        options={UNITS.filter((unit) => unit !== 'kg').map((unit) => [unit, unitSign(unit)])}
        onChange={(unit) => onRow({ unit: (unit || 'kg') as TakenUnit })}
      />
      <Choice
        label={t('record.basis')}
        value={row.basis}
        none={term('weighed')}
        options={BASES.filter((basis) => basis !== 'weighed').map((basis) => [basis, term(basis)])}
        onChange={(basis) => onRow({ basis: (basis || 'weighed') as TakenBasis })}
      />
      <Button label={t('bay.dropUsed', { number })} onPress={onDrop}>
        ×
      </Button>
    </fieldset>
  );
};

/** Material that nobody can name: what it was taken for, and what is known of it. A trace then says "possibly any of". */
const OfNobodyKnows = ({ of, onChange }: { readonly of: Unnamed; readonly onChange: (of: Unnamed) => void }) => {
  const { t, term } = useWords();
  return (
    <>
      <Choice
        label={t('bay.takenFor')}
        value={of.role === 'resin' ? '' : of.role}
        none={term('resin')}
        options={MATERIAL_ROLES.filter((role) => role !== 'resin').map((role) => [role, term(role)])}
        onChange={(role) => onChange({ ...of, role: role || 'resin' })}
      />
      <UnnamedFields of={of} onChange={onChange} />
    </>
  );
};
