import fc from 'fast-check';

/** A lot of an invented plant; all masses are decimal kg with three places. */
export interface InventedLot {
  readonly id: string;
  readonly role: string;
  readonly received: boolean;
  readonly origin: 'received' | 'mixed' | 'tank' | 'cut';
  /** Mass received, or the sum of the inputs. Never is more drawn and used than this. */
  readonly kg: string;
}

/** Facts of an invented plant in creation order: a lot comes after everything it is made of. */
export interface InventedGenealogy {
  readonly lots: readonly InventedLot[];
  /** At most one row per lot and input. */
  readonly inputs: readonly { readonly lot: string; readonly input: string; readonly quantity: string }[];
  readonly uses: readonly {
    readonly place: string;
    readonly part: string;
    readonly lot: string;
    readonly kg: string;
  }[];
  readonly joins: readonly { readonly part: string; readonly hull: string }[];
}

/** Whole grams, so that amounts are exact; `null` takes one gram, the way to fractions below any floor. */
interface Draw {
  readonly pick: number;
  readonly permille: number | null;
}

type Step =
  | { readonly kind: 'receive'; readonly role: string; readonly grams: number }
  | { readonly kind: 'mixed' | 'cut'; readonly draws: readonly Draw[] }
  | { readonly kind: 'tank'; readonly tank: number; readonly heel: number; readonly draws: readonly Draw[] }
  | { readonly kind: 'use'; readonly part: number; readonly place: string; readonly draw: Draw };

const ROLES = ['resin', 'gel coat', 'catalyst', 'pigment', 'glass'] as const;
const PLACES = ['layer-1', 'layer-2', 'joint-1', 'repair-1'] as const;
const PARTS = 8;

/** Per cent of a tank's contents that is left in it when it is filled again. */
const heel = fc.integer({ min: 10, max: 35 });
const draw = fc.record({ pick: fc.nat(), permille: fc.option(fc.integer({ min: 1, max: 1000 }), { freq: 2 }) });
const draws = fc.array(draw, { minLength: 1, maxLength: 4 });

const receive = fc.record({
  kind: fc.constant('receive' as const),
  role: fc.constantFrom(...ROLES),
  grams: fc.integer({ min: 1, max: 10_000_000 }),
});
const make = fc.record({ kind: fc.constantFrom('mixed' as const, 'cut' as const), draws });
const fill = fc.record({ kind: fc.constant('tank' as const), tank: fc.nat({ max: 1 }), heel, draws });
const use = fc.record({
  kind: fc.constant('use' as const),
  part: fc.nat({ max: PARTS - 1 }),
  place: fc.constantFrom(...PLACES),
  draw,
});

/**
 * A plant of up to `maxSteps` receipts, mixtures, kits, tank fills with heels and uses in any order.
 *
 * Mixtures of mixtures, kits of buckets and diamonds occur; some parts are joined to no hull, some hulls have several.
 */
export const randomGenealogy = (maxSteps = 60): fc.Arbitrary<InventedGenealogy> =>
  fc
    .record({
      first: fc.array(receive, { minLength: 1, maxLength: 4 }),
      steps: fc.array(
        fc.oneof(
          { weight: 3, arbitrary: receive },
          { weight: 4, arbitrary: make },
          { weight: 4, arbitrary: fill },
          { weight: 5, arbitrary: use },
        ),
        // Without a size fast-check keeps lists to about ten, in which hardly anything is made twice over.
        { maxLength: maxSteps, size: 'max' },
      ),
      hulls: fc.array(fc.option(fc.nat({ max: 4 })), { minLength: PARTS, maxLength: PARTS }),
    })
    .map(({ first, steps, hulls }) => {
      const plant = new Plant();
      for (const step of [...first, ...steps]) plant.take(step);
      return plant.facts(hulls);
    });

/**
 * One tank filled again and again over heels of 10 to 35 %, with a hull laminated from every fill.
 *
 * A fill is made of the heel, one whole delivery, half of a second one and the half left over from the fill before.
 */
export const tankChain = (size: { minFills: number; maxFills: number }): fc.Arbitrary<InventedGenealogy> => {
  const delivery = fc.integer({ min: 100_000, max: 1_000_000 });
  const oneFill = fc.record({ heel, whole: delivery, half: delivery, used: fc.integer({ min: 1, max: 50_000 }) });
  return fc.array(oneFill, { minLength: size.minFills, maxLength: size.maxFills, size: 'max' }).map((fills) => {
    const plant = new Plant();
    fills.forEach((each, at) => plant.fillOnceMore(each, at));
    return plant.facts(fills.map((_, at) => at));
  });
};

const kg = (grams: number): string => (grams / 1000).toFixed(3);

/** Keeps what is left of every lot in grams while an invented plant works. */
class Plant {
  private readonly lots: InventedLot[] = [];
  private readonly inputs: InventedGenealogy['inputs'][number][] = [];
  private readonly uses: InventedGenealogy['uses'][number][] = [];
  /** Grams that can still be drawn. */
  private readonly left = new Map<string, number>();
  private readonly inTank = new Map<number, string>();
  private leftover: string | null = null;

  take(step: Step): void {
    if (step.kind === 'receive') this.receive(step.role, step.grams);
    else if (step.kind === 'use') this.use(this.draw([step.draw]), step.part, step.place);
    else if (step.kind === 'tank') this.fill(step.tank, step.heel, this.draw(step.draws, this.inTank.get(step.tank)));
    else this.make(step.kind, this.draw(step.draws));
  }

  fillOnceMore(each: { heel: number; whole: number; half: number; used: number }, at: number): void {
    const [whole, second] = [this.receive('resin', each.whole), this.receive('resin', each.half)];
    const drawn = new Map([
      [whole, each.whole],
      [second, Math.floor(each.half / 2)],
    ]);
    if (this.leftover !== null) drawn.set(this.leftover, this.left.get(this.leftover) ?? 0);
    for (const [lot, grams] of drawn) this.left.set(lot, (this.left.get(lot) ?? 0) - grams);
    this.leftover = second;
    const tank = this.fill(0, each.heel, drawn);
    this.left.set(tank, (this.left.get(tank) ?? 0) - each.used);
    this.use(new Map([[tank, each.used]]), at, 'layer-1');
  }

  facts(hulls: readonly (number | null)[]): InventedGenealogy {
    const parts = new Set(this.uses.map((each) => each.part));
    const joins = hulls.flatMap((hull, at) => (hull === null ? [] : [{ part: `P-${at}`, hull: `H-${hull}` }]));
    return {
      lots: this.lots,
      inputs: this.inputs,
      uses: this.uses,
      joins: joins.filter(({ part }) => parts.has(part)),
    };
  }

  private receive(role: string, grams: number): string {
    return this.book('received', role, grams);
  }

  /** Takes from lots that have something left; several draws from one lot become one. */
  private draw(wanted: readonly Draw[], except?: string): Map<string, number> {
    const drawn = new Map<string, number>();
    for (const { pick, permille } of wanted) {
      const open = [...this.left].filter(([lot, grams]) => grams > 0 && lot !== except);
      const [lot, grams] = open[pick % open.length] ?? [];
      if (lot === undefined || grams === undefined) continue;
      const taken = Math.max(1, Math.floor((grams * (permille ?? 0)) / 1000));
      drawn.set(lot, (drawn.get(lot) ?? 0) + taken);
      this.left.set(lot, grams - taken);
    }
    return drawn;
  }

  private make(origin: 'mixed' | 'cut' | 'tank', drawn: ReadonlyMap<string, number>): string {
    const total = [...drawn.values()].reduce((sum, grams) => sum + grams, 0);
    if (total === 0) return '';
    const [first = ''] = drawn.keys();
    const id = this.book(origin, this.lots.find((lot) => lot.id === first)?.role ?? '', total);
    for (const [input, grams] of drawn) this.inputs.push({ lot: id, input, quantity: kg(grams) });
    return id;
  }

  /** What is in the tank beyond the heel counts as lost: once filled up, the lot before cannot be drawn any more. */
  private fill(tank: number, percent: number, drawn: ReadonlyMap<string, number>): string {
    if (drawn.size === 0) return '';
    const before = this.inTank.get(tank);
    const kept = Math.floor(((before === undefined ? 0 : (this.left.get(before) ?? 0)) * percent) / 100);
    const all = before !== undefined && kept > 0 ? new Map([[before, kept], ...drawn]) : drawn;
    const lot = this.make('tank', all);
    if (before !== undefined) this.left.set(before, 0);
    this.inTank.set(tank, lot);
    return lot;
  }

  private use(drawn: ReadonlyMap<string, number>, part: number, place: string): void {
    for (const [lot, grams] of drawn) this.uses.push({ place, part: `P-${part}`, lot, kg: kg(grams) });
  }

  private book(origin: InventedLot['origin'], role: string, grams: number): string {
    const id = `${origin}-${String(this.lots.length + 1).padStart(4, '0')}`;
    this.lots.push({ id, role, received: origin === 'received', origin, kg: kg(grams) });
    this.left.set(id, grams);
    return id;
  }
}
