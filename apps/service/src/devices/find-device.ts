import type { EntityManager } from 'typeorm';
import { standing } from '../platform/facts/standing.js';
import { NotThere } from '../platform/refusals.js';

export interface FoundDevice {
  readonly id: string;
  readonly code: string;
  readonly rated: boolean;
}

/** A registered device by its code. @throws NotThere */
export const findDevice = async (tx: EntityManager, code: string): Promise<FoundDevice> => {
  const [found] = await tx.query<FoundDevice[]>(
    `select d.root as id, d.code, d.rated_for_classified_area as rated from fact.device d where d.code = $1 and ${standing('d')}`,
    [code],
  );
  if (!found) throw new NotThere('device', code);
  return found;
};

/**
 * Where a device must not be used, said whenever one is enrolled. Spray areas are classified for electrical equipment
 * (NFPA 33, spray application using flammable or combustible materials; the local authority decides what applies).
 */
export const cautionOf = ({ code, rated }: Pick<FoundDevice, 'code' | 'rated'>): string =>
  rated
    ? `${code} is registered as rated for a classified area: check that its rating fits the class, group and zone there. NFPA 33 and the local authority decide.`
    : `${code} is not rated for it: keep it outside any area classified for electrical equipment, such as where resin is sprayed or solvent is handled. NFPA 33 and the local authority decide.`;
