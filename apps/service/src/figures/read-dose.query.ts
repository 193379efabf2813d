import { Injectable } from '@nestjs/common';
import { DataSource } from 'typeorm';
import type { DoseQuery, DoseView, MakerData } from '@hull-record/contracts';
import {
  catalystDose,
  catalystPercentByVolume,
  CAUTIONS,
  fromSi,
  judgeCatalyst,
  percentAtTemperature,
  toSi,
  type UnitCode,
} from '@hull-record/trade';
import { standing } from '../platform/facts/standing.js';
import { NotThere, Unprocessable } from '../platform/refusals.js';
import { makerDataAt } from '../platform/rules/maker-data.sql.js';
import { windowOf } from '../platform/rules/judge-catalyst.js';

const MATERIAL = `
  select m.code, m.name, m.role, m.density_kg_per_l as "densityKgPerL", ${makerDataAt('m', 'now()')} as "makerData"
  from fact.material m where m.code = $1 and ${standing('m')} order by m.recorded_at limit 1`;

interface Material {
  readonly code: string;
  readonly name: string;
  readonly role: string;
  readonly densityKgPerL: number | null;
  readonly makerData: MakerData;
}

/** How much catalyst a mix takes: at a per cent by mass, or at what the data sheet names for a temperature. */
@Injectable()
export class ReadDose {
  constructor(private readonly db: DataSource) {}

  async run(code: string, asked: DoseQuery): Promise<DoseView> {
    const material = await this.find(code);
    if (!material) throw new NotThere('material', code);
    const catalyst = await this.find(asked.catalyst);
    if (catalyst?.role !== 'catalyst') throw new NotThere('catalyst', asked.catalyst, '/catalyst');
    const { percentByMass = percentFrom(material, asked), resinKg } = asked;
    const { grams } = catalystDose(resinKg, percentByMass, 1);
    const window = windowOf(material);
    const { verdict } = judgeCatalyst(
      percentByMass,
      window ?? { minPercent: Number.NaN, maxPercent: Number.NaN, source: '' },
    );
    return {
      ...{ material: material.code, catalyst: catalyst.code, resinKg, percentByMass, grams, verdict },
      percentByVolume: volumePercent(material, catalyst, grams, resinKg),
      millilitres: catalyst.densityKgPerL === null ? null : grams / catalyst.densityKgPerL,
      stop: window && verdict.startsWith('too') ? stopOf(percentByMass, verdict, material.name, window) : null,
      window: window ? { minPercent: window.minPercent, maxPercent: window.maxPercent } : null,
      source: window?.source ?? 'No window in the data of the material.',
      cautions: [...CAUTIONS.mixing],
    };
  }

  private async find(code: string): Promise<Material | undefined> {
    const [found] = await this.db.query<Material[]>(MATERIAL, [code]);
    return found;
  }
}

const stopOf = (
  percent: number,
  verdict: string,
  name: string,
  { minPercent, maxPercent }: { readonly minPercent: number; readonly maxPercent: number },
): string =>
  `${percent} % is ${verdict} for ${name}: its window is ${minPercent} to ${maxPercent} % by mass. Too little never cures; too much runs hot.`;

const volumePercent = (material: Material, catalyst: Material, grams: number, resinKg: number): number | null =>
  material.densityKgPerL === null || catalyst.densityKgPerL === null
    ? null
    : catalystPercentByVolume(grams / 1000 / catalyst.densityKgPerL, resinKg / material.densityKgPerL);

const celsius = (value: number, unit: UnitCode): number => (unit === 'C' ? value : fromSi(toSi(value, unit), 'C'));

/** The per cent of the data sheet at the temperature asked; it says nothing outside its rows. */
const percentFrom = ({ name, makerData }: Material, { temperature, unit }: DoseQuery): number => {
  const rows = (makerData.dosing ?? []).map((row) => ({
    temperatureC: celsius(row.temperature.value, row.temperature.unit),
    percentByMass: row.percentByMass,
  }));
  const found = percentAtTemperature(rows, celsius(temperature as number, unit));
  if (found !== null) return found;
  const why = rows.length === 0 ? 'its data sheet names no dose by temperature' : 'its data sheet does not go so far';
  throw new Unprocessable(
    'dose-not-known',
    `No dose of ${name} is known at ${temperature} ${unit}: ${why}. Ask the maker, or give the per cent by mass.`,
    '/temperature',
  );
};
