import { headHash, readHead, rootOf, type SignedTreeHead, signTreeHead, headLine } from '@hull-record/evidence';
import { Injectable } from '@nestjs/common';
import { DataSource, type EntityManager } from 'typeorm';
import { now } from '../clock.js';
import { KeyRing } from './key-ring.js';
import { aloneInJournal, sealedTree } from './seal-journal.js';
import { TreeHeadEntity } from './sealed.entities.js';

/** Signs what is sealed of the journal of a plant. */
@Injectable()
export class SignHead {
  constructor(
    private readonly db: DataSource,
    private readonly keys: KeyRing,
  ) {}

  /**
   * A head over all that is sealed: the newest one when it says that already and by the key that signs now, else a new
   * one. Null while nothing is sealed.
   */
  of(plantId: string): Promise<SignedTreeHead | null> {
    return this.db.transaction(async (tx) => {
      await aloneInJournal(tx, plantId);
      const tree = await sealedTree(tx, plantId);
      if (tree.size === 0) return null;
      const last = await newestHead(tx, plantId);
      const { key, keyId } = this.keys.newest();
      if (last && last.head.size === tree.size && last.head.keyId === keyId) return last.head;
      const [plant] = await tx.query<{ code: string }[]>('select code from fact.plant where id = $1', [plantId]);
      const told = {
        plant: plant?.code ?? '',
        size: tree.size,
        root: Buffer.from(rootOf(tree)).toString('hex'),
        at: now().toISOString(),
        previous: last ? headHash(last.head) : null,
      };
      const head = signTreeHead(told, key);
      await tx.insert(TreeHeadEntity, {
        plantId,
        number: (last?.number ?? 0) + 1,
        size: String(tree.size),
        signedAt: new Date(told.at),
        line: headLine(head),
      });
      return head;
    });
  }

  /** A head for each plant. */
  async all(): Promise<void> {
    const plants = await this.db.query<{ id: string }[]>('select id from fact.plant order by code');
    for (const { id } of plants) await this.of(id);
  }
}

/** The newest head of a plant, with its number. */
export const newestHead = async (
  tx: EntityManager,
  plantId: string,
): Promise<{ readonly number: number; readonly head: SignedTreeHead } | undefined> => {
  const [row] = await tx.query<{ number: number; line: string }[]>(
    'select number, line from fact.tree_head where plant_id = $1 order by number desc limit 1',
    [plantId],
  );
  return row && { number: row.number, head: readHead(row.line) };
};
