import type { CaseAnswer, CaseClass } from '@hull-record/contracts';

/** The class that the verdict is given for: the one that all words are about. */
interface Led {
  readonly leader: CaseClass | null;
}

const percent = (share: number): string => `${(100 * share).toPrecision(3)} %`;

/** What was found, in words that say no more than the figures. */
export const sentencesOf = (
  { verdict, leader, tests, cover }: Pick<CaseAnswer, 'verdict' | 'tests' | 'cover'> & Led,
  hulls: { readonly atRisk: number; readonly withClaim: number },
  exploratory: boolean,
): string[] => {
  const counted = `${hulls.withClaim} of ${hulls.atRisk} hulls at risk have a first claim that counts; ${tests} classes of lots were tested.`;
  const word = exploratory && verdict === 'strong' ? 'strong, exploratory' : verdict;
  if (hulls.withClaim === 0)
    return [counted, 'There is nothing to judge yet: no claim counts. See why claims and hulls were left out.'];
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
          `${covered.named} covers ${covered.explains} claims by itself; ${cover.unexplained.length} ${cover.unexplained.length === 1 ? 'is' : 'are'} covered by no class.`,
        ]
      : []),
  ];
};

const oddsOf = ({ hazardOdds: { lower } }: CaseClass): string =>
  lower === null ? '' : `, hazard odds at least ${lower.toPrecision(3)}`;

/** What the data cannot say. */
export const cannotSay = (
  { leader, untestable, stable, verdict }: Pick<CaseAnswer, 'verdict' | 'stable' | 'untestable'> & Led,
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
  ...(leader && leader.nearlySame.length > 0
    ? [
        `${leader.nearlySame.join(', ')} are in nearly the same hulls, and can hardly be told apart from ${leader.named}.`,
      ]
    : []),
  ...(verdict === 'the data cannot say which' && stable === false
    ? ['Under other assumptions about the background and about how many lots are bad, another class leads.']
    : []),
  ...(hulls.beforeOrigin
    ? [`${hulls.beforeOrigin} hulls have a claim from before their time origin and are left out: look at those days.`]
    : []),
  ...(hulls.withoutOrigin > 0
    ? [
        `${hulls.withoutOrigin} hulls (${percent(hulls.shareWithoutOrigin)}) have no day of origin on record and are left out, ${hulls.withoutOriginWithClaim} of them with a claim.`,
      ]
    : []),
];

/** What would settle it next. */
export const nextSteps = (leader: CaseClass | null, claimless: readonly string[]): string[] => {
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
