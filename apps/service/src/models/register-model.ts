import { Injectable } from '@nestjs/common';
import type { RegisterModel as Request } from '@hull-record/contracts';
import { checkSkin, type Skin } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { InvalidRequest } from '../platform/refusals.js';
import { ModelEntity } from './model.entity.js';

/** Registers a model, with the skins that places on its parts are checked against. */
@Injectable()
export class RegisterModel {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ code: string }>> {
    assertSkins(request);
    return this.record.run('model registered', request, async (fact) => {
      const { code, name, skins, requiredParts } = request;
      await fact.insert(ModelEntity, { code, name, skins, requiredParts });
      return { code: request.code };
    });
  }
}

const assertSkins = ({ skins }: Request): void => {
  const problems = Object.entries(skins).flatMap(([kind, skin]) =>
    checkSkin(skin as Skin).map(({ path, message }) => ({ pointer: `/skins/${kind}${path}`, detail: message })),
  );
  if (problems.length > 0) throw new InvalidRequest(problems);
};
