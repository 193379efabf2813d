import type { Block } from '../flow.js';
import { facts } from '../facts.js';
import type { Fonts } from '../fonts.js';
import { INK } from '../ink.js';
import { para } from '../paragraph.js';
import { subHeading, tableOf } from '../papers/sections.js';
import { CONTENT_WIDTH, MARGIN } from '../sheet.js';
import { cell, table, type Cell } from '../table.js';
import { mark, open } from '../tags.js';
import { text } from '../text-blocks.js';
import { ageNames, evenSteps } from './age-axis.js';
import type { AheadView, GroupView, MonthView } from './ahead-view.js';
import { drawCurve, type CurvePanel } from './curve-panel.js';

const HEIGHT = 121;

/** Each group of hulls: its curves with bands, the same in figures, and how many more claims to expect. */
export const groupBlocks = (fonts: Fonts, groups: readonly GroupView[]): readonly Block[] => {
  const days = Math.max(1, ...groups.flatMap(({ curve, mean }) => [...curve, ...mean].map((step) => step.days)));
  return groups.flatMap((group) => [
    subHeading(fonts, group.group),
    ...(group.curve.length === 0 ? [] : [curves(fonts, group, days * 1.04)]),
    text(fonts, [para(group.sentence)], 4),
    facts(fonts, group.says),
    ...tableOf(group.ages, (rows) =>
      table(
        fonts,
        [
          { title: 'Age', share: 0.16 },
          { title: 'Hulls watched', share: 0.18 },
          { title: 'Without a claim, 95 %', share: 0.33 },
          { title: 'Claims a hull, mean, 95 %', share: 0.33 },
        ],
        rows.map(({ age, atRisk, without, mean }) => [cell(age), cell(atRisk), cell(without), cell(mean)]),
      ),
    ),
  ]);
};

const curves = (fonts: Fonts, group: GroupView, mostDays: number): Block => ({
  ...{ before: 4, lead: HEIGHT, keepWithNext: true },
  draw: (sheet, parent) => {
    const { doc, y } = sheet;
    const width = CONTENT_WIDTH / 2 - 6;
    const last = group.curve.at(-1);
    const alt = `Two curves of ${group.group} by age in months: the share of hulls without a claim, ${percent(last?.without ?? 1)} at the last claim, and the mean number of claims a hull, ${(group.mean.at(-1)?.mean ?? 0).toPrecision(2)}.`;
    const figure = open(doc, parent, 'Figure', { alt });
    mark(doc, figure, 'Figure', () => {
      drawCurve(doc, fonts, survival(group, mostDays), { x: MARGIN, y, width, height: HEIGHT - 4 });
      drawCurve(doc, fonts, meanClaims(group, mostDays), { x: MARGIN + width + 12, y, width, height: HEIGHT - 4 });
    });
    figure.end();
    sheet.y += HEIGHT;
  },
});

const percent = (share: number): string => `${Number((100 * share).toPrecision(3))} %`;

const survival = ({ curve }: GroupView, mostDays: number): CurvePanel => {
  const lowest = Math.min(1, ...curve.map(({ without, lower }) => lower ?? without));
  const steps = evenSteps(Math.max(0.05, 1 - lowest));
  const least = Math.max(0, 1 - (steps.at(-1) ?? 1));
  return {
    title: 'Hulls without a claim, by age in months',
    steps: curve.map(({ days, without, lower, upper }) => ({ x: days, y: without, lower, upper })),
    ...{ start: 1, most: { x: mostDays, y: 1 }, least: { y: least }, xs: ageNames(mostDays) },
    ys: steps.flatMap((step) => (1 - step < -1e-9 ? [] : [[1 - step, percent(1 - step)] as const])),
  };
};

const meanClaims = ({ mean }: GroupView, mostDays: number): CurvePanel => {
  const steps = evenSteps(Math.max(...mean.map(({ upper }) => upper)));
  return {
    title: 'Claims a hull, mean, by age in months',
    steps: mean.map(({ days, mean: y, lower, upper }) => ({ x: days, y, lower, upper })),
    ...{ start: 0, most: { x: mostDays, y: steps.at(-1) ?? 1 }, least: { y: 0 }, xs: ageNames(mostDays) },
    ys: steps.map((step) => [step, String(step)] as const),
  };
};

/** First claims expected month by month: bars of the first group, and the figures of each. */
export const monthsBlocks = (fonts: Fonts, { months, groups }: AheadView): readonly Block[] =>
  tableOf(months, (rows) => {
    const most = Math.max(...rows.map(({ expected }) => expected[0] ?? 0));
    return table(
      fonts,
      [
        { title: 'Month', share: 0.14 },
        { title: `${groups[0]?.group ?? ''}, as bars`, share: 0.26 },
        ...groups.map(({ group }) => ({ title: group, share: 0.6 / groups.length })),
      ],
      rows.map((row) => [
        cell(row.month, 'code'),
        bar(row, most),
        ...row.expected.map((value, i) => cell(expectedWords(value, row.limits[i] ?? null), 'code')),
      ]),
    );
  }).flatMap((block) => [
    subHeading(fonts, 'First claims expected in each month ahead, 90 % of each month by itself'),
    block,
  ]);

const expectedWords = (value: number | null, limits: MonthView['limits'][number]): string => {
  if (value === null) return 'no one number';
  return limits === null ? value.toFixed(2) : `${value.toFixed(2)} (${limits.lower} to ${limits.upper})`;
};

const bar = ({ month, expected }: MonthView, most: number): Cell => {
  const value = expected[0] ?? 0;
  return {
    paragraphs: [],
    alt: `${value.toFixed(2)} first claims expected in ${month}.`,
    paint: (doc, { x, y, width, height }) => {
      if (most > 0 && value > 0) doc.rect(x, y + 4, (width * value) / most, height - 8).fill(INK.hatch);
    },
  };
};
