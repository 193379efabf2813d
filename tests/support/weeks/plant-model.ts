/** From what something is drawn. */
export type Source = { readonly lot: string } | { readonly tank: true } | { readonly gun: true };

export interface ModelFill {
  readonly code: string;
  readonly id: string;
  readonly at: number;
  readonly heelKg: number | null;
  readonly inputLot: string;
  readonly inputKg: number;
}

export interface ModelDraw {
  readonly root: string;
  readonly at: number;
  readonly from: Source;
  kg: number;
}

export interface ModelHookUp {
  id: string;
  at: number;
  readonly to: { readonly lot: string } | { readonly tank: true } | null;
}

interface Event {
  readonly at: number;
  readonly out: number;
  /** What was counted then; what was drawn at the same instant goes before it. */
  readonly counted?: number;
}

/**
 * A small plant in memory: received lots, one tank, one gun, one hull. It knows what happened when, not in which order
 * it was entered, and works everything out anew from that. Kilograms are whole, so that sums are exact.
 */
export class PlantModel {
  readonly received = new Map<string, number>();
  fills: ModelFill[] = [];
  hookUps: ModelHookUp[] = [];
  draws: ModelDraw[] = [];
  readonly losses: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  readonly counts: { readonly lot: string; readonly at: number; readonly kg: number }[] = [];
  /** The story so far, in sentences. */
  readonly story: string[] = [];

  /** The fill that was in the tank at an instant. */
  inTank(at: number): ModelFill | undefined {
    return newest(this.fills, at);
  }

  /** The lot a draw is of; undefined when nobody can say. */
  lotOf({ from, at }: Pick<ModelDraw, 'from' | 'at'>): string | undefined {
    if ('lot' in from) return from.lot;
    if ('tank' in from) return this.inTank(at)?.code;
    const fed = newest(this.hookUps, at)?.to;
    if (!fed) return undefined;
    return 'lot' in fed ? fed.lot : this.inTank(at)?.code;
  }

  /** Lots that something can be drawn of or counted, by name. */
  get lots(): readonly string[] {
    return [...this.received.keys()];
  }

  /** Kilograms left of a lot by the book. */
  left(lot: string): number {
    const fill = this.fills.find(({ code }) => code === lot);
    const amount = fill ? (fill.heelKg ?? 0) + fill.inputKg : (this.received.get(lot) ?? 0);
    return this.events(lot, fill)
      .sort((a, b) => a.at - b.at || Number(a.counted !== undefined) - Number(b.counted !== undefined))
      .reduce((left, { out, counted }) => counted ?? left - out, amount);
  }

  private events(lot: string, fill: ModelFill | undefined): Event[] {
    const next = fill && this.fills.filter(({ at }) => at > fill.at).sort((a, b) => a.at - b.at)[0];
    return [
      ...this.draws.filter((draw) => this.lotOf(draw) === lot).map(({ at, kg }) => ({ at, out: kg })),
      ...this.fills.filter(({ inputLot }) => inputLot === lot).map(({ at, inputKg }) => ({ at, out: inputKg })),
      ...this.losses.filter((loss) => loss.lot === lot).map(({ at, kg }) => ({ at, out: kg })),
      ...this.counts.filter((count) => count.lot === lot).map(({ at, kg }) => ({ at, out: 0, counted: kg })),
      ...(next
        ? [
            { at: next.at, out: next.heelKg ?? 0 },
            { at: next.at, out: 0, counted: 0 },
          ]
        : []),
    ];
  }
}

const newest = <T extends { readonly at: number }>(all: readonly T[], at: number): T | undefined =>
  all.filter((each) => each.at <= at).sort((a, b) => b.at - a.at)[0];
