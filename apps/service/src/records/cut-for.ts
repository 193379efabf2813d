import type { EntityManager } from 'typeorm';
import type { RecordCut } from '@hull-record/contracts';
import type { BuildRecordView } from '@hull-record/paper';
import { standing } from '../platform/facts/standing.js';

const BADGES = `
  select p.badge, coalesce((select string_agg(distinct r.role, ' or ' order by r.role) from fact.person_role r
      where r.person_id = p.root and ${standing('r')}), 'person without a role') as role
  from fact.person p where ${standing('p')} order by p.badge`;

/** Badges of the plant, each with the words for the roles of who wears it. */
export const loadRoles = async (tx: EntityManager): Promise<ReadonlyMap<string, string>> => {
  const rows = await tx.query<{ badge: string; role: string }[]>(BADGES);
  return new Map(rows.map(({ badge, role }) => [badge, role]));
};

const SAYS: Readonly<Record<RecordCut, string>> = {
  internal: 'internal: people by badge',
  dealer: 'for the dealer: people by role; notes are left out, reasons of decisions and corrections stay',
  expert: 'for an outside expert: people by number, the same for the same person; all else as recorded',
};

/**
 * A build record as it may be handed out. Names are on none; the dealer's tells roles (and is worded of facts without
 * notes), an outside expert's tells people apart without saying who they are.
 *
 * @param roles badges of the plant with their roles
 */
export const cutFor = (view: BuildRecordView, cut: RecordCut, roles: ReadonlyMap<string, string>): BuildRecordView => {
  const named = { ...view, cut: SAYS[cut] };
  if (cut === 'internal' || roles.size === 0) return named;
  const badges = new RegExp(`(?<![\\w-])(?:${[...roles.keys()].map(escaped).join('|')})(?![\\w-])`, 'g');
  const numbers = new Map<string, number>();
  const numbered = (badge: string): string => {
    const number = numbers.get(badge) ?? numbers.size + 1;
    numbers.set(badge, number);
    return `person ${number}`;
  };
  const nameOf = cut === 'dealer' ? (badge: string) => roles.get(badge) ?? '' : numbered;
  return mapTexts(named, (text) => text.replace(badges, nameOf)) as BuildRecordView;
};

const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);

/** The same value with each text in it changed. */
const mapTexts = (value: unknown, change: (text: string) => string): unknown => {
  if (typeof value === 'string') return change(value);
  if (Array.isArray(value)) return value.map((each) => mapTexts(each, change));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, mapTexts(each, change)]));
};
