import type { CorrectedKind } from '../platform/facts/amendments.js';

/** Tables whose facts can be withdrawn, each with the kind of values by which it can be set anew, if it can. */
export const CORRECTABLE: Readonly<Record<string, CorrectedKind | null>> = {
  lot: 'lot',
  lot_input: 'lot input',
  lot_state: null,
  used: 'used',
  layer_record: 'layer record',
  reading: 'reading',
  signature: null,
  defect: 'defect',
  photo: null,
  repair: null,
  acceptance: null,
  disposition: null,
  joint: null,
  hook_up: 'hook-up',
  gun_setting: null,
  equipment_check: null,
  tank_emptied: null,
  container: null,
  container_fact: null,
  hold: null,
  hold_lift: null,
  lot_loss: null,
  lot_count: null,
  lot_retest: null,
  life_fact: 'life fact',
};

/** What goes with a fact when it is withdrawn: table and the column that points to its root (or, of signatures, to its version). */
export const GOES_WITH: Readonly<Record<string, readonly { readonly table: string; readonly column: string }[]>> = {
  container: [{ table: 'container_fact', column: 'container_id' }],
  hold: [{ table: 'hold_lift', column: 'hold_id' }],
  layer_record: [
    { table: 'used', column: 'into_id' },
    { table: 'reading', column: 'of_id' },
    { table: 'signature', column: 'layer_record_id' },
    { table: 'nonconformity', column: 'about_id' },
  ],
  repair: [
    { table: 'used', column: 'into_id' },
    { table: 'reading', column: 'of_id' },
    { table: 'acceptance', column: 'repair_id' },
    { table: 'nonconformity', column: 'about_id' },
  ],
  joint: [
    { table: 'used', column: 'into_id' },
    { table: 'nonconformity', column: 'about_id' },
  ],
  lot: [
    { table: 'lot_input', column: 'lot_id' },
    { table: 'lot_state', column: 'lot_id' },
    { table: 'hold', column: 'lot_id' },
    { table: 'container', column: 'lot_id' },
    { table: 'lot_loss', column: 'lot_id' },
    { table: 'lot_count', column: 'lot_id' },
    { table: 'lot_retest', column: 'lot_id' },
    { table: 'nonconformity', column: 'about_id' },
  ],
};
