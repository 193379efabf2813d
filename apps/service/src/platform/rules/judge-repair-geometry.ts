import { checkRepair, damageDepth, LEAST_TAPER_RATIO, taperRatio, type PlannedRepair } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';

export const GEOMETRY = 'repair geometry';

interface Row {
  readonly part_id: string;
  readonly geometry: PlannedRepair | null;
}

/** Judges taper and thickness of a structural repair. What is found is a flag for whoever approves the procedure. */
export const judgeRepairGeometry = async (fact: Fact, repair: string): Promise<void> => {
  await judgeAlone(fact, GEOMETRY, repair);
  const [row] = await fact.tx.query<Row[]>(
    `select r.part_id, r.geometry from fact.repair r where r.root = $1 and ${standing('r')}`,
    [repair],
  );
  if (!row) return;
  const about = { aboutKind: 'repair', aboutId: repair, partId: row.part_id };
  await keepVerdicts(fact, about, [GEOMETRY], row.geometry === null ? [] : [judge(row.geometry)]);
};

const judge = (repair: PlannedRepair): Found => {
  const findings = checkRepair(repair);
  const { originalMm, damageDepthMm, taperMm, patchMm, sides = 'one', skin } = repair;
  const ground = sides === 'both' ? damageDepthMm / 2 : damageDepthMm;
  const ratio = taperRatio(taperMm, ground);
  const found = {
    topic: GEOMETRY,
    figures: {
      taperRatio: ratio,
      leastTaperRatio: LEAST_TAPER_RATIO,
      originalMm,
      damageDepthMm,
      taperMm,
      patchMm,
      sides,
    },
    rule: `Taper at least ${LEAST_TAPER_RATIO}:1 of the depth ground; the patch as thick as what it replaces, within 10 % (common practice). A licensed or qualified person decides on structure.`,
    source: 'Resin maker, Epoxyworks 38; E. Greene, Marine Composites, ch. 5.',
  };
  const where = skin === undefined ? '' : ` of the ${skin} skin`;
  const detail = `${damageDepth(damageDepthMm, originalMm)} damage${where}, taper ${ratio.toFixed(1)}:1${sides === 'both' ? ' from both sides' : ''}, patch ${patchMm} mm in ${originalMm} mm.`;
  if (findings.length === 0) return { ...found, verdict: 'inside', detail };
  const said = findings.map((each) => `${each.rule}: ${each.detail}`).join(' ');
  if (findings.some(({ rule }) => rule === 'cannot be judged'))
    return { ...found, verdict: 'cannot be judged', detail: said };
  return { ...found, verdict: 'outside', detail: `${detail} ${said}`, breaks: 'repair-geometry' };
};
