import { Injectable } from '@nestjs/common';
import type { SetFlawLimits as Request } from '@hull-record/contracts';
import type { FlawLevel } from '@hull-record/trade';
import { RecordFact, type Receipt } from '../platform/facts/record-fact.js';
import { InvalidRequest } from '../platform/refusals.js';
import { FlawLimitsEntity } from './flaw-limits.entity.js';

/** Quality chooses at which level flaws are accepted from then on, with rows of the plant's own. */
@Injectable()
export class SetFlawLimits {
  constructor(private readonly record: RecordFact) {}

  run(request: Request): Promise<Receipt<{ level: FlawLevel | null; ownRows: number }>> {
    assertEachOnce(request);
    return this.record.run('flaw limits set', request, async (fact) => {
      const { level, rows, reason } = request;
      await fact.insert(FlawLimitsEntity, { level, rows, reason });
      return { level, ownRows: rows.length };
    });
  }
}

const assertEachOnce = ({ rows }: Request): void => {
  const twice = rows.flatMap(({ kind }, i) =>
    rows.findIndex((row) => row.kind === kind) < i
      ? [{ pointer: `/rows/${i}/kind`, detail: `${kind} has a row already: leave one out` }]
      : [],
  );
  if (twice.length > 0) throw new InvalidRequest(twice);
};
