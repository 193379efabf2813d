import type { LabelStockView } from '@hull-record/contracts';
import { useMutation } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { postPaper } from '../api/post-paper.js';
import { Trouble } from '../asked/trouble.js';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { Choice } from '../ui/choice.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';
import { SheetPreview } from './sheet-preview.js';

interface PrintLabelsProps {
  readonly of: string;
  readonly codes: readonly string[];
  readonly stocks: readonly LabelStockView[];
}

const NAMES = { stock: 'stock', skip: 'skip' } as const;
const STOCK_KEPT = 'hull-record.label-stock';

/** Chooses the stock and how many places of the sheet are used already, shows the sheet, and makes the PDF. */
export const PrintLabels = ({ of, codes, stocks }: PrintLabelsProps) => {
  const { t } = useWords();
  const [name, setName] = useState(() => localStorage.getItem(STOCK_KEPT) ?? stocks[0]?.name ?? '');
  const [skip, setSkip] = useState('0');
  const stock = stocks.find((each) => each.name === name) ?? stocks[0];
  const skipped = Math.max(0, Math.trunc(Number(skip)) || 0);
  const kept = useRef<string | null>(null);
  const making = useMutation({
    mutationFn: async () => {
      const file = await postPaper('/api/labels.pdf', {
        stock: stock?.name,
        labels: codes.map((code) => ({ of, code })),
        skip: skipped,
      });
      // The address of a file is kept by the browser until it is given up.
      if (kept.current !== null) URL.revokeObjectURL(kept.current);
      kept.current = URL.createObjectURL(file);
      return kept.current;
    },
  });
  const made = making.data ?? null;
  if (stock === undefined) return null;
  const choose = (chosen: string): void => {
    setName(chosen === '' ? stock.name : chosen);
    localStorage.setItem(STOCK_KEPT, chosen);
    making.reset();
  };
  const isSheet = stock.columns * stock.rows > 1;
  return (
    <>
      <div className="filter">
        <Choice
          name={NAMES.stock}
          label={t('labels.stock')}
          value={stock.name}
          options={stocks.slice(1).map((each) => [each.name, sizeOf(each, t)])}
          none={sizeOf(stocks[0] as LabelStockView, t)}
          onChange={(chosen) => choose(chosen === '' ? (stocks[0]?.name ?? '') : chosen)}
        />
        {isSheet ? (
          <TextField
            name={NAMES.skip}
            label={t('labels.skip')}
            hint={t('labels.skipHint')}
            kind="decimal"
            value={skip}
            onChange={setSkip}
          />
        ) : null}
        <Button className="btn do" onPress={() => making.mutate()} busy={making.isPending}>
          {t('labels.make', { count: codes.length })}
        </Button>
      </div>
      {making.error ? <Trouble what={t('labels.thePdf')} error={making.error} again={() => making.mutate()} /> : null}
      {made === null ? null : (
        <p role="status">
          {mark('made', t('labels.made'))}{' '}
          <a href={made} target="_blank" rel="noreferrer">
            {t('labels.open')}
          </a>{' '}
          <a href={made} download={`labels-${of}.pdf`}>
            {t('labels.save')}
          </a>
        </p>
      )}
      <SheetPreview stock={stock} codes={codes} skip={isSheet ? skipped : 0} />
      <p className="note soft">{t('labels.fullSize')}</p>
    </>
  );
};

const sizeOf = ({ name, label, columns, rows }: LabelStockView, t: ReturnType<typeof useWords>['t']): string =>
  columns * rows === 1
    ? t('labels.roll', { width: label.widthMm, height: label.heightMm })
    : t('labels.sheet', {
        paper: name.startsWith('a4') ? 'A4' : 'Letter',
        width: label.widthMm,
        height: label.heightMm,
        count: columns * rows,
      });
