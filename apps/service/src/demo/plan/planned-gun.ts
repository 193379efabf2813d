import { GUNS, type DemoGun, type GunCode } from './guns.js';
import type { MaterialCode } from './materials.js';
import { LEAD } from './people.js';
import { draft, type Draft } from './step.js';
import { later } from './working-days.js';

type Feed = 'resin' | 'catalyst';

/** A gun while the plan is made: what is hooked up to it. */
export class PlannedGun {
  private readonly hooked = new Map<Feed, string>();
  private readonly gun: DemoGun;
  /** When something was sprayed last. */
  usedAt = '';

  constructor(private readonly code: GunCode) {
    this.gun = GUNS[code];
  }

  /** Kilograms of resin, or gel coat, and of catalyst in what is sprayed. */
  partsOf(kg: number): readonly { readonly feed: Feed; readonly material: MaterialCode; readonly kg: number }[] {
    const resin = kg / (1 + this.gun.catalystPercent / 100);
    return [
      { feed: 'resin', material: this.gun.material, kg: resin },
      { feed: 'catalyst', material: this.gun.catalyst, kg: kg - resin },
    ];
  }

  get tank(): string | undefined {
    return this.gun.tank;
  }

  /** Hooks up a tank or lot before the work begins, when another hangs on the feed; sets the gun the first time. */
  hookUp(feed: Feed, to: { readonly tank: string } | { readonly lot: string }, began: string): readonly Draft[] {
    const name = 'tank' in to ? to.tank : to.lot;
    if (this.hooked.get(feed) === name) return [];
    const first = this.hooked.size === 0;
    this.hooked.set(feed, name);
    const before = later(began, -6);
    const moment = { at: before > this.usedAt ? before : later(this.usedAt, 1), by: LEAD, of: this.code };
    return [
      ...(first
        ? [
            draft(
              'setGun',
              { ...moment, name: `gun ${this.code} set`, at: later(began, -9) },
              { catalystPercent: this.gun.catalystPercent },
            ),
          ]
        : []),
      draft('hookUpGun', { ...moment, name: `gun ${this.code} ${feed} ${name}` }, { feed, ...to }),
    ];
  }
}
