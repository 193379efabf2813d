import type { Catalogue } from './catalogue.js';
import { appEs } from './app.es.js';
import { bayEs } from '../bay/words.es.js';
import { repairEs } from '../bay/repair/words.es.js';
import { skinEs } from '../skin/words.es.js';
import { defectsEs } from '../defects/words.es.js';
import { homeEs } from '../home/words.es.js';
import { hullsEs } from '../hulls/words.es.js';
import { lotsEs } from '../lots/words.es.js';
import { readingsEs } from '../hulls/readings-words.es.js';
import { hullRecordEs } from '../hulls/record-words.es.js';
import { manyMapEs } from '../map/words.es.js';
import { tracesEs } from '../traces/words.es.js';
import { recordEs } from '../record/words.es.js';
import { certificateEs } from '../certificate-check/words.es.js';
import { ownHullsEs } from '../own-hulls/words.es.js';
import { outboxEs } from '../outbox/words.es.js';
import { tasksEs } from '../station/words.es.js';
import { stationEs } from '../station-frame/words.es.js';
import { signInEs } from '../sign-in/words.es.js';
import { searchEs } from '../search/words.es.js';
import { settingsEs } from '../settings/words.es.js';
import { kindsEs } from './kinds.es.js';
import { deskTermsEs } from './desk-terms.es.js';
import { entryEs } from '../entry/words.es.js';
import { labelsEs } from '../labels/words.es.js';
import { equipmentEs } from '../equipment/words.es.js';
import { peopleEs } from '../people/words.es.js';
import { qualityEs } from '../quality/words.es.js';
import { holdsEs } from '../holds/words.es.js';
import { noticesEs } from '../notices/words.es.js';
import { storeEs } from '../store/words.es.js';
import { termsEs } from './terms.es.js';

/** Every text of this app in Spanish. */
export const es: Catalogue = {
  ...appEs,
  ...homeEs,
  ...hullsEs,
  ...readingsEs,
  ...lotsEs,
  ...defectsEs,
  ...bayEs,
  ...repairEs,
  ...skinEs,
  ...searchEs,
  ...outboxEs,
  ...stationEs,
  ...tasksEs,
  ...signInEs,
  ...ownHullsEs,
  ...certificateEs,
  ...settingsEs,
  ...hullRecordEs,
  ...manyMapEs,
  ...tracesEs,
  ...recordEs,
  ...kindsEs,
  ...termsEs,
  ...deskTermsEs,
  ...entryEs,
  ...labelsEs,
  ...storeEs,
  ...qualityEs,
  ...peopleEs,
  ...equipmentEs,
  ...holdsEs,
  ...noticesEs,
};
