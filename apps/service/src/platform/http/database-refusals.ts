import { QueryFailedError } from 'typeorm';
import { ClientIdReused, Conflict, InvalidRequest, type Refusal, Unavailable, Unprocessable } from '../refusals.js';

/** What it means when a constraint of the database refuses: the database is the judge, also between two at once. */
const MEANINGS: Readonly<Record<string, () => Refusal>> = {
  person_badge_once: () => new Conflict('badge-taken', 'This badge is registered already.', '/badge'),
  person_badge_once_in_any_case: () =>
    new Conflict('badge-taken', 'This badge is registered already, if in other letters.', '/badge'),
  rework_inspected_by_another_person: () =>
    new Conflict(
      'inspector-is-maker',
      'Who did the rework cannot inspect it: let another person enter this.',
      '/enteredBy',
    ),
  role_ends_once: () => new Conflict('has-not-this-role', 'This role has ended already.', '/role'),
  entry_confirmed_once: () => new Conflict('confirmed-already', 'This entry was confirmed or refused already.'),
  kept_entry_decided_once: () => new Conflict('entry-decided', 'Somebody has decided about this entry before.'),
  case_code_once: () => new Conflict('code-taken', 'This case code is in use: give it another.', '/code'),
  warranty_terms_once: () =>
    new Conflict('version-published', 'This version is published and never changes: publish the next one.'),
  rework_once: () => new Conflict('reworked-already', 'This rework is recorded already.'),
  item_removed_once: () => new Conflict('removed-already', 'This item is taken off already.'),
  certificate_withdrawn_once: () => new Conflict('withdrawn-already', 'This issue is withdrawn already.'),
  dealer_acknowledged_once: () => new Conflict('acknowledged-already', 'This is acknowledged already.', '/about'),
  legal_hold_ends_once: () => new Conflict('ended-already', 'This legal hold has ended already.'),
  owner_erased_once: () => new Conflict('erased-already', 'What was kept of this owner is erased already.'),
  device_code_once: () => new Conflict('code-taken', 'This device code is registered already.', '/code'),
  equipment_code_once: () => new Conflict('code-taken', 'This equipment code is registered already.', '/code'),
  dealer_code_once: () => new Conflict('code-taken', 'This dealer code is registered already.', '/code'),
  material_code_once: () => new Conflict('code-taken', 'This material code is registered already.', '/code'),
  tank_code_once: () => new Conflict('code-taken', 'This tank code is registered already.', '/code'),
  mold_code_once: () => new Conflict('code-taken', 'This mold code is registered already.', '/code'),
  model_code_once: () => new Conflict('code-taken', 'This model code is registered already.', '/code'),
  lot_code_once: () => new Conflict('code-taken', 'This lot code is in use: give the lot another.', '/code'),
  part_number_once: () => new Conflict('code-taken', 'This part number is in use.', '/number'),
  container_label_once: () =>
    new Conflict('code-taken', 'This container label is in use: give it another.', '/containers'),
  hold_lift_once: () => new Conflict('lifted-already', 'This hold is lifted or closed already.'),
  notice_code_once: () => new Conflict('code-taken', 'This code of a notice is in use: give it another.', '/code'),
  mailing_returned_once: () => new Conflict('returned-already', 'That this letter came back is recorded already.'),
  notice_report_once: () =>
    new Conflict('reported-already', 'This report is recorded already: withdraw it first.', '/what'),
  hold_scope_once: () =>
    new Conflict('narrowed-meanwhile', 'Somebody else narrowed this hold just now: look at it again.'),
  tank_fill_once: () =>
    new Conflict(
      'tank-filled-meanwhile',
      'Somebody else recorded a fill of this tank just now: look at the tank and record again.',
      '/code',
    ),
  schedule_version_once: () =>
    new Conflict('version-published', 'This version is published and never changes: publish the next one.', '/version'),
  schedule_layer_code_once: () =>
    new Unprocessable('layer-code-twice', 'Two layers have the same code: each layer has its own.', '/layers'),
  hull_number_once: () =>
    new Conflict('number-taken', 'This number was issued before, and a number is never issued twice.', '/number'),
  joint_part_once: () =>
    new Conflict('part-joined', 'This part is joined to a hull already: withdraw that joint first.', '/part'),
  layer_record_once: () =>
    new Conflict('layer-recorded', 'This layer is recorded already: add to it, or correct it.', '/layer'),
  signature_by_another_person: () =>
    new Conflict('signer-is-maker', 'Who made the layer cannot sign it: ask another person.', '/enteredBy'),
  signature_once: () => new Conflict('signed-already', 'This hold point is signed already.'),
  acceptance_by_another_person: () =>
    new Conflict('accepter-is-maker', 'Who did the repair cannot accept it: ask another person.', '/enteredBy'),
  acceptance_once: () => new Conflict('judged-already', 'This repair is accepted or refused already.'),
  disposition_once: () =>
    new Conflict('disposed-already', 'This is disposed of already: withdraw that disposition first.', '/about'),
  disposition_concession_once: () =>
    new Conflict('concession-taken', 'This concession number is in use.', '/concession'),
  touch_up_acceptance_by_another_person: () =>
    new Conflict('accepter-is-maker', 'Who did the touch-ups cannot accept them: ask another person.', '/enteredBy'),
  touch_up_acceptance_once: () => new Conflict('judged-already', 'These touch-ups are accepted or refused already.'),
  re_inspection_by_another_person: () =>
    new Conflict('inspector-is-maker', 'Who did the repair cannot inspect it: ask another person.', '/enteredBy'),
  part_schedule_once: () =>
    new Conflict('part-moved-already', 'This part was moved already: withdraw that move, and move it anew.'),
  part_scrapped_once: () => new Conflict('scrapped-already', 'This part is scrapped already.'),
  repair_defect_once: () => new Unprocessable('defect-twice', 'The same defect is named twice.', '/defects'),
  correction_once: () =>
    new Conflict(
      'corrected-meanwhile',
      'This fact was corrected already: correct the one that stands now.',
      '/corrects',
    ),
  lot_input_not_itself: () =>
    new Unprocessable('lot-made-of-itself', 'A lot cannot be made of itself: name another input.', '/inputs'),
};

/** A character that no text of the database can have, as in a search or a path: character_not_in_repertoire. */
const UNKEPT_TEXT = '22021';

/** The server is stopping, starting, or took too long. */
const UNAVAILABLE = /^(08|57)|^E(CONN|PIPE)/;

const SERIALIZATION = new Set(['40001', '40P01', '55P03']);

/** The pool gave no connection in time, or the server is gone. */
const isUnreachable = (error: unknown): boolean =>
  error instanceof Error &&
  (UNAVAILABLE.test(String((error as { code?: unknown }).code)) ||
    /timeout exceeded when trying to connect|Connection terminated/.test(error.message));

/** The refusal that a database error stands for, when it is one that users can mend. */
export const fromDatabase = (error: unknown): Refusal | undefined => {
  if (!(error instanceof QueryFailedError)) return isUnreachable(error) ? new Unavailable() : undefined;
  const { constraint, code } = error.driverError as { constraint?: string; code?: string };
  if (code !== undefined && SERIALIZATION.has(code)) {
    return new Conflict('try-again', 'Others were recording the same thing at once: send the request again.');
  }
  if (code === UNKEPT_TEXT)
    return new InvalidRequest([
      { pointer: '', detail: 'has a character that no text can have (U+0000): write it without' },
    ]);
  if (code?.startsWith('22')) {
    return new InvalidRequest([{ pointer: '', detail: 'has a value that is out of the range that can be kept' }]);
  }
  if (code !== undefined && UNAVAILABLE.test(code)) return new Unavailable();
  if (constraint?.endsWith('_pkey')) return new ClientIdReused('given');
  return constraint === undefined ? undefined : MEANINGS[constraint]?.();
};
