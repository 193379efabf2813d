import { Journal0001 } from './0001-journal.js';
import { Materials0002 } from './0002-materials.js';
import { Boats0003 } from './0003-boats.js';
import { Making0004 } from './0004-making.js';
import { Derived0005 } from './0005-derived.js';
import { Unidentified0006 } from './0006-unidentified.js';
import { Guns0007 } from './0007-guns.js';
import { Store0008 } from './0008-store.js';
import { DefectsAtScale0009 } from './0009-defects-at-scale.js';
import { Checks0010 } from './0010-checks.js';
import { AssemblyAndLife0011 } from './0011-assembly-and-life.js';
import { Molds0012 } from './0012-molds.js';
import { PartSchedule0013 } from './0013-part-schedule.js';
import { Recomputations0014 } from './0014-recomputations.js';
import { Sprays0015 } from './0015-sprays.js';
import { Verdicts0016 } from './0016-verdicts.js';
import { RepairGeometry0017 } from './0017-repair-geometry.js';
import { ReadingsOfWholes0018 } from './0018-readings-of-wholes.js';
import { Markets0019 } from './0019-markets.js';
import { TradeRules0020 } from './0020-trade-rules.js';
import { Access0021 } from './0021-access.js';
import { OpenId0022 } from './0022-open-id.js';
import { Claims0024 } from './0024-claims.js';
import { Holds0025 } from './0025-holds.js';
import { SealedJournal0026 } from './0026-sealed-journal.js';
import { LotPhotos0030 } from './0030-lot-photos.js';
import { Cases0031 } from './0031-cases.js';
import { Notices0032 } from './0032-notices.js';
import { Certificates0033 } from './0033-certificates.js';
import { WithdrawnByCorrection0034 } from './0034-withdrawn-by-correction.js';
import { Privacy0035 } from './0035-privacy.js';
import { Acknowledged0036 } from './0036-acknowledged.js';
import { Charts0037 } from './0037-charts.js';
import { LettersByHull0039 } from './0039-letters-by-hull.js';
import { Redactions0040 } from './0040-redactions.js';
import { Exposure0046 } from './0046-exposure.js';
import { RepairsByDealers0047 } from './0047-repairs-by-dealers.js';
import { Roll0048 } from './0048-roll.js';
import { LastDay0049 } from './0049-last-day.js';
import { StepsOfParts0050 } from './0050-steps-of-parts.js';

/** Every migration in order. Forward only: a later one mends an earlier one. */
export const MIGRATIONS = [
  Journal0001,
  Materials0002,
  Boats0003,
  Making0004,
  Derived0005,
  Unidentified0006,
  Guns0007,
  Store0008,
  DefectsAtScale0009,
  Checks0010,
  AssemblyAndLife0011,
  Molds0012,
  PartSchedule0013,
  Recomputations0014,
  Sprays0015,
  Verdicts0016,
  RepairGeometry0017,
  ReadingsOfWholes0018,
  Markets0019,
  TradeRules0020,
  Access0021,
  OpenId0022,
  Claims0024,
  Holds0025,
  SealedJournal0026,
  LotPhotos0030,
  Cases0031,
  Notices0032,
  Certificates0033,
  WithdrawnByCorrection0034,
  Privacy0035,
  Acknowledged0036,
  Charts0037,
  LettersByHull0039,
  Redactions0040,
  Exposure0046,
  RepairsByDealers0047,
  Roll0048,
  LastDay0049,
  StepsOfParts0050,
] as const;
