import { useState } from 'react';
import type { CaseForecast, GroupForecast } from '@hull-record/contracts';
import { Facts } from '../../ui/page.js';
import { MeasureField } from '../../ui/measure-field.js';
import { Table, type Column } from '../../ui/table.js';
import { CalendarDay } from '../../words/moments.js';
import { Said } from '../../words/text.js';
import { typedNumber } from '../../words/typed-number.js';
import { useWords } from '../../words/use-words.js';
import type { Words } from '../../words/words.js';
import { Drawing } from './drawing.js';
import { evenScale } from './scale.js';
import { monthsOf } from './steps.js';

/** How many more first claims to expect, month by month, with what is not known of the fit; and what they may cost. */
export const Forecast = ({ of }: { readonly of: CaseForecast }) => {
  const { t, figure } = useWords();
  const cap = of.warrantyCapDays;
  return (
    <>
      <Facts
        rows={[
          [t('cases.forecastFrom'), <CalendarDay at={of.from} />],
          [t('cases.monthsAhead'), of.monthsAhead],
          [t('cases.cap'), cap === null ? t('cases.noCap') : t('cases.capYears', { years: figure(cap / 365.25, 3) })],
          [t('cases.notLaunched'), of.notLaunched],
        ]}
      />
      {of.groups.map((group) => (
        <OneGroup key={group.group} of={group} />
      ))}
      <Cost groups={of.groups} />
      <p className="note soft">
        <Said text={of.cannotSay} />
      </p>
    </>
  );
};

const [WIDTH, HEIGHT, LEFT, TOP, FOOT] = [620, 190, 56, 20, 150];

const OneGroup = ({ of }: { readonly of: GroupForecast }) => {
  const words = useWords();
  const { t, figure } = words;
  const { byMonth, byMonthIntervals = [], weibull, medianRanks } = of;
  const up = evenScale(Math.max(0.01, ...byMonth), FOOT, TOP);
  const wide = (WIDTH - LEFT) / Math.max(1, byMonth.length);
  return (
    <div className="group-ahead">
      <h3>{of.group}</h3>
      <p>
        <Said text={of.sentence} />
      </p>
      {byMonth.length === 0 ? null : (
        <Drawing
          words={t('cases.byMonthSays', {
            group: of.group,
            first: figure(byMonth[0] ?? 0),
            last: figure(byMonth.at(-1) ?? 0),
            total: aheadWords(of, words),
          })}
          width={WIDTH}
          height={HEIGHT}
          table={
            <Table
              caption={t('cases.byMonthTable')}
              columns={[
                { head: t('cases.monthAhead'), cell: ({ month }) => month, names: true, class: 'n' },
                { head: t('cases.expectedClaims'), cell: ({ expected }) => figure(expected), class: 'r n' },
                {
                  head: t('cases.monthInterval'),
                  cell: ({ interval }) => (interval === undefined ? '–' : limitWords(interval, words)),
                },
              ]}
              rows={byMonth.map((expected, i) => ({ expected, interval: byMonthIntervals[i], month: i + 1 }))}
            />
          }
        >
          {up.ticks.map((tick) => (
            <g key={tick}>
              <path className="guide" d={`M${LEFT} ${up.at(tick)}H${WIDTH}`} />
              <text className="n" x={LEFT - 8} y={up.at(tick) + 4} textAnchor="end">
                {figure(tick)}
              </text>
            </g>
          ))}
          {byMonth.map((expected, i) => (
            <g key={i}>
              <rect
                className="ahead"
                x={LEFT + i * wide + 6}
                y={up.at(expected)}
                width={wide - 12}
                height={FOOT - up.at(expected)}
              />
              <text className="n" x={LEFT + (i + 0.5) * wide} y={FOOT + 16} textAnchor="middle">
                {i + 1}
              </text>
            </g>
          ))}
          <path className="axis" d={`M${LEFT} ${FOOT}H${WIDTH}`} />
          <text x={WIDTH} y={HEIGHT - 6} textAnchor="end">
            {t('cases.monthAhead')}
          </text>
        </Drawing>
      )}
      <Facts
        rows={[
          [t('cases.ahead'), aheadWords(of, words)],
          [t('cases.plugIn'), of.plugIn === null ? null : limitWords(of.plugIn, words)],
          [t('cases.shape'), weibull === null ? null : figure(weibull.shape)],
          [
            t('cases.scale'),
            weibull === null ? null : t('cases.monthsLong', { months: figure(monthsOf(weibull.scaleDays)) }),
          ],
          [t('cases.limited'), weibull?.limited ? words.percent(weibull.limited.share) : null],
          [t('cases.medianRanks'), medianRanks ? figure(medianRanks.shape) : null],
        ]}
      />
    </div>
  );
};

const limitWords = ({ lower, upper }: { readonly lower: number; readonly upper: number }, { t, figure }: Words) =>
  t('cases.fromTo', { from: figure(lower), to: figure(upper) });

/** One number with its interval, or, of too few claims, a range and no number. */
const aheadWords = ({ expected, interval, range }: GroupForecast, words: Words): string => {
  if (expected !== null && interval !== null)
    return words.t('cases.expectedWithin', {
      expected: words.figure(expected),
      lower: words.figure(interval.lower),
      upper: words.figure(interval.upper),
    });
  return range === null ? words.t('record.notKnown') : words.t('cases.rangeOnly', { range: limitWords(range, words) });
};

/** What the claims ahead may cost, by a cost of one claim that is typed here: it is kept nowhere. */
const Cost = ({ groups }: { readonly groups: readonly GroupForecast[] }) => {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const cost = typedNumber(typed);
  const columns = useCostColumns(cost ?? 0);
  const wrong = cost !== undefined && Number.isNaN(cost);
  return (
    <div className="cost-of-claims">
      <MeasureField
        label={t('cases.costOfOne')}
        hint={t('cases.costHint')}
        value={typed}
        onChange={setTyped}
        wrong={wrong ? t('cases.noFigure') : undefined}
      />
      {cost === undefined || wrong ? null : <Table caption={t('cases.costTable')} columns={columns} rows={groups} />}
    </div>
  );
};

const useCostColumns = (cost: number): readonly Column<GroupForecast>[] => {
  const { t, figure } = useWords();
  const money = (claims: number): string => figure(Math.round(claims * cost));
  return [
    { head: t('cases.group'), cell: ({ group }) => group, names: true },
    {
      head: t('cases.expectedCost'),
      cell: ({ expected }) => (expected === null ? t('cases.noNumber') : money(expected)),
      class: 'r n',
    },
    {
      head: t('cases.costInterval'),
      cell: ({ interval, range }) => {
        const limits = interval ?? range;
        return limits === null ? '–' : t('cases.fromTo', { from: money(limits.lower), to: money(limits.upper) });
      },
    },
  ];
};
