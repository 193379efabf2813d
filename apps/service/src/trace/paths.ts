import type { EntityManager } from 'typeorm';
import { pathsUpstream, type LotNode } from '@hull-record/genealogy';
import { loadAllUpstream } from './load-all-upstream.js';
import type { PathStep } from './path-step.js';

/** At most this many ways are shown from a place to a lot: through tanks there are as many as fills. */
const WAYS_AT_MOST = 3;

/** Finds the ways by which lots came into places, the shortest first. */
export class Paths {
  private constructor(
    private readonly graph: ReadonlyMap<string, LotNode>,
    private readonly names: ReadonlyMap<string, PathStep>,
  ) {}

  /** Loads all that these used lots are made of, however far. */
  static async of(tx: EntityManager, used: readonly string[]): Promise<Paths> {
    const { graph, names } = await loadAllUpstream(tx, used);
    return new Paths(graph, names);
  }

  /** Ways from the lots used in a place up to a source, each from the source to what was used. */
  from(used: readonly string[], source: string): PathStep[][] {
    return used
      .flatMap((lot) => pathsUpstream(lot, source, this.graph, WAYS_AT_MOST).paths)
      .sort((a, b) => a.length - b.length)
      .slice(0, WAYS_AT_MOST)
      .map((path) => path.map((lot) => this.names.get(lot) ?? { lot, origin: '' }).reverse());
  }
}
