import { judgeFlaw, type DefectKind } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { flawLimitsAt, flawTable, type FlawLimits } from './flaw-limits.sql.js';

export const FLAW = 'flaw acceptance';

interface Row {
  readonly part_id: string;
  readonly kind: DefectKind;
  readonly size: number | null;
  readonly counted: number | null;
  readonly area_m2: number | null;
  readonly at: Date;
}

const DEFECT = `
  select d.part_id, d.kind, greatest(d.length_mm, d.width_mm) as size, d.counted, d.counted_area_m2 as area_m2, d.happened_at as at
  from fact.defect d where d.root = $1 and ${standing('d')}`;

/**
 * Judges a defect by the acceptance level of the plant at its time. It opens nothing: a defect stands for itself until
 * it is disposed of, and most limits are from memory.
 */
export const judgeDefect = async (fact: Fact, defect: string): Promise<void> => {
  await judgeAlone(fact, FLAW, defect);
  const [row] = await fact.tx.query<Row[]>(DEFECT, [defect]);
  if (!row) return;
  const limits = await flawLimitsAt(fact.tx, fact.author.plantId, row.at);
  const about = { aboutKind: 'defect', aboutId: defect, partId: row.part_id };
  await keepVerdicts(fact, about, [FLAW], judge(row, limits));
};

const judge = ({ kind, size, counted, area_m2: areaM2 }: Row, { level, rows }: FlawLimits): readonly Found[] => {
  if (level === null) return [];
  const count = counted === null || areaM2 === null ? {} : { count: { found: counted, areaMm2: areaM2 * 1e6 } };
  const judged = judgeFlaw({ kind, size: size ?? Number.NaN, unit: 'mm', ...count }, level, flawTable(rows));
  const found = {
    topic: FLAW,
    detail: `Level ${level}: ${size === null && judged.verdict === 'cannot be judged' ? 'No size was recorded.' : judged.reason}`,
    figures: { sizeMm: size, limitMm: judged.limit, level, counted, countedAreaM2: areaM2 },
    rule: 'Largest size and count against the acceptance level of the plant; level I permits none.',
    source: judged.source,
  };
  const verdict = { accepted: 'inside', rejected: 'outside', 'cannot be judged': 'cannot be judged' } as const;
  return [{ ...found, verdict: verdict[judged.verdict] }];
};
