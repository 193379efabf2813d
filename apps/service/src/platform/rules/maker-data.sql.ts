import { standing } from '../facts/standing.js';

/**
 * SQL: what a material's maker said by an instant: the newest data sheet, or what it was registered with.
 *
 * @param m alias of the material
 */
export const makerDataAt = (m: string, at: string): string => `coalesce((
  select sheet.maker_data || jsonb_build_object('dataSheet', sheet.issue) from fact.data_sheet sheet
  where sheet.material_id = ${m}.root and sheet.happened_at <= ${at} and ${standing('sheet')}
  order by sheet.happened_at desc, sheet.recorded_at desc, sheet.id limit 1), ${m}.maker_data)`;
