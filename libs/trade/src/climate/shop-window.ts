/** What the air of the shop must be while laminating. Temperatures C, humidity per cent, times h. */
export interface ShopWindow {
  readonly name: string;
  readonly minC: number | null;
  readonly maxC: number | null;
  readonly maxHumidityPercent: number | null;
  /** Lowest humidity where material is sprayed; brushing has none. */
  readonly minHumiditySprayingPercent: number | null;
  /** Hours for which the lowest temperature must have been kept before laminating. */
  readonly hoursBefore: number | null;
  /** How far the temperature may lie to either side of its middle within 24 h, C. */
  readonly driftC: number | null;
  readonly source: string;
}

/** Published windows a plant may choose from; its own stands beside them. */
export const SHOP_WINDOWS = {
  'class rule': {
    name: 'class rule',
    minC: 18,
    maxC: null,
    maxHumidityPercent: 80,
    minHumiditySprayingPercent: 40,
    hoursBefore: 24,
    driftC: 3,
    source: 'ICS rules for FRP ships, section 1, 102.2-5 (degrees C by context)',
  },
  'recommended workshop': {
    name: 'recommended workshop',
    minC: 18,
    maxC: 22,
    maxHumidityPercent: 70,
    minHumiditySprayingPercent: null,
    hoursBefore: null,
    driftC: null,
    source: 'ICS approval of manufacturing process, Table 2.13.1',
  },
} as const satisfies Readonly<Record<string, ShopWindow>>;

/** After laminating: cured at least so long at least so warm (class rule on production procedures, 3.2.7). */
export const CURE_IN_THE_SHOP = { hours: 48, atLeastC: 18 } as const;
