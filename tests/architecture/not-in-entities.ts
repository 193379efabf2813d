/** What the migrated database has and entities cannot express, each with the reason. The tests compare both ways. */

/** Columns without a property. */
export const COLUMNS_WITHOUT_PROPERTY: Readonly<Record<string, string>> = {
  'fact.journal.transaction xid8 not null':
    'the mapper has no xid8, and nobody but the database may say in which transaction a fact was recorded',
};

/** Columns that the database fills in. */
export const FILLED_IN_BY_DATABASE: Readonly<Record<string, string>> = {
  'derived.hull_place.number identity by default': 'a short number, any that no other hull has',
  'derived.part_number.number identity by default': 'a short number, any that no other part has',
  'derived.stale_exposure.id identity by default': 'tells a mark from one that was set since',
  'derived.stale_hull.id identity by default': 'tells a mark from one that was set since',
  'fact.journal.position identity always': 'order of insertion, which no writer may choose',
  'fact.journal.transaction default pg_current_xact_id()': 'the transaction that records the fact',
};

/** Tables whose key, as the mapper knows it, is no primary key of the database. */
export const KEYS_OF_MAPPER_ALONE: Readonly<Record<string, string>> = {
  'derived.lot_composition': 'its key has a source that may be null (the remainder): unique nulls not distinct',
  'derived.place_source': 'its key has a source that may be null (the remainder): unique nulls not distinct',
};

/** Tables of facts that do not carry the header of a fact. */
export const WITHOUT_HEADER: Readonly<Record<string, string>> = {
  client_id: 'is written before the fact is: it says whether there is one',
  journal: 'is the header',
  plant: 'is what the header refers to',
  sealed_entry: 'says where an entry stands in the tree, and is no fact of the shop',
  sealed_subtree: 'is arithmetic over the entries, kept so that a proof needs few reads',
  tree_head: 'is signed over the entries',
};

/** Unique rules that no request can break, because whoever writes sees to it; the others are refusals with a name. */
export const KEPT_BY_THE_WRITER: Readonly<Record<string, string>> = {
  defect_number_once: 'numbers are given under a lock',
  repair_number_once: 'numbers are given under a lock',
  lot_candidate_once: 'each likely lot is taken once',
  touch_up_number_once: 'numbers are given under a lock',
  touch_up_makers: 'repeats the primary key, for acceptances to refer to',
  journal_position_once: 'the database counts',
  certificate_issue_once: 'numbers and issues are given under a lock',
  certificate_file_once: 'a file is kept once, by a fact whose id is made of that of the certificate',
  sealed_entry_index_once: 'entries are sealed by one alone, under a lock',
  unproved_entry_once: 'an entry is marked once, in its own transaction',
  layer_record_makers: 'repeats the primary key, for signatures to refer to',
  repair_makers: 'repeats the primary key, for acceptances to refer to',
  plant_code_once: 'the plant is opened under an id made of its code',
  case_settings_once: 'versions are counted under a lock',
  case_look_once: 'looks are counted under a lock',
  case_answer_once: 'the job answers each look once, in one transaction',
  claim_number_once: 'numbers are given under a lock',
  schedule_layer_position_once: 'positions are counted where the layers are written',
};
