import type { ModelDraw, ModelHookUp, ModelLot, ModelPlace, ModelState, PlantFacts } from './model-facts.js';
import { Times } from './times.js';

/**
 * A small plant in memory: lots, one tank, one gun, parts and hulls. It keeps what is known now and nothing of the order
 * in which it came to be known; everything else is worked out from that. Kilograms are whole, so that sums are exact.
 */
export class PlantModel implements PlantFacts {
  lots: ModelLot[] = [];
  draws: ModelDraw[] = [];
  hookUps: ModelHookUp[] = [];
  places: ModelPlace[] = [];
  losses: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  counts: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  states: ModelState[] = [];
  /** Hull of each part that is in one. */
  readonly hullOf = new Map<string, string>();
  /** The story so far, in sentences. */
  readonly story: string[] = [];
  readonly times = new Times(this);

  /** @param hulls those begun, each with its hull molding in it */
  constructor(hulls: readonly string[]) {
    for (const hull of hulls) this.hullOf.set(`${hull}-H`, hull);
  }

  get fills(): readonly ModelLot[] {
    return this.lots.filter(({ kind }) => kind === 'fill');
  }

  lot(code: string): ModelLot | undefined {
    return this.lots.find((lot) => lot.code === code);
  }

  /** Lots that can be named by those who draw at an instant: what had come or was made by then. A tank is named itself. */
  lotsBy(at: number): readonly string[] {
    return this.lots.filter((lot) => lot.kind !== 'fill' && lot.at <= at).map(({ code }) => code);
  }

  /** Whether anything names a lot, so that it cannot be withdrawn. What was drawn from the tank names the tank. */
  isNamed(code: string): boolean {
    return (
      this.draws.some(({ from }) => 'lot' in from && from.lot === code) ||
      this.hookUps.some(({ to }) => to !== null && 'lot' in to && to.lot === code)
    );
  }

  /** Forgets a lot that never was, with all that was said of it. */
  forgetLot(code: string): void {
    this.lots = this.lots.filter((lot) => lot.code !== code);
    this.draws = this.draws.filter(({ into }) => into !== code);
    this.losses = this.losses.filter(({ lot }) => lot !== code);
    this.counts = this.counts.filter(({ lot }) => lot !== code);
    this.states = this.states.filter(({ lot }) => lot !== code);
  }

  /** Forgets a place that never was, with what was used in it. */
  forgetPlace(place: ModelPlace): void {
    this.places = this.places.filter((each) => each !== place);
    this.draws = this.draws.filter(({ into }) => into !== place.id);
    if (place.kind === 'joint') this.hullOf.delete(place.part);
  }
}
