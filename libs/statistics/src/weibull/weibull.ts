import gammaln from '@stdlib/math-base-special-gammaln';

/** A Weibull distribution of the age at the first claim: F(t) = 1 - exp(-(t/eta)^beta). */
export interface Weibull {
  /** Shape, above 0: under 1 early trouble, over 1 ageing. Survival programs print scale = 1/beta. */
  readonly beta: number;
  /** Characteristic age, by which 63.2 % have a claim, in the unit of the ages. Their intercept is log eta. */
  readonly eta: number;
}

/** The cumulative hazard up to an age; none before launch, which is what an age below 0 says. */
export const cumulativeHazard = ({ beta, eta }: Weibull, age: number): number => (Math.max(0, age) / eta) ** beta;

/** The age by which a share of hulls has a claim. */
export const weibullAge = ({ beta, eta }: Weibull, share: number): number => eta * (-Math.log1p(-share)) ** (1 / beta);

/** Mean and standard deviation of the age at the claim. */
export const weibullMoments = ({ beta, eta }: Weibull): { readonly mean: number; readonly deviation: number } => {
  const first = Math.exp(gammaln(1 + 1 / beta));
  const second = Math.exp(gammaln(1 + 2 / beta));
  return { mean: eta * first, deviation: eta * Math.sqrt(second - first * first) };
};
