import type { EntityManager } from 'typeorm';
import type { Recipient } from '@hull-record/contracts';
import { loadNotice, type LoadedNotice } from '../../../platform/notices/load-notice.js';
import { loadRecipients } from '../../../platform/notices/load-recipients.js';
import { recomputingHold } from '../../../platform/holds/recomputing-hold.js';
import { newestOf, versions } from '../../../platform/papers/newest-of.sql.js';
import type { PlantRow } from '../../../platform/papers/plant-of.js';
import { wordPaper } from '../../../platform/papers/word-paper.js';

/** Everything that the papers of a notice word. */
export interface NoticePaper extends LoadedNotice, ReturnType<typeof wordPaper> {
  readonly newest: Date;
}

const NEWEST = newestOf([
  versions('notice', 'x.root = $1'),
  ...['notice_mailing', 'notice_report'].map((table) => versions(table, 'x.notice_id = $1')),
  versions('mailing_returned', 'x.mailing_id in (select m.root from fact.notice_mailing m where m.notice_id = $1)'),
  ...['hold_scope', 'hold_reached', 'hold_disposition', 'hold_lift', 'duty_decision'].map((table) =>
    versions(table, 'x.hold_id = $2'),
  ),
  versions('hold', 'x.root = $2'),
  ...['life_fact', 'hull_number', 'owner'].map((table) => versions(table, 'x.hull_id = any($3)')),
  versions('owner_erased', 'x.owner_id in (select o.root from fact.owner o where o.hull_id = any($3))'),
]);

/**
 * Loads a notice for paper.
 *
 * @param tx one transaction that sees one moment
 * @throws NotThere
 */
export const loadNoticePaper = async (tx: EntityManager, name: string): Promise<NoticePaper> => {
  const loaded = await loadNotice(tx, name);
  const hulls = loaded.held.rows.flatMap(({ hullId }) => (hullId === null ? [] : [hullId]));
  const [plant] = await tx.query<[PlantRow]>('select p.code as plant, p.time_zone from fact.plant p where p.id = $1', [
    loaded.hold.plantId,
  ]);
  const [{ at }] = await tx.query<[{ at: Date }]>(NEWEST, [loaded.notice.id, loaded.hold.id, hulls]);
  return { ...loaded, newest: at, ...wordPaper(plant, at, await recomputingHold(tx, loaded.hold)) };
};

/** The same with those it goes to: personal data. */
export const loadLetters = async (
  tx: EntityManager,
  name: string,
): Promise<NoticePaper & { readonly recipients: readonly Recipient[] }> => {
  const loaded = await loadNoticePaper(tx, name);
  return { ...loaded, recipients: await loadRecipients(tx, loaded.state) };
};
