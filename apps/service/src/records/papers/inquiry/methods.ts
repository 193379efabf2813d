import type { MethodView } from '@hull-record/paper';

/** The methods of a look, in the order in which they are gone through, with where each is described. */
export const METHODS: readonly MethodView[] = [
  {
    what: 'Triangle',
    how: 'Claims by build month and months in service. A row points to what was built then, a column to age, a slanting line to a date.',
    source: 'Kalbfleisch, Lawless and Robinson 1991; Lawless 1998',
  },
  {
    what: 'Classes',
    how: 'Lots in the same hulls are one hypothesis. Nothing splits them, neither the alphabet nor a prior.',
    source: 'Aldridge, Johnson and Scarlett 2019 (arXiv 1902.06002), on group testing',
  },
  {
    what: 'Cannot be judged',
    how: 'With fixed margins a test has a smallest attainable p. Where that is no small one, the class is set apart and not counted as a test.',
    source: 'Tarone 1990',
  },
  {
    what: 'Stratified test',
    how: 'Exact log-rank test within strata, one-sided (as many or more), given all risk sets; claims before ends of watching at the same age. Hazard odds: conditional, exact limits, a tail of 2.5 % on each side.',
    source: 'Mantel 1966; Cox 1972, the exact method for ties',
  },
  {
    what: 'Observed / expected',
    how: 'Expected: summed over the risk sets of the strata. Limits: exact Poisson, of the observed number.',
    source: 'exact Poisson limits, Garwood 1936',
  },
  {
    what: 'Raw table',
    how: 'Fisher’s exact test, one-sided, of all hulls at once; a flag where claims expected within strata differ by a quarter from those of as many hulls at random.',
    source: 'Fisher 1935; Agresti 2002, section 3.5',
  },
  {
    what: 'Many tests',
    how: 'q over all classes of all families together. For the leaders a p by permutation: in each seeded world the claims of a risk set fall by chance on hulls at risk in it.',
    source: 'Benjamini and Hochberg 1995; Westfall and Young 1993',
  },
  {
    what: 'Posterior',
    how: 'Over sets of bad lots: a hull of age t is spared by a bad lot with 1 - theta w F(t), w its share (the largest of the lots of a class), F what has shown by t; what is not recorded may have a hazard of its own in each stratum, at a price. Gone through over background and prior; the least and the most are shown.',
    source:
      'Pearl 1988 (noisy-or); Abreu and van Gemund 2010; grid of assumptions: a choice of the builder of this program',
  },
  {
    what: 'More of it',
    how: 'Log-rank test for a trend in share, within the hulls that have any of it, those below the threshold too.',
    source: 'Tarone 1975',
  },
  {
    what: 'Cover',
    how: 'Greedy cover, with the runner-up of every step. An explanation to look at, not a proof.',
    source: 'Aldridge, Johnson and Scarlett 2019',
  },
  {
    what: 'Curves by age',
    how: 'Share without a claim, band on the log(-log) scale. Mean number of claims a hull with a robust band; repeated claims count.',
    source: 'Kaplan and Meier 1958, Greenwood 1926; Nelson 1988, Lawless and Nadeau 1995',
  },
  {
    what: 'Forecast',
    how: 'Weibull by maximum likelihood, and of a part of the hulls alone; 90 % interval from seeded draws of the parameters. Under three claims a range over shapes, never one number.',
    source: 'Meeker 1987; Escobar and Meeker 1999; NIST/SEMATECH e-Handbook 8.4.1.3; Abernethy 1983',
  },
  {
    what: 'Places',
    how: 'Scan over groups of zones by hulls affected, with a simulated p: (1 + as extreme) / (1 + simulations).',
    source: 'Kulldorff 1997; bands along the length: ICS rules for FRP ships, section 2',
  },
];
