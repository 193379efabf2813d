import type { CaseClass } from '@hull-record/contracts';
import { Table } from '../../ui/table.js';
import { useWords } from '../../words/use-words.js';
import { Drawing } from './drawing.js';
import { chance } from './figures.js';

const [LEFT, WIDTH, ROW, TOP] = [130, 560, 30, 10];

/** Whether more of a lot goes with more claims: hulls by how much they hold at least, and the trend within them. */
export const AtShares = ({ of: { atShares, dose, shares, lots } }: { readonly of: CaseClass }) => {
  const words = useWords();
  const { t, percent } = words;
  const most = Math.max(1, ...atShares.map(({ hulls }) => hulls));
  const trend = dose === null ? t('cases.noTrend') : t('cases.trend', { p: chance(dose.p, words) });
  const spread =
    shares === null
      ? ''
      : t('cases.spread', { least: percent(shares.least), median: percent(shares.median), most: percent(shares.most) });
  const counts = atShares.map(({ fromShare, hulls, withClaim }) =>
    t('cases.atShare', { share: percent(fromShare), hulls, withClaim }),
  );
  const long = (count: number): number => ((WIDTH - LEFT - 110) * count) / most;
  return (
    <Drawing
      words={`${t('cases.sharesOf', { lot: lots[0] ?? '' })} ${counts.join('; ')}. ${trend} ${spread}`}
      width={WIDTH}
      height={TOP + atShares.length * ROW}
      table={
        <Table
          caption={t('cases.shareTable')}
          columns={[
            { head: t('cases.fromShare'), cell: ({ fromShare }) => percent(fromShare), names: true, class: 'n' },
            { head: t('cases.hullsExposed'), cell: ({ hulls }) => hulls, class: 'r n' },
            { head: t('cases.withClaim'), cell: ({ withClaim }) => withClaim, class: 'r n' },
          ]}
          rows={atShares}
        />
      }
    >
      {atShares.map(({ fromShare, hulls, withClaim }, i) => (
        <g key={fromShare} transform={`translate(0 ${TOP + i * ROW})`}>
          <text className="n" x={LEFT - 10} y={17} textAnchor="end">
            {t('cases.orMore', { share: percent(fromShare) })}
          </text>
          <rect className="held" x={LEFT} y={3} width={long(hulls)} height={20} />
          <rect className="held-claimed" x={LEFT} y={3} width={long(withClaim)} height={20} />
          <text className="n" x={LEFT + long(hulls) + 8} y={17}>
            {t('cases.ofHulls', { withClaim, hulls })}
          </text>
        </g>
      ))}
    </Drawing>
  );
};
