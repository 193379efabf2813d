import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { Conflict } from '../platform/refusals.js';

/** Why a fact cannot be withdrawn: what still rests on it, and what to do first. */
const RESTS: Readonly<Record<string, { readonly sql: string; readonly code: string; readonly remedy: string }>> = {
  lot: {
    // What was drawn from the tank that held it, and its heel, follow the tank to the fill before.
    sql: `select from fact.used u where u.lot_id = $1 and u.tank_id is null and ${standing('u')}
      union all select from fact.lot_input i join fact.lot made on made.id = i.lot_id join fact.lot x on x.id = $1
        where i.input_id = $1 and i.tank_id is null and ${standing('i')}
          and (x.tank_id is null or made.tank_id is distinct from x.tank_id)
      union all select from fact.hook_up h where h.lot_id = $1 and ${standing('h')}`,
    code: 'lot-is-used',
    remedy: 'This lot was used, or hooked up to a gun: correct each to the lot it really was, then withdraw it.',
  },
  container: {
    sql: `select from fact.used u where u.container_id = $1 and ${standing('u')}
      union all select from fact.lot_input i where i.container_id = $1 and ${standing('i')}
      union all select from fact.hold h where h.container_id = $1 and ${standing('h')}`,
    code: 'container-is-used',
    remedy: 'Something was drawn from this container, or it is on hold: correct that first.',
  },
  lot_input: {
    sql: `select from fact.lot_input x where x.root = $1 and ${standing('x')}
      and not exists (select from fact.lot_input i where i.lot_id = x.lot_id and i.root <> x.root and ${standing('i')})`,
    code: 'lot-is-made-of-this',
    remedy: 'The lot is made of nothing else: correct what this was, or withdraw the lot.',
  },
  part_schedule: {
    sql: `select from fact.part_schedule x
      join fact.layer_record r on r.part_id = x.part_id and ${standing('r')}
      join fact.schedule_layer y on y.id = r.schedule_layer_id and y.schedule_id = x.schedule_id where x.root = $1`,
    code: 'layers-made-by-it',
    remedy: 'Layers were made by the version the part was moved to: withdraw them first.',
  },
  hold: {
    sql: `select from fact.notice n where n.hold_id = $1 and ${standing('n')}
      union all select from fact.duty_decision d where d.hold_id = $1 and ${standing('d')}`,
    code: 'duty-rests-on-this',
    remedy: 'A decision about the duty to notify, or a notice, rests on this hold: withdraw that first.',
  },
  hold_scope: {
    sql: `select from fact.hold_scope s join fact.hold_lift o on o.hold_id = s.hold_id and ${standing('o')} where s.root = $1
      union all select from fact.hold_scope s where s.root = $1 and s.turn = 1`,
    code: 'hold-rests-on-this',
    remedy: 'The hold was placed so, or is over: withdraw the hold, or its end, first.',
  },
  hold_disposition: {
    sql: `select from fact.hold_disposition d join fact.hold_lift o on o.hold_id = d.hold_id and o.closed and ${standing('o')} where d.root = $1`,
    code: 'hold-is-closed',
    remedy: 'The hold was closed on this: withdraw the closing first.',
  },
  defect: {
    sql: `select from fact.repair_defect x join fact.repair r on r.root = x.repair_id and ${standing('r')} where x.defect_id = $1`,
    code: 'defect-is-repaired',
    remedy: 'A repair of this defect stands: withdraw the repair first.',
  },
  claim: {
    sql: `select from fact.defect d join fact.repair_defect x on x.defect_id = d.root
      join fact.repair r on r.root = x.repair_id and ${standing('r')} where d.claim_id = $1 and ${standing('d')}`,
    code: 'defect-is-repaired',
    remedy: 'A repair of a defect of this claim stands: withdraw the repair first.',
  },
  joint: {
    sql: `select from fact.joint j join fact.part p on p.id = j.part_id where j.root = $1 and p.kind = 'hull molding'`,
    code: 'hull-molding-stays',
    remedy: 'The hull molding is the hull: it cannot be taken out of it.',
  },
};

/** @throws Conflict when something still rests on the fact */
export const assertWithdrawable = async (tx: EntityManager, table: string, root: string): Promise<void> => {
  const rests = RESTS[table];
  if (!rests) return;
  const found = await tx.query<unknown[]>(`${rests.sql} limit 1`, [root]);
  if (found.length > 0) throw new Conflict(rests.code, rests.remedy, '/corrects');
};
