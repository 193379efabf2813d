import { textOf } from '../platform/texts/text-of.sql.js';

/** How a value of a corrected fact is worded. */
export type Form = 'text' | 'instant' | 'amount' | 'place' | 'climate' | 'defect kind' | 'millimetres' | 'reading';

/** What a fact is called, and the values that may differ between two versions of it: label, form and SQL. */
interface Described {
  readonly subject: string;
  readonly values: readonly (readonly [label: string, form: Form, sql: string])[];
}

const badges = (ids: string): string =>
  `(select string_agg(w.badge, ', ' order by w.badge) from fact.person w where w.id = any(${ids}))`;

const lotCode = (id: string): string => `(select l.code from fact.lot l where l.id = ${id})`;

const partNumber = (id: string): string => `(select p.number from fact.part p where p.id = ${id})`;

const layerName = (id: string): string => `(select y.name from fact.schedule_layer y where y.id = ${id})`;

const PLACE_NAMES = {
  layer_record: `y.name || ' of ' || p.number from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id`,
  joint: `'joint of ' || p.number from fact.joint r`,
  repair: `'repair R' || r.number || ' of ' || p.number from fact.repair r`,
  touch_up: `'touch-up T' || r.number || ' of ' || p.number from fact.touch_up r`,
} as const;

/** A layer, joint or repair as one version of it says. */
const versionOf = (table: keyof typeof PLACE_NAMES, id: string): string =>
  `(select ${PLACE_NAMES[table]} join fact.part p on p.id = r.part_id where r.id = ${id})`;

const newest = (table: keyof typeof PLACE_NAMES, root: string): string => `(
  select ${PLACE_NAMES[table]} join fact.part p on p.id = r.part_id
  where r.root = ${root} and r.recorded_at <= $2 order by r.recorded_at desc, r.id limit 1)`;

/** A layer, joint or repair as its newest version says. */
const place = (root: string): string =>
  `coalesce(${newest('layer_record', root)}, ${newest('joint', root)}, ${newest('repair', root)}, ${newest('touch_up', root)}, 'part ' || ${partNumber(root)})`;

const defect = (id: string): string =>
  `(select 'D' || d.number || ' of ' || p.number from fact.defect d join fact.part p on p.id = d.part_id where d.id = ${id})`;

const AMOUNT = `json_build_object('quantity', x.quantity::text, 'unit', x.unit, 'basis', x.basis, 'kg', x.kg)`;

const DESCRIBED: Readonly<Record<string, Described>> = {
  used: {
    subject: `'Lot ' || ${lotCode('x.lot_id')} || ' used in ' || ${place('x.into_id')}`,
    values: [
      ['lot', 'text', lotCode('x.lot_id')],
      ['amount', 'amount', AMOUNT],
      ['in', 'text', place('x.into_id')],
      ['time', 'instant', 'x.happened_at'],
    ],
  },
  layer_record: {
    subject: `'Layer ' || ${versionOf('layer_record', 'x.id')}`,
    values: [
      ['part', 'text', partNumber('x.part_id')],
      ['layer', 'text', layerName('x.schedule_layer_id')],
      ['begun', 'instant', 'x.started_at'],
      ['ended', 'instant', 'x.ended_at'],
      ['done by', 'text', badges('x.makers')],
      ['climate', 'climate', 'x.climate_entered'],
      ['note', 'text', 'x.note'],
    ],
  },
  reading: {
    subject: `'Reading of ' || x.what || ', spot ' || x.spot || ', ' || ${place('x.of_id')}`,
    values: [
      [
        'value',
        'reading',
        `json_build_object('value', x.value::text, 'below', x.below::text, 'unit', x.unit, 'si_value', x.si_value)`,
      ],
      ['verdict', 'text', 'x.verdict'],
      ['place', 'place', 'x.place'],
    ],
  },
  equipment_check: {
    subject: `'Check of ' || (select e.code from fact.equipment e where e.id = x.equipment_id) || ', ' || x.what`,
    values: [
      ['found', 'text', `case when x.good then 'good' else 'unfit' end`],
      ['time', 'instant', 'x.happened_at'],
    ],
  },
  mold_care: {
    subject: `'Care of mold ' || (select o.code from fact.mold o where o.id = x.mold_id)`,
    values: [
      ['what', 'text', 'x.what'],
      ['time', 'instant', 'x.happened_at'],
    ],
  },
  signature: {
    subject: `'Signature of ' || ${versionOf('layer_record', 'x.layer_record_id')}`,
    values: [['signed by', 'text', badges('array[x.signed_by]')]],
  },
  defect: {
    subject: `'Defect ' || ${defect('x.root')}`,
    values: [
      ['kind', 'defect kind', 'x.kind'],
      ['layer', 'text', layerName('x.schedule_layer_id')],
      ['place', 'place', 'x.place'],
      ['length', 'millimetres', 'x.length_mm'],
      ['width', 'millimetres', 'x.width_mm'],
      ['depth', 'millimetres', 'x.depth_mm'],
      ['note', 'text', textOf('x', 'note')],
    ],
  },
  photo: {
    subject: `'Photo of ' || ${defect('x.defect_id')}`,
    values: [['SHA-256 of the original', 'text', 'x.original_sha256']],
  },
  repair: {
    subject: `'Record of ' || ${versionOf('repair', 'x.id')}`,
    values: [
      ['procedure', 'text', 'x.procedure'],
      ['note', 'text', textOf('x', 'note')],
    ],
  },
  repair_photo: {
    subject: `'Photo of ' || ${versionOf('repair', 'x.repair_id')}`,
    values: [['SHA-256 of the original', 'text', 'x.original_sha256']],
  },
  touch_up: {
    subject: `'Record of ' || ${versionOf('touch_up', 'x.id')}`,
    values: [['note', 'text', 'x.note']],
  },
  touch_up_acceptance: {
    subject: `'Acceptance of ' || ${versionOf('touch_up', 'x.touch_up_id')}`,
    values: [['judged', 'text', `case when x.accepted then 'accepted' else 'refused' end`]],
  },
  re_inspection: {
    subject: `'Re-inspection of ' || ${versionOf('repair', 'x.repair_id')}`,
    values: [['judged', 'text', `case when x.passed then 'passed' else 'failed' end`]],
  },
  part_schedule: {
    subject: `'Schedule of ' || ${partNumber('x.part_id')}`,
    values: [
      ['from layer', 'text', 'x.from_layer'],
      ['reason', 'text', 'x.reason'],
    ],
  },
  part_scrapped: {
    subject: `'Scrapping of ' || ${partNumber('x.part_id')}`,
    values: [['reason', 'text', 'x.reason']],
  },
  acceptance: {
    subject: `'Acceptance of ' || ${versionOf('repair', 'x.repair_id')}`,
    values: [
      ['judged', 'text', `case when x.accepted then 'accepted' else 'refused' end`],
      ['by', 'text', badges('array[x.accepted_by]')],
    ],
  },
  disposition: {
    subject: `'Disposition of a ' || x.of_kind || coalesce(' (' || ${defect('x.of_id')} || ')', '')`,
    values: [
      ['disposition', 'text', 'x.disposition'],
      ['concession', 'text', 'x.concession'],
      ['reason', 'text', 'x.reason'],
    ],
  },
  joint: {
    subject: `'Joint of ' || ${partNumber('x.part_id')}`,
    values: [['joined', 'instant', 'x.happened_at']],
  },
  life_fact: {
    subject: `'Life of the hull: ' || x.what`,
    values: [
      ['time', 'instant', 'x.happened_at'],
      ['dealer', 'text', '(select d.name from fact.dealer d where d.id = x.dealer_id)'],
      ['note', 'text', textOf('x', 'note')],
    ],
  },
  lot: {
    subject: `'Lot ' || x.code`,
    values: [
      ['supplier', 'text', 'x.supplier'],
      ['supplier lot', 'text', 'x.supplier_lot'],
      ['material', 'text', '(select m.name from fact.material m where m.id = x.material_id)'],
      ['made on', 'text', 'x.made_on::text'],
      ['expires on', 'text', 'x.expires_on::text'],
      ['amount', 'amount', AMOUNT],
      ['time', 'instant', 'x.happened_at'],
    ],
  },
  lot_input: {
    subject: `'What went into lot ' || ${lotCode('x.lot_id')}`,
    values: [
      ['lot', 'text', lotCode('x.input_id')],
      ['amount', 'amount', AMOUNT],
    ],
  },
  lot_state: {
    subject: `'State of lot ' || ${lotCode('x.lot_id')}`,
    values: [
      ['state', 'text', 'x.state'],
      ['time', 'instant', 'x.happened_at'],
    ],
  },
};

/** SQL: subject and values of versions `$1` of one kind of fact as known at `$2`, values as JSON in the order of `valuesOf`. */
export const describeVersions = (table: string): string | undefined => {
  const described = DESCRIBED[table];
  if (!described) return undefined;
  const values = described.values.map(([, , sql]) => sql).join(', ');
  return `select x.id, ${described.subject} as subject, json_build_array(${values}) as values from fact.${table} x where x.id = any($1) and x.recorded_at <= $2`;
};

/** Labels and forms of the values that `describeVersions` gives. */
export const valuesOf = (table: string): readonly { readonly label: string; readonly form: Form }[] =>
  (DESCRIBED[table]?.values ?? []).map(([label, form]) => ({ label, form }));
