import { DemoPlant } from '../../apps/service/src/demo/demo-plant.js';
import { BLISTER_CASE } from '../../apps/service/src/demo/plan/claims.js';
import { BAD_LOT } from '../../apps/service/src/demo/plan/plan.js';
import { looked } from '../support/looked.js';
import type { RunningService } from '../support/service.js';
import { Shop } from '../support/shop.js';

/** What the addresses of the grid are about: things of the demo plant, and a hold with its notice. */
export interface Known {
  readonly hull: string;
  readonly sold: string;
  readonly ofDealer: string;
  readonly dealer: string;
  readonly defect: string;
  readonly claim: string;
  readonly owner: string;
  readonly hold: string;
  readonly repaired: string;
  readonly mark: string;
  readonly asked: string;
  readonly askedMark: string;
}

const CONTENTS = {
  ...{ defect: 'a bond', hazard: 'it may let go', measures: 'renew it', undertaking: 'free of charge' },
  ...{ manufacturer: 'Invented Boats', address: '1 Slip Road', make: 'TS' },
};

/** Loads the demo plant, looks at its case, and holds its bad lot with a notice to the owners. */
export const loadPlant = async (service: RunningService): Promise<Known> => {
  await service.get(DemoPlant).load(() => undefined);
  const shop = new Shop(service);
  await looked(shop, BLISTER_CASE);
  const hold = await shop.act(`/api/lots/${BAD_LOT}/holds`, { kind: 'safety', reason: 'blisters' });
  await shop.act(`/api/holds/${hold}/duty-decisions`, {
    ...{ decision: 'substantial risk of injury', discoveredOn: '2026-01-02', decidedBy: 'QUA-01', why: 'a bond' },
  });
  await shop.act(`/api/holds/${hold}/notices`, { code: 'N-1', contents: CONTENTS });
  const one = async (what: string, sql: string): Promise<string> => {
    const [row] = await service.asOwner<{ it: string | null }>(sql);
    if (typeof row?.it !== 'string') throw new Error(`The demo plant has no ${what}.`);
    return row.it;
  };
  const dealt = `from fact.life_fact f join fact.dealer d on d.root = f.dealer_id join fact.hull_number n on n.hull_id = f.hull_id
    join fact.person p on p.badge = 'DLR-' || d.code where f.what = 'at dealer' and n.kind = 'hull number' order by f.recorded_at, f.id limit 1`;
  return {
    hold,
    hull: await one(
      'hull',
      "select n.as_printed as it from fact.hull_number n where n.kind = 'hull number' order by n.recorded_at desc limit 1",
    ),
    sold: await one(
      'hull with an owner',
      "select n.as_printed as it from fact.hull_number n join fact.owner o on o.hull_id = n.hull_id where n.kind = 'hull number' limit 1",
    ),
    ofDealer: await one('hull at a dealer', `select n.as_printed as it ${dealt}`),
    dealer: await one('dealer', `select p.badge as it ${dealt}`),
    defect: await one('defect', 'select d.root as it from fact.defect d limit 1'),
    claim: await one('claim', 'select c.root as it from fact.claim c limit 1'),
    owner: await one('owner', 'select o.root as it from fact.owner o limit 1'),
    repaired: await one(
      'repaired part',
      'select p.number as it from fact.repair r join fact.part p on p.id = r.part_id order by r.recorded_at, r.id limit 1',
    ),
    mark: await one('repair', `select 'R' || r.number as it from fact.repair r order by r.recorded_at, r.id limit 1`),
    asked: await one(
      'part with a defect',
      'select p.number as it from fact.defect d join fact.part p on p.id = d.part_id order by d.recorded_at desc, d.id limit 1',
    ),
    askedMark: await one(
      'defect of a part',
      `select 'D' || d.number as it from fact.defect d order by d.recorded_at desc, d.id limit 1`,
    ),
  };
};
