import { Injectable } from '@nestjs/common';
import { isDefectKind } from '@hull-record/trade';
import { keepNewText } from '../platform/texts/keep-new-text.js';
import { Amendments } from '../platform/facts/amendments.js';
import { insertVersion, readVersion } from '../platform/facts/new-version.js';
import { InvalidRequest } from '../platform/refusals.js';
import { DefectEntity } from '../platform/defects/defect.entity.js';
import { findLayerOfPart } from '../platform/defects/find-layer-of-part.js';
import { placeOnPart } from '../platform/defects/place-on-part.js';

/** Sets anew what a defect is and where: its zone follows its place. */
@Injectable()
export class AmendDefect {
  constructor(amendments: Amendments) {
    amendments.of('defect', async (fact, oldId, newId, set) => {
      const old = await readVersion(fact, DefectEntity, oldId);
      if (set.defectKind !== undefined && !isDefectKind(set.defectKind)) {
        throw new InvalidRequest([
          {
            pointer: '/set/defectKind',
            detail: `${set.defectKind} is not a kind of defect: see GET /api/defect-kinds`,
          },
        ]);
      }
      const located =
        set.place === undefined
          ? {}
          : { place: set.place, ...(await placeOnPart(fact.tx, old.partId, set.place, '/set/place')) };
      await insertVersion(fact, DefectEntity, oldId, newId, {
        ...located,
        kind: set.defectKind,
        scheduleLayerId:
          set.layer === undefined ? undefined : await findLayerOfPart(fact.tx, old.partId, set.layer, '/set/layer'),
        lengthMm: set.lengthMm,
        widthMm: set.widthMm,
        depthMm: set.depthMm,
        counted: set.counted,
        countedAreaM2: set.countedAreaM2,
        note: await keepNewText(fact, { table: 'defect', field: 'note' }, oldId, set.note),
      });
    });
  }
}
