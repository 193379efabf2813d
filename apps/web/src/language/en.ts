import { appEn } from './app.en.js';
import { bayEn } from '../bay/words.en.js';
import { repairEn } from '../bay/repair/words.en.js';
import { skinEn } from '../skin/words.en.js';
import { defectsEn } from '../defects/words.en.js';
import { homeEn } from '../home/words.en.js';
import { hullsEn } from '../hulls/words.en.js';
import { lotsEn } from '../lots/words.en.js';
import { readingsEn } from '../hulls/readings-words.en.js';
import { hullRecordEn } from '../hulls/record-words.en.js';
import { manyMapEn } from '../map/words.en.js';
import { tracesEn } from '../traces/words.en.js';
import { recordEn } from '../record/words.en.js';
import { certificateEn } from '../certificate-check/words.en.js';
import { ownHullsEn } from '../own-hulls/words.en.js';
import { outboxEn } from '../outbox/words.en.js';
import { tasksEn } from '../station/words.en.js';
import { stationEn } from '../station-frame/words.en.js';
import { signInEn } from '../sign-in/words.en.js';
import { searchEn } from '../search/words.en.js';
import { settingsEn } from '../settings/words.en.js';
import { kindsEn } from './kinds.en.js';
import { deskTermsEn } from './desk-terms.en.js';
import { entryEn } from '../entry/words.en.js';
import { labelsEn } from '../labels/words.en.js';
import { equipmentEn } from '../equipment/words.en.js';
import { peopleEn } from '../people/words.en.js';
import { qualityEn } from '../quality/words.en.js';
import { holdsEn } from '../holds/words.en.js';
import { noticesEn } from '../notices/words.en.js';
import { storeEn } from '../store/words.en.js';
import { termsEn } from './terms.en.js';

/** Every text of this app in English: the list of keys that other languages follow. */
export const en = {
  ...appEn,
  ...homeEn,
  ...hullsEn,
  ...readingsEn,
  ...lotsEn,
  ...defectsEn,
  ...bayEn,
  ...repairEn,
  ...skinEn,
  ...searchEn,
  ...outboxEn,
  ...stationEn,
  ...tasksEn,
  ...signInEn,
  ...ownHullsEn,
  ...certificateEn,
  ...settingsEn,
  ...hullRecordEn,
  ...manyMapEn,
  ...tracesEn,
  ...recordEn,
  ...kindsEn,
  ...termsEn,
  ...deskTermsEn,
  ...entryEn,
  ...labelsEn,
  ...storeEn,
  ...qualityEn,
  ...peopleEn,
  ...equipmentEn,
  ...holdsEn,
  ...noticesEn,
} as const;
