import type { ModelDraw, ModelLot, PlantFacts } from './model-facts.js';

interface Event {
  readonly at: number;
  readonly out: number;
  /** What was counted then; what was drawn at the same instant goes before it. */
  readonly counted?: number;
}

/** What follows from when things happened: what was in the tank, of which lot a draw is, how much is left. */
export class Times {
  constructor(private readonly model: PlantFacts) {}

  /** The fill that was in the tank at an instant. */
  inTank(at: number): ModelLot | undefined {
    return newest(this.model.fills, at);
  }

  /** The fill that a heel is of; undefined when nobody can say. */
  fillBefore(fill: ModelLot): ModelLot | undefined {
    return newest(
      this.model.fills.filter((each) => each !== fill),
      fill.at,
    );
  }

  /** The lot a draw is of; undefined when nobody can say. */
  lotOf({ from, at }: Pick<ModelDraw, 'from' | 'at'>): string | undefined {
    if ('lot' in from) return from.lot;
    if ('tank' in from) return this.inTank(at)?.code;
    const fed = newest(this.model.hookUps, at)?.to;
    if (!fed) return undefined;
    return 'lot' in fed ? fed.lot : this.inTank(at)?.code;
  }

  /** The state of a lot, as the newest word on it says. */
  stateOf(code: string, at = Infinity): string {
    const said = this.model.states.filter(({ lot }) => lot === code);
    return newest(said, at)?.state ?? 'released';
  }

  /** Kilograms of a lot as it came or was made. */
  weight({ code, kg, heelKg }: ModelLot): number {
    const inputs = this.model.draws.filter(({ into }) => into === code);
    return kg ?? inputs.reduce((sum, draw) => sum + draw.kg, heelKg ?? 0);
  }

  /** Kilograms left of a lot by the book. */
  left(lot: ModelLot): number {
    return this.events(lot)
      .sort((a, b) => a.at - b.at || Number(a.counted !== undefined) - Number(b.counted !== undefined))
      .reduce((left, { out, counted }) => counted ?? left - out, this.weight(lot));
  }

  private events(lot: ModelLot): Event[] {
    const { draws, losses, counts } = this.model;
    const next = lot.kind === 'fill' && this.fillAfter(lot);
    return [
      ...draws.filter((draw) => this.lotOf(draw) === lot.code).map(({ at, kg }) => ({ at, out: kg })),
      ...losses.filter((loss) => loss.lot === lot.code).map(({ at, kg }) => ({ at, out: kg })),
      ...counts.filter((count) => count.lot === lot.code).map(({ at, kg }) => ({ at, out: 0, counted: kg })),
      ...(next ? [{ at: next.at, out: 0, counted: 0 }] : []),
    ];
  }

  private fillAfter(fill: ModelLot): ModelLot | undefined {
    return this.model.fills.filter(({ at }) => at > fill.at).sort((a, b) => a.at - b.at)[0];
  }
}

const newest = <T extends { readonly at: number }>(all: readonly T[], at: number): T | undefined =>
  all.filter((each) => each.at <= at).sort((a, b) => b.at - a.at)[0];
