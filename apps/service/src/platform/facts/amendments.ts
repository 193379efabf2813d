import { Injectable } from '@nestjs/common';
import type { CorrectedValues } from '@hull-record/contracts';
import type { Fact } from './fact.js';

export type CorrectedKind = CorrectedValues['kind'];

/** Writes the version of a fact that takes the place of another. */
export interface Amendment {
  /**
   * @param oldId the version that stands now
   * @param newId the id that the new version gets
   * @param set what is set anew; what it does not name stays
   */
  amend(fact: Fact, oldId: string, newId: string, set: CorrectedValues): Promise<void>;
}

/** Who amends which kind of fact: each feature puts itself on this list, so that corrections know no feature. */
@Injectable()
export class Amendments {
  private readonly known = new Map<CorrectedKind, Amendment['amend']>();

  /** Puts the amendment of one kind of fact on the list. */
  of<K extends CorrectedKind>(
    kind: K,
    amend: (fact: Fact, oldId: string, newId: string, set: Extract<CorrectedValues, { kind: K }>) => Promise<void>,
  ): void {
    this.known.set(kind, amend as Amendment['amend']);
  }

  async amend(fact: Fact, oldId: string, newId: string, set: CorrectedValues): Promise<void> {
    const amend = this.known.get(set.kind);
    if (!amend) throw new Error(`No feature amends ${set.kind}.`);
    await amend(fact, oldId, newId, set);
  }
}
