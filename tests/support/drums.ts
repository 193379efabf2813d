import type { ContainerView, PartView } from '@hull-record/contracts';
import type { RunningService } from './service.js';
import { kg, type Fields, type Shop } from './shop.js';

/** What a shop does with the drums of a lot, and what it then reads of a hull molding laid up from them. */
export class Drums {
  constructor(
    private readonly service: RunningService,
    private readonly shop: Shop,
  ) {}

  /** Labels drums of 200 kg. */
  label(lot: string, labels: readonly string[]): Promise<string> {
    const containers = labels.map((each) => ({ label: each, kind: 'drum', amount: kg(200) }));
    return this.shop.act(`/api/lots/${lot}/containers`, { containers });
  }

  tell(drum: string, what: string, more: Fields = {}): Promise<string> {
    return this.shop.act(`/api/containers/${drum}/history`, { what, ...more });
  }

  read(drum: string): Promise<ContainerView> {
    return this.shop.read(`/api/containers/${drum}`);
  }

  /** Starts a hull and lays up its skin coat from 5 kg of what is named. */
  async skin(hull: string, from: Fields): Promise<string> {
    await this.shop.startHull(hull);
    return this.shop.layer(hull, 'L2', [{ ...from, amount: kg(5) }]);
  }

  /** Rules about material that were broken; the layers are out of order here, which is no matter. */
  async broken(hull: string): Promise<PartView['nonconformities']> {
    const { nonconformities } = await this.shop.read<PartView>(`/api/parts/${hull}-H`);
    return nonconformities.filter(({ rule }) => rule !== 'layer-out-of-order');
  }

  async rules(hull: string): Promise<readonly string[]> {
    return (await this.broken(hull)).map(({ rule }) => rule);
  }

  /** Id of the version that stands of the one row of a table that meets a condition. */
  async standing(table: string, where: string, value: string): Promise<string> {
    const [found] = await this.service.asOwner<{ id: string }>(
      `select x.id from fact.${table} x where ${where} and not exists (select from fact.correction c where c.corrects = x.id)`,
      [value],
    );
    return String(found?.id);
  }

  usedIn(layer: string): Promise<string> {
    return this.standing('used', 'x.into_id = $1', layer);
  }
}
