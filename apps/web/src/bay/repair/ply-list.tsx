import { Table, type Column } from '../../ui/table.js';
import { useWords } from '../../words/use-words.js';
import type { Order, ReplacedPly } from './order.js';

interface PlyListProps {
  readonly order: Order;
  readonly plies: readonly ReplacedPly[];
}

interface Row extends ReplacedPly {
  readonly number: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly glassKg: number;
  readonly resinKg: number;
}

/** The plies of the patch from the bottom of the grind-out, each with the size to cut, and what they take. */
export const PlyList = ({ order: { patch }, plies }: PlyListProps) => {
  const { t, figure } = useWords();
  const grams = (kg: number): string => t('bay.grams', { g: figure(kg * 1_000, 2) });
  if (patch === null) return <p>{t('bay.noPlies')}</p>;
  const rows = patch.plies.flatMap((size, i): Row[] => {
    const ply = plies[i];
    return ply === undefined ? [] : [{ ...ply, ...size, number: i + 1 }];
  });
  const columns: readonly Column<Row>[] = [
    { head: t('bay.ply'), cell: ({ number, layer, words }) => `${number}. ${words} (${layer})`, names: true },
    {
      head: t('bay.cutTo'),
      cell: ({ lengthMm, widthMm }) => `${figure(Math.ceil(lengthMm), 4)} × ${figure(Math.ceil(widthMm), 4)} mm`,
      class: 'r',
    },
    { head: t('bay.glass'), cell: ({ glassKg }) => grams(glassKg), class: 'r' },
    { head: t('bay.resin'), cell: ({ resinKg }) => grams(resinKg), class: 'r' },
  ];
  return (
    <>
      <Table caption={t('bay.plies')} columns={columns} rows={rows} />
      <p className="soft small">
        {t('bay.patchTakes', {
          glass: grams(patch.glassKg),
          resin: grams(patch.resinKg),
          thick: figure(patch.thicknessMm, 2),
        })}
      </p>
    </>
  );
};
