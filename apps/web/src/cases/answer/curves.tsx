import type { GroupForecast } from '@hull-record/contracts';
import { BoundedTable } from '../../record/bounded-table.js';
import { useWords } from '../../words/use-words.js';
import { Drawing } from './drawing.js';
import { PlotFrame, PLOT } from './plot-frame.js';
import { evenScale } from './scale.js';
import { bandOf, monthsOf, stepsOf, type Step } from './steps.js';

/** By what age hulls had a claim, by group: the share without one, with its band, and the mean number of claims. */
export const Curves = ({ groups }: { readonly groups: readonly GroupForecast[] }) => (
  <>
    <Without groups={groups} />
    <MeanClaims groups={groups} />
  </>
);

interface GroupsProps {
  readonly groups: readonly GroupForecast[];
}

/** Lines are told apart by how they are broken, and by their names in the list above the plot. */
const STYLES = ['line-0', 'line-1', 'line-2'] as const;
const styleOf = (i: number): string => STYLES[i % STYLES.length] ?? '';

const lastDay = (groups: readonly GroupForecast[]): number =>
  Math.max(30, ...groups.flatMap(({ curve, meanClaims }) => [...curve, ...meanClaims].map(({ days }) => days)));

const Without = ({ groups }: GroupsProps) => {
  const { t, figure, percent } = useWords();
  const along = evenScale(monthsOf(lastDay(groups)), PLOT.left, PLOT.right);
  const up = evenScale(1, PLOT.foot, PLOT.top);
  const at = ({ days, value }: Step) => ({ x: along.at(monthsOf(days)), y: up.at(value) });
  const ends = groups.map(({ group, curve }) =>
    t('cases.withoutAtEnd', {
      group,
      share: percent(curve.at(-1)?.without ?? 1),
      month: figure(monthsOf(curve.at(-1)?.days ?? 0), 2),
    }),
  );
  const rows = groups.flatMap(({ group, curve }) => curve.map((step) => ({ group, ...step })));
  return (
    <Drawing
      words={t('cases.withoutSays', { ends: ends.join('; ') })}
      width={PLOT.width}
      height={PLOT.height}
      not={t('cases.withoutNot')}
      table={
        <BoundedTable
          what={t('cases.rows')}
          caption={t('cases.withoutTable')}
          columns={[
            { head: t('cases.group'), cell: ({ group }) => group, names: true },
            { head: t('cases.ageMonths'), cell: ({ days }) => figure(monthsOf(days)), class: 'r n' },
            { head: t('cases.watched'), cell: ({ atRisk }) => atRisk, class: 'r n' },
            { head: t('cases.shareWithout'), cell: ({ without }) => percent(without), class: 'r n' },
            {
              head: t('cases.band'),
              cell: ({ lower, upper }) => t('cases.fromTo', { from: percent(lower), to: percent(upper) }),
            },
          ]}
          rows={rows}
        />
      }
    >
      <PlotFrame along={along} up={up} write={percent} names={groups.map(({ group }) => group)} styleOf={styleOf} />
      {groups.map(({ group, curve, medianRanks }, i) => (
        <g key={group}>
          <path
            className={`band-of ${styleOf(i)}`}
            d={bandOf(
              curve.map(({ days, lower, upper }) => ({ days, lower, upper })),
              at,
            )}
          />
          <path
            className={`curve ${styleOf(i)}`}
            d={stepsOf([{ days: 0, value: 1 }, ...curve.map(({ days, without }) => ({ days, value: without }))], at)}
          />
          {medianRanks ? <path className="ranked" d={lineOf(medianRanks, curve.at(-1)?.days ?? 0, at)} /> : null}
        </g>
      ))}
    </Drawing>
  );
};

/** The line of the median ranks, as the share without a claim, up to the last claim. */
const lineOf = (
  { shape, scaleDays }: NonNullable<GroupForecast['medianRanks']>,
  lastDays: number,
  at: (step: Step) => { readonly x: number; readonly y: number },
): string =>
  Array.from({ length: 41 }, (_, i) => {
    const days = (i * lastDays) / 40;
    const { x, y } = at({ days, value: Math.exp(-((days / scaleDays) ** shape)) });
    return `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
  }).join('');

const MeanClaims = ({ groups }: GroupsProps) => {
  const { t, figure } = useWords();
  const most = Math.max(
    0.01,
    ...groups.flatMap(({ meanClaims }) => meanClaims.map(({ mean, se }) => mean + 1.96 * se)),
  );
  const along = evenScale(monthsOf(lastDay(groups)), PLOT.left, PLOT.right);
  const up = evenScale(most, PLOT.foot, PLOT.top);
  const at = ({ days, value }: Step) => ({ x: along.at(monthsOf(days)), y: up.at(value) });
  const ends = groups.map(({ group, meanClaims }) =>
    t('cases.meanAtEnd', { group, mean: figure(meanClaims.at(-1)?.mean ?? 0) }),
  );
  return (
    <Drawing
      words={t('cases.meanSays', { ends: ends.join('; ') })}
      width={PLOT.width}
      height={PLOT.height}
      table={
        <BoundedTable
          what={t('cases.rows')}
          caption={t('cases.meanTable')}
          columns={[
            { head: t('cases.group'), cell: ({ group }) => group, names: true },
            { head: t('cases.ageMonths'), cell: ({ days }) => figure(monthsOf(days)), class: 'r n' },
            { head: t('cases.watched'), cell: ({ atRisk }) => atRisk, class: 'r n' },
            { head: t('cases.mean'), cell: ({ mean }) => figure(mean), class: 'r n' },
            { head: t('cases.standardError'), cell: ({ se }) => figure(se), class: 'r n' },
          ]}
          rows={groups.flatMap(({ group, meanClaims }) => meanClaims.map((step) => ({ group, ...step })))}
        />
      }
    >
      <PlotFrame
        along={along}
        up={up}
        write={(value) => figure(value)}
        names={groups.map(({ group }) => group)}
        styleOf={styleOf}
      />
      {groups.map(({ group, meanClaims }, i) => (
        <path
          key={group}
          className={`curve ${styleOf(i)}`}
          d={stepsOf([{ days: 0, value: 0 }, ...meanClaims.map(({ days, mean }) => ({ days, value: mean }))], at)}
        />
      ))}
    </Drawing>
  );
};
