import type { DayLot } from '@hull-record/contracts';
import type { Day, NowLayer } from './now.js';
import type { Unnamed } from './unnamed.js';

/** Where material comes from: a lot by its code, the lot that a tank holds, what feeds a gun, or nobody knows. */
export interface Source {
  readonly kind: 'lot' | 'tank' | 'gun' | 'unidentified';
  readonly code: string;
  readonly origin: string;
  readonly leftKg: number | null;
  /** Of what nobody can name. */
  readonly unnamed?: Unnamed;
}

/** What nobody can name, as a source. */
export const unnamedSource = (unnamed: Unnamed): Source => ({
  ...{ kind: 'unidentified', code: '', origin: 'unidentified', leftKg: null },
  unnamed,
});

/** One thing that a layer takes: which of these materials, how much for all parts together, and from where. */
export interface Line {
  /** Codes of the materials that may be taken, the first of which gives its name. */
  readonly materials: readonly string[];
  readonly quantity: string;
  readonly unit: string;
  readonly source: Source | null;
}

type Allowed = NowLayer['scheduled']['materials'][number];

/**
 * What a layer takes as scheduled, for so many parts, with what is at hand: a gun that sprays it, the newest bucket,
 * the kit that was cut, the tank, else the lot that expires first (systematic use: LR Rules for Materials 2022 Ch 14
 * Sec 5.3.5). Materials of one role with one target stand for each other.
 *
 * @param today of the plant, yyyy-mm-dd
 */
export const propose = (day: Day, { scheduled }: NowLayer, count: number, today: string): readonly Line[] => {
  const lines = groupsOf(day, scheduled.materials).map((group): Line => {
    const materials = group.map(({ material }) => material);
    const target = group[0]?.target;
    const source = sourcesOf(day, materials, today)[0] ?? null;
    return { materials, quantity: times(target?.quantity, count), unit: target?.unit ?? 'kg', source };
  });
  return withKits(day, lines, count);
};

const groupsOf = (day: Day, allowed: readonly Allowed[]): readonly (readonly Allowed[])[] => {
  const roleOf = (code: string): string => day.materials.find((material) => material.code === code)?.role ?? code;
  const groups = new Map<string, Allowed[]>();
  for (const each of allowed) {
    const key = `${roleOf(each.material)} ${each.target?.quantity} ${each.target?.unit}`;
    groups.set(key, [...(groups.get(key) ?? []), each]);
  }
  // Two plies of different glass may have one target: glass is never taken for other glass.
  return [...groups.values()].flatMap((group) =>
    group.some(({ material }) => ['glass', 'core', 'board'].includes(roleOf(material)))
      ? group.map((one) => [one])
      : [group],
  );
};

/** A target for so many parts, as a plain decimal. */
const times = (quantity: unknown, count: number): string =>
  quantity === undefined ? '' : String(Number((Number(quantity) * count).toFixed(6)));

/** A kit is used whole: what is in it stands in one line, in kilograms. Each part has its own. */
const withKits = (day: Day, lines: readonly Line[], count: number): readonly Line[] => {
  const kits = new Set<string>();
  return lines.flatMap((line) => {
    const kit = line.source?.origin === 'cut' ? day.lots.find(({ code }) => code === line.source?.code) : undefined;
    if (kit === undefined) return [line];
    if (count > 1) return [{ ...line, source: null }];
    if (kits.has(kit.code)) return [];
    kits.add(kit.code);
    return [{ ...line, materials: kit.materials, quantity: String(Number(kit.leftKg.toFixed(3))), unit: 'kg' }];
  });
};

export const isUsable = (lot: DayLot, today: string): boolean =>
  lot.state === 'released' && lot.holds.length === 0 && (lot.expiresOn === null || lot.expiresOn >= today);

/** The order in which origins are at hand. */
const AT_HAND = ['mixed', 'cut', 'tank', 'received'];

/** What some material can be taken from, the likeliest first; nothing expired, held or not released. */
export const sourcesOf = (day: Day, materials: readonly string[], today: string): readonly Source[] => {
  const isOf = (of: readonly string[]): boolean => of.some((code) => materials.includes(code));
  const guns = day.guns
    .filter(({ feeds }) => feeds.some((feed) => feed.feed !== 'catalyst' && isOf(feed.materials)))
    .map(({ code }): Source => ({ kind: 'gun', code, origin: 'gun', leftKg: null }));
  const lots = day.lots
    .filter((lot) => isUsable(lot, today) && isOf(lot.materials))
    .sort((a, b) => AT_HAND.indexOf(a.origin) - AT_HAND.indexOf(b.origin) || byUse(a, b))
    .map(({ code, tank, origin, leftKg }): Source =>
      tank === null ? { kind: 'lot', code, origin, leftKg } : { kind: 'tank', code: tank, origin, leftKg },
    );
  return [...guns, ...lots];
};

/** Buckets and kits: the newest first; what came in: what expires first. */
const byUse = (a: DayLot, b: DayLot): number =>
  a.origin === 'mixed' || a.origin === 'cut'
    ? Date.parse(b.happenedAt) - Date.parse(a.happenedAt)
    : (a.expiresOn ?? '9999').localeCompare(b.expiresOn ?? '9999');
