import type { CaseForecast } from '@hull-record/contracts';
import { BoundedTable } from '../../record/bounded-table.js';
import { useWords } from '../../words/use-words.js';
import { Drawing } from './drawing.js';

type Row = CaseForecast['triangle'][number];

interface TriangleProps {
  readonly rows: readonly Row[];
  readonly notLaunched: number;
}

/** A square of the grid, px; the months of building stand left of it. */
const CELL = 26;
const LEFT = 84;
const TOP = 40;

/** Claims by the month a hull was built and the months it was in service: what is young has had no time to show any. */
export const Triangle = ({ rows, notLaunched }: TriangleProps) => {
  const { t } = useWords();
  const months = Math.max(0, ...rows.map(({ cells }) => cells.length));
  const claims = rows.flatMap(({ cells }) => cells).reduce((sum, cell) => sum + cell.claims, 0);
  const words = t('cases.triangleSays', { claims, built: rows.length, months: Math.max(0, months - 1), notLaunched });
  return (
    <Drawing
      words={words}
      width={LEFT + months * CELL + 8}
      height={TOP + rows.length * CELL + 8}
      table={<Behind rows={rows} />}
      not={t('cases.triangleNot')}
    >
      <text x={LEFT} y={14}>
        {t('cases.monthsInService')}
      </text>
      {Array.from({ length: months }, (_, month) =>
        month % 3 === 0 ? (
          <text key={month} className="n" x={LEFT + (month + 0.5) * CELL} y={TOP - 8} textAnchor="middle">
            {month}
          </text>
        ) : null,
      )}
      {rows.map(({ built, cells }, row) => (
        <g key={built} transform={`translate(0 ${TOP + row * CELL})`}>
          <text className="n" x={LEFT - 8} y={17} textAnchor="end">
            {built}
          </text>
          {cells.map((cell, month) => (
            <Cell key={month} of={cell} x={LEFT + month * CELL} />
          ))}
        </g>
      ))}
    </Drawing>
  );
};

interface CellProps {
  readonly of: Row['cells'][number];
  readonly x: number;
}

/** Hulls that were watched leave a line below; claims are a number on a ground that grows with their share. */
const Cell = ({ of: { claims, atRisk }, x }: CellProps) => {
  if (atRisk === 0 && claims === 0) return null;
  const shade = Math.min(3, Math.floor((4 * claims) / Math.max(1, atRisk)));
  return (
    <>
      <path className="watched" d={`M${x + 3} ${CELL - 3}H${x + CELL - 3}`} />
      {claims === 0 ? null : (
        <>
          <rect className={`shade shade-${shade}`} x={x + 1} y={1} width={CELL - 2} height={CELL - 4} />
          <text className="n b" x={x + CELL / 2} y={17} textAnchor="middle">
            {claims}
          </text>
        </>
      )}
    </>
  );
};

const Behind = ({ rows }: { readonly rows: readonly Row[] }) => {
  const { t } = useWords();
  return (
    <BoundedTable
      what={t('cases.buildMonths')}
      caption={t('cases.triangleTable')}
      columns={[
        { head: t('cases.built'), cell: ({ built }) => built, names: true, class: 'n' },
        { head: t('cases.hullsAtFirst'), cell: ({ cells }) => cells[0]?.atRisk ?? 0, class: 'r n' },
        {
          head: t('cases.claimsInAll'),
          cell: ({ cells }) => cells.reduce((sum, cell) => sum + cell.claims, 0),
          class: 'r n',
        },
        {
          head: t('cases.whenClaimed'),
          cell: ({ cells }) =>
            cells
              .flatMap(({ claims, atRisk }, month) =>
                claims === 0 ? [] : [t('cases.claimsInMonth', { month, claims, atRisk })],
              )
              .join('; ') || '–',
        },
      ]}
      rows={rows}
    />
  );
};
