import { kilogramsOf, materialOf, type MaterialCode } from './materials.js';
import { lotAmount, receive } from './receive.js';
import { BAD_LOT, SET_ASIDE_KG } from './set-aside.js';
import type { Draft, Seeded } from './step.js';
import { dayOf } from './working-days.js';

/** A lot that is being used up. */
interface OpenLot {
  readonly code: string;
  leftKg: number;
  /** Day from which the next lot is opened: this one would expire before it is used up. */
  readonly until: string;
}

/** What was taken of one lot. */
export interface Portion {
  readonly lot: string;
  readonly kg: number;
}

/** Rests smaller than this are not scraped out of a drum, kg. */
const LEAST_REST_KG = 5;

/** The store while the plan is made: lots are used up one after another, and the next is received in time. */
export class PlannedStore {
  readonly received: Draft[] = [];
  private readonly open = new Map<MaterialCode, OpenLot>();
  private readonly counts = new Map<MaterialCode, number>();
  private setAsideKg = 0;

  constructor(private readonly demo: Seeded) {}

  /** Takes all of an amount from one lot; a rest of the lot before that is too small is left over. */
  take(material: MaterialCode, kg: number, at: string): string {
    const open = this.open.get(material);
    const lot = open !== undefined && open.leftKg >= kg && at < open.until ? open : this.next(material, at);
    lot.leftKg -= kg;
    return lot.code;
  }

  /** Takes from the drums that were set aside, or as usual where they do not suffice. */
  takeSetAside(material: MaterialCode, kg: number, at: string): string {
    if (this.setAsideKg < kg) return this.take(material, kg, at);
    this.setAsideKg -= kg;
    return BAD_LOT;
  }

  /** Takes an amount from two lots when the open one does not suffice: so the rest of a drum goes into a tank first. */
  takeSplit(material: MaterialCode, kg: number, at: string): readonly Portion[] {
    const open = this.open.get(material);
    const rest = Math.floor((open?.leftKg ?? 0) * 10) / 10;
    if (open === undefined || rest < LEAST_REST_KG || rest > kg - LEAST_REST_KG || at >= open.until) {
      return [{ lot: this.take(material, kg, at), kg }];
    }
    open.leftKg = 0;
    return [
      { lot: open.code, kg: rest },
      { lot: this.take(material, kg - rest, at), kg: kg - rest },
    ];
  }

  private next(material: MaterialCode, at: string): OpenLot {
    const count = (this.counts.get(material) ?? 0) + 1;
    this.counts.set(material, count);
    const code = `${material}-${String(count).padStart(2, '0')}`;
    this.received.push(...receive(this.demo, material, code, at));
    const cameKg = kilogramsOf(material, lotAmount(material));
    if (code === BAD_LOT) this.setAsideKg = SET_ASIDE_KG;
    const asideKg = code === BAD_LOT ? SET_ASIDE_KG : 0;
    const lot = { code, leftKg: cameKg - asideKg, until: untilOf(material, at) };
    this.open.set(material, lot);
    return lot;
  }
}

/** A lot was made some weeks before it came, and what is mixed of it stands for some days. */
const BEFORE_EXPIRY_DAYS = 55;

const untilOf = (material: MaterialCode, at: string): string => {
  const { shelfLifeDays } = materialOf(material);
  return shelfLifeDays === undefined ? '9999' : dayOf(at, shelfLifeDays - BEFORE_EXPIRY_DAYS);
};
