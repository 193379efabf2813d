import type { CaseAnswer, CaseClass } from '@hull-record/contracts';

const percent = (share: number): string => `${(100 * share).toPrecision(3)} %`;

/** What was found, in words that say no more than the figures. */
export const sentencesOf = (
  { verdict, classes, tests, cover }: Pick<CaseAnswer, 'verdict' | 'classes' | 'tests' | 'cover'>,
  hulls: { readonly atRisk: number; readonly withClaim: number },
  exploratory: boolean,
): string[] => {
  const counted = `${hulls.withClaim} of ${hulls.atRisk} hulls at risk have a first claim that counts; ${tests} classes of lots were tested.`;
  const [leader] = classes;
  const word = exploratory && verdict === 'strong' ? 'strong, exploratory' : verdict;
  if (verdict === 'no lot stands out' || !leader) return [counted, 'No lot stands out.'];
  const together =
    leader.lots.length > 1 ? [`${leader.named} are in exactly the same hulls: the data cannot say which of them.`] : [];
  const covered = cover.steps[0];
  return [
    counted,
    `Claims are associated with ${leader.named}: ${leader.observed} of ${leader.hulls} hulls that hold it have a claim, ${leader.expected.toFixed(1)} were expected (q ${leader.q.toPrecision(2)}${oddsOf(leader)}). Word: ${word}.`,
    ...together,
    ...(covered
      ? [
          `It covers ${covered.explains} claims; ${cover.unexplained.length} ${cover.unexplained.length === 1 ? 'is' : 'are'} covered by nothing.`,
        ]
      : []),
  ];
};

const oddsOf = ({ hazardOdds: { lower } }: CaseClass): string =>
  lower === null ? '' : `, hazard odds at least ${lower.toPrecision(3)}`;

/** What the data cannot say. */
export const cannotSay = (
  { classes, untestable }: Pick<CaseAnswer, 'classes' | 'untestable'>,
  hulls: CaseAnswer['hulls'],
  exploratory: boolean,
): string[] => [
  'That a lot is associated with claims does not say that it led to them.',
  ...(exploratory
    ? [
        'Exploratory: settings were frozen after claims that they are tested by. Freeze, and test by claims recorded later.',
      ]
    : []),
  ...(untestable.count > 0
    ? [`${untestable.count} classes cannot be judged: they are in nearly all hulls of their strata, or in too few.`]
    : []),
  ...(classes[0] && classes[0].nearlySame.length > 0
    ? [`${classes[0].nearlySame.join(', ')} are in nearly the same hulls, and can hardly be told apart from it.`]
    : []),
  ...(hulls.withoutOrigin > 0
    ? [
        `${hulls.withoutOrigin} hulls (${percent(hulls.shareWithoutOrigin)}) have no day of origin on record and are left out, ${hulls.withoutOriginWithClaim} of them with a claim.`,
      ]
    : []),
];

/** What would settle it next. */
export const nextSteps = ({ classes }: Pick<CaseAnswer, 'classes'>, claimless: readonly string[]): string[] => {
  const [leader] = classes.filter(({ strength }) => strength !== 'none');
  if (!leader) return ['Wait for more claims, or compare by another kind or time origin.'];
  return [
    `Test retained samples of ${leader.lots.join(', ')}${leader.nearlySame.length > 0 ? `, and of ${leader.nearlySame.join(', ')}` : ''}, by licensed practice.`,
    ...(claimless.length > 0
      ? [
          `Inspect hulls that hold much of it and have no claim: ${claimless.slice(0, 10).join(', ')}. Claims found so are prompted.`,
        ]
      : []),
  ];
};
