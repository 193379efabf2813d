import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { standingPlaces } from '../places/places.js';
import { settingAt } from '../lots/spray.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { CATALYST, judgeCatalystIn } from './judge-catalyst.js';
import { materialsIn } from './materials-in.js';

const SPRAYED = `
  select u.spray_id as spray, u.lot_id as lot, u.kg, u.happened_at as at, ${settingAt('u.gun_id', 'u.happened_at')} as "set"
  from fact.used u
  where u.into_id = $1 and u.spray_id is not null and ${standing('u')} order by u.happened_at, u.spray_id, u.id`;

interface Drawn {
  readonly spray: string;
  readonly lot: string;
  readonly kg: number;
  readonly at: Date;
  /** Per cent by mass that the gun was set to. */
  readonly set: number | null;
}

/**
 * Judges the catalyst that guns added to what was sprayed into a layer or repair, each spray for itself; the worst is
 * the verdict. What a gun was set to decides it, and a setting recorded late sets it right.
 */
export const judgeSprayed = async (fact: Fact, kind: string, place: string): Promise<void> => {
  await judgeAlone(fact, CATALYST, place);
  const drawn = await fact.tx.query<Drawn[]>(SPRAYED, [place]);
  const sprays = [...new Set(drawn.map(({ spray }) => spray))].map((id) => drawn.filter(({ spray }) => spray === id));
  const found: Found[] = [];
  for (const spray of sprays) {
    const [{ at, set }] = spray as [Drawn];
    found.push(...judgeCatalystIn(await materialsIn(fact.tx, spray, at), set));
  }
  const worst = found.find(({ verdict }) => verdict === 'outside') ?? found.at(-1);
  const [where] = await fact.tx.query<{ part_id: string }[]>(standingPlaces('p.root = $1'), [place]);
  const about = { aboutKind: kind, aboutId: place, partId: where?.part_id ?? null };
  await keepVerdicts(fact, about, [CATALYST], worst ? [worst] : [], ['catalyst-outside-window']);
};
