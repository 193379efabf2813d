import type { EntityManager } from 'typeorm';
import type { Skin } from '@hull-record/trade';
import { Unprocessable } from '../refusals.js';

/**
 * The skin of a part, from its model.
 *
 * @throws Unprocessable `no-skin` when the model has none for this kind of part
 */
export const findSkin = async (tx: EntityManager, partId: string, pointer: string): Promise<Skin> => {
  const [found] = await tx.query<{ skin: Skin | null; kind: string; model: string }[]>(
    'select m.skins -> p.kind as skin, p.kind, m.code as model from fact.part p join fact.model m on m.id = p.model_id where p.id = $1',
    [partId],
  );
  if (!found?.skin) {
    throw new Unprocessable(
      'no-skin',
      `Model ${found?.model ?? ''} has no skin for a ${found?.kind ?? 'part'}: register the model with one.`,
      pointer,
    );
  }
  return found.skin;
};
