import { amount } from './amounts.js';
import type { Random } from './random.js';
import { draft, type Draft, type Need } from './step.js';
import { RECEIVING } from './people.js';
import { TANKS, type TankCode } from './tanks.js';
import { later } from './working-days.js';

/** Never drawn down below this fraction of a full tank. */
const LEAST_HEEL = 0.11;

/** A bulk tank while the plan is made: how much is in it, and when somebody last drew from it or filled it. */
export class PlannedTank {
  private inIt = 0;
  private fills = 0;
  private lastAt = '';
  private refillBelow = 0;

  constructor(
    private readonly code: TankCode,
    private readonly random: Random,
  ) {}

  /** Draws from the tank; before that it is filled when too little would be left. Fills need material themselves. */
  draw(kg: number, { at, began }: { readonly at: string; readonly began: string }): readonly Draft[] {
    const { fullKg } = TANKS[this.code];
    const fill = this.inIt - kg < LEAST_HEEL * fullKg || this.inIt < this.refillBelow ? [this.fill(began)] : [];
    this.inIt -= kg;
    this.lastAt = at;
    return fill;
  }

  /** Fills it before the work begins for which it is wanted, but after what was drawn last. The heel is dipped. */
  private fill(began: string): Draft {
    const { material, fullKg } = TANKS[this.code];
    const heelKg = this.fills === 0 ? 0 : this.inIt * this.random.normal(1, 0.008);
    const wantedKg = Math.round(fullKg * this.random.between(0.94, 1.04) - heelKg);
    const before = later(began, -18);
    const at = before > this.lastAt ? before : later(this.lastAt, 1);
    this.fills += 1;
    this.inIt = heelKg + wantedKg;
    this.refillBelow = fullKg * this.random.between(0.12, 0.34);
    const code = `${this.code}-${String(this.fills).padStart(2, '0')}`;
    const need: Need = { material, amount: amount(wantedKg, 'kg') };
    const heel = this.fills === 1 ? null : amount(heelKg, 'kg', 'metered');
    return draft('fillTank', { name: `fill ${code}`, at, by: RECEIVING, of: this.code }, { code, heel }, [need]);
  }
}
